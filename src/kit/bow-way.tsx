/** Hump or hollow: which way a bow goes, asked for in words. */
import { useId } from 'react';
import { BOW_WAYS, type BowWay } from '../neck/bow-way.ts';
import { BOW_ENTRY_WORDS } from '../speech/en/workshop/bow.ts';
import './bow-way.css';

interface BowWayChoiceProps {
  /** Name of what is measured, for assistive technology. */
  readonly name: string;
  /** Null while neither was chosen. */
  readonly way: BowWay | null;
  readonly describedBy?: string | undefined;
  readonly choose: (way: BowWay) => void;
}

export function BowWayChoice({ name, way, describedBy, choose }: BowWayChoiceProps) {
  const id = useId();
  return (
    <span className="bow-way" role="radiogroup" aria-label={BOW_ENTRY_WORDS.wayOf(name)} aria-describedby={describedBy}>
      {BOW_WAYS.map((each) => (
        <label key={each}>
          <input type="radio" name={id} value={each} checked={way === each} onChange={() => choose(each)} />
          {BOW_ENTRY_WORDS[each]}
        </label>
      ))}
    </span>
  );
}
