/** Words of the trade, each with a small drawing. */
import { useState } from 'react';
import { store } from '../../../state/store.ts';
import { Dialog } from '../../../kit/dialog/dialog.tsx';
import { findTerms } from './find-terms.ts';
import { TermDrawing } from './term-drawing.tsx';
import { GLOSSARY_WORDS, TERM_WORDS } from '../../../speech/en/pages/glossary.ts';
import './glossary.css';

export function GlossaryDialog() {
  const [text, setText] = useState('');
  const found = findTerms(text);
  return (
    <Dialog title={GLOSSARY_WORDS.title} onClose={store.getState().closeDialog} className="glossary">
      <input
        type="search"
        aria-label={GLOSSARY_WORDS.find}
        placeholder={GLOSSARY_WORDS.find}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      {found.length === 0 && <p className="quiet">{GLOSSARY_WORDS.none(text.trim())}</p>}
      <dl className="terms">
        {found.map(({ id, drawing }) => {
          const { word, also, means } = TERM_WORDS[id];
          return (
            <div key={id} data-term={id}>
              <TermDrawing drawing={drawing} />
              <dt>
                {word} {also !== undefined && <span className="quiet">({also})</span>}
              </dt>
              <dd>{means}</dd>
            </div>
          );
        })}
      </dl>
    </Dialog>
  );
}
