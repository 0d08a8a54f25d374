/** The terms of the glossary, in the order of the work, each with the drawing that shows it. */

import type { TermId } from '../../../speech/en/pages/glossary.ts';

/** A slot with its fret, cut along the neck. */
export type SectionPart = 'fret' | 'crown' | 'tang' | 'studs' | 'slot' | 'kerf' | 'chamfer' | 'bite' | 'glue';
/** The end of a fret on a bound board, cut along the fret. */
export type EndPart = 'binding' | 'nip' | 'shelf' | 'bevel' | 'oversize';
/** The neck from the side. */
export type SidePart =
  | 'neck'
  | 'board'
  | 'scale'
  | 'relief'
  | 'back-bow'
  | 'straightedge'
  | 'rod'
  | 'heel'
  | 'action'
  | 'levelling'
  | 'settling';
/** The board cut across. */
export type AcrossPart = 'radius' | 'cone' | 'profile' | 'laminates' | 'flat-sawn' | 'quarter-sawn';

export type TermDrawing =
  | { readonly kind: 'section'; readonly part: SectionPart }
  | { readonly kind: 'end'; readonly part: EndPart }
  | { readonly kind: 'side'; readonly part: SidePart }
  | { readonly kind: 'across'; readonly part: AcrossPart };

export interface Term {
  readonly id: TermId;
  readonly drawing: TermDrawing;
}

const section = <const Id extends TermId>(id: Id, part: SectionPart) =>
  ({ id, drawing: { kind: 'section', part } }) as const;
const end = <const Id extends TermId>(id: Id, part: EndPart) => ({ id, drawing: { kind: 'end', part } }) as const;
const side = <const Id extends TermId>(id: Id, part: SidePart) => ({ id, drawing: { kind: 'side', part } }) as const;
const across = <const Id extends TermId>(id: Id, part: AcrossPart) =>
  ({ id, drawing: { kind: 'across', part } }) as const;

export const TERMS = [
  side('scale', 'scale'),
  side('board', 'board'),
  across('radius', 'radius'),
  across('cone', 'cone'),
  across('profile', 'profile'),
  across('laminates', 'laminates'),
  across('flat-sawn', 'flat-sawn'),
  across('quarter-sawn', 'quarter-sawn'),
  side('heel', 'heel'),
  section('fret', 'fret'),
  section('crown', 'crown'),
  section('tang', 'tang'),
  section('studs', 'studs'),
  section('slot', 'slot'),
  section('kerf', 'kerf'),
  section('chamfer', 'chamfer'),
  section('press-fit', 'bite'),
  section('glue-fit', 'glue'),
  end('binding', 'binding'),
  end('nip', 'nip'),
  end('shelf', 'shelf'),
  end('bevel', 'bevel'),
  end('oversize', 'oversize'),
  side('straightedge', 'straightedge'),
  side('relief', 'relief'),
  side('back-bow', 'back-bow'),
  side('rod', 'rod'),
  side('action', 'action'),
  side('levelling', 'levelling'),
  side('settling', 'settling'),
] as const satisfies readonly Term[];
