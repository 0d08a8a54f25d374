/** What becomes of a job that comes from another device, beside what this one has of it. Nothing that was entered is lost. */
import { newId } from '../../mechanics/bench-log/identity.ts';
import type { BenchJob, Work } from './job-document.ts';

export type Arrival =
  /** It was not here. */
  | 'new'
  /** It is here, as far as in the file. */
  | 'same'
  /** It is further than here: all that was entered here is in it. */
  | 'further'
  /** It is further here. */
  | 'behind'
  /** Something was entered on both since; it becomes a job of its own. */
  | 'apart';

export interface Received {
  readonly arrival: Arrival;
  /** What is to be taken out of the jobs of this device, and what put in. */
  readonly out: readonly BenchJob[];
  readonly into: readonly BenchJob[];
}

/** What was entered. Whether an odd reading was said to be right is no entry. */
const entriesOf = ({ readings, ...rest }: Work): string =>
  JSON.stringify([readings.map(({ isSure: _sure, ...reading }) => reading), rest]);

const isWithin = (work: Work, { now, past }: BenchJob): boolean =>
  [now, ...past].some((each) => entriesOf(each) === entriesOf(work));

/** @param here the same job on this device, if it has it @param id for a job that becomes one of its own */
export function received(incoming: BenchJob, here: BenchJob | undefined, id: string = newId()): Received {
  if (!here) return { arrival: 'new', out: [], into: [incoming] };
  if (entriesOf(incoming.now) === entriesOf(here.now)) return { arrival: 'same', out: [], into: [] };
  if (isWithin(here.now, incoming)) return { arrival: 'further', out: [here], into: [incoming] };
  if (isWithin(incoming.now, here)) return { arrival: 'behind', out: [], into: [] };
  return { arrival: 'apart', out: [], into: [{ ...incoming, id }] };
}
