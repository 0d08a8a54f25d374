/** What is said of the neck with its frets in, strung and settled: before a strip, and with it. */
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { BAND_STATES } from '../../state/strips/states.ts';

type State = (typeof BAND_STATES)[number];

interface StateTableProps {
  readonly caption?: string;
  readonly className?: string;
  readonly heads: readonly [before: string, after: string];
  readonly cells: (state: State) => readonly [before: string, after: string];
}

export function StateTable({ caption, className = '', heads, cells }: StateTableProps) {
  return (
    <table className={`answer-table ${className}`}>
      {caption !== undefined && <caption className="quiet">{caption}</caption>}
      <thead>
        <tr>
          <th scope="col">
            <span className="visually-hidden">{STRIP_WORDS.state}</span>
          </th>
          <th scope="col">{heads[0]}</th>
          <th scope="col">{heads[1]}</th>
        </tr>
      </thead>
      <tbody>
        {BAND_STATES.map((state) => {
          const [before, after] = cells(state);
          return (
            <tr key={state}>
              <th scope="row">{STRIP_WORDS.states[state]}</th>
              <td>{before}</td>
              <td>{after}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
