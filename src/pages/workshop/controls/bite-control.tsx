/** The bite factor, and the way to measure it before a neck is fretted. */
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import { BLANK_WORDS } from '../../../speech/en/workshop/blanks.ts';
import { store } from '../../../state/store.ts';
import { NumberControl, type NumberControlProps } from './number-control.tsx';

export function isBite({ id }: NumberParameter): boolean {
  return id === 'biteFactor';
}

export function BiteControl(props: NumberControlProps) {
  return (
    <NumberControl {...props}>
      <div className="button-row">
        <button type="button" onClick={() => store.getState().openDialog('try-strip')}>
          {BLANK_WORDS.tryStrip}
        </button>
      </div>
    </NumberControl>
  );
}
