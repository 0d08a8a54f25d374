/** The drawing of a term. */
import { AcrossDrawing } from './drawings/across.tsx';
import { EndDrawing } from './drawings/end.tsx';
import { SectionDrawing } from './drawings/section.tsx';
import { SideDrawing } from './drawings/side.tsx';
import type { TermDrawing as Drawn } from './terms.ts';

export function TermDrawing({ drawing }: { readonly drawing: Drawn }) {
  switch (drawing.kind) {
    case 'section':
      return <SectionDrawing part={drawing.part} />;
    case 'end':
      return <EndDrawing part={drawing.part} />;
    case 'side':
      return <SideDrawing part={drawing.part} />;
    case 'across':
      return <AcrossDrawing part={drawing.part} />;
  }
}
