/** What the model simplifies and assumes, from the note beside the library, which is in English. */
import type { Ref } from 'react';
import type { NoteBlock } from './model-note.ts';

function Block({ block, title }: { readonly block: NoteBlock; readonly title: string }) {
  if (block.kind === 'text') return <p lang="en">{block.text}</p>;
  if (block.kind === 'equations')
    return (
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
      <section className="equations" tabIndex={0} aria-label={`${title}: ${block.text.slice(0, 40)}`}>
        <pre lang="en">{block.text}</pre>
      </section>
    );
  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- it scrolls, so keys must reach it
    <section className="table-scroll" tabIndex={0} aria-label={title}>
      <table className="answer-table proof-note" lang="en">
        <thead>
          <tr>
            {block.head.map((label) => (
              <th key={label} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {block.rows.map((row) => (
            <tr key={row.join('|')}>
              {row.map((cell, at) => (
                <td key={at}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface ModelPartProps {
  readonly title: string;
  readonly blocks: readonly NoteBlock[];
  readonly heading?: Ref<HTMLHeadingElement>;
}

export function ModelPart({ title, blocks, heading }: ModelPartProps) {
  return (
    <div className="proof-kind">
      <h3 ref={heading} tabIndex={-1}>
        {title}
      </h3>
      {blocks.map((block, at) => (
        <Block key={at} block={block} title={title} />
      ))}
    </div>
  );
}
