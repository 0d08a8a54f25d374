/** What is heard of a neck while its frets go in: what was read on it before, and what is read on it now. */
import type { Build } from '../../neck/build.ts';
import type { Evidence } from '../neck-readings/evidence.ts';
import { ownNeck } from '../neck-readings/heard.ts';
import type { OwnNeck } from '../neck-readings/likelihood.ts';
import { asUnmeasured } from '../try-strip/grip-posterior.ts';
import type { ResponseModel } from '../uncertainty/model.ts';
import { readNeckOf, type BowReading } from './job.ts';

/**
 * The quarters of an earlier fretting are not those of this one: once this one was read, only its own frets have a grip of their
 * own beside the neck's.
 *
 * @param model of the neck with an unmeasured grip (`asUnmeasured`)
 * @returns undefined where nothing was read on it
 */
export function ownInJob(
  build: Build,
  evidence: Evidence,
  readings: readonly BowReading[],
  model: ResponseModel,
): OwnNeck | undefined {
  const before = ownNeck(build, evidence, model);
  if (!readings.some(({ seated }) => seated > 0)) return before;
  const earlier = before?.read.map((read) => ({ ...read, quarters: undefined })) ?? [];
  return { build: asUnmeasured(build, evidence.strips), model, read: [...earlier, readNeckOf(build, readings)] };
}
