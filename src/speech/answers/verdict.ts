/** The verdict in words: clause by clause, each with what it rests on, and in one short sentence to be read aloud. */
import type { ComputedKey } from '../../neck/quantities.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { isWithinReach } from '../../mechanics/inversion/rod.ts';
import type { LeastChange } from '../../verdict/in-short/least-change.ts';
import type { Feel, Verdict } from '../../verdict/in-short/verdict.ts';
import { bowBandText, bowText } from '../bow.ts';
import { checkNumbers, checkTitle } from '../checks.ts';
import { METHOD_WORDS } from '../en/workshop/workshop.ts';
import { UNCERTAIN_INPUT_WORDS } from '../en/workshop/uncertainty.ts';
import { VERDICT_WORDS } from '../en/workshop/verdict.ts';
import { formatRange } from '../quantity.ts';
import { numberOf, textOf } from '../quantity-text.ts';
import { nutText } from '../rod.ts';

/** What a clause opens: where a computed number comes from, or the control of a given one. */
export type Opens = { readonly origin: ComputedKey } | { readonly control: string };

export interface Clause {
  readonly id: 'not' | 'saw' | 'seat' | 'nip' | 'expect' | 'rod' | 'decides' | 'feel';
  readonly text: string;
  readonly opens?: Opens;
}

function notText({ obstacle }: Verdict, system: UnitSystem): string {
  if (!obstacle) return '';
  if (obstacle.kind === 'rod') return VERDICT_WORDS.not(VERDICT_WORDS.rodStatus[obstacle.status]);
  const { check } = obstacle;
  const numbers = checkNumbers(check, system);
  return VERDICT_WORDS.not(`${VERDICT_WORDS.stopped(checkTitle(check))}${numbers === '' ? '' : ` ${numbers}`}`);
}

function seatText({ seat }: Verdict, system: UnitSystem): string {
  const { method, seatingTool, meanSeatingForceN } = seat;
  const force = textOf('meanSeatingForceN', meanSeatingForceN, system);
  const isNone = force === textOf('meanSeatingForceN', 0, system);
  return VERDICT_WORDS.seat(method, seatingTool, isNone ? '' : force);
}

function nipText({ nip: { leastMm, mostMm } }: Verdict, system: UnitSystem): string {
  const [least, most] = [numberOf('nipMm', leastMm, system), textOf('nipMm', mostMm, system)];
  if (mostMm === 0) return VERDICT_WORDS.nipNone;
  return VERDICT_WORDS.nip(most.startsWith(`${least}\u00a0`) ? most : formatRange(least, most, ''));
}

function expectText({ expect }: Verdict, system: UnitSystem): string {
  const { frettedMm, settledMm, settledBand } = expect;
  const said = VERDICT_WORDS.expect(bowText(frettedMm, system), bowText(settledMm, system));
  return `${said}${settledBand ? VERDICT_WORDS.sure(bowBandText(settledBand.p05, settledBand.p95, system)) : VERDICT_WORDS.unsure}`;
}

function rodText({ rod }: Verdict, system: UnitSystem): string {
  if (!rod) return '';
  const { answer, chance } = rod;
  const relief = bowText(answer.reliefMm, system);
  if (!isWithinReach(answer)) return VERDICT_WORDS.rodNearest(nutText(answer.nut), relief);
  const set =
    answer.nut.way === 'none' ? VERDICT_WORDS.rodSnug(relief) : VERDICT_WORDS.rod(nutText(answer.nut), relief);
  const of100 = chance === undefined ? 100 : Math.round(100 * chance);
  return of100 === 100 ? set : `${set} ${VERDICT_WORDS.chance(String(of100))}`;
}

function feelText({ actionMm, notes, buzzing }: Feel, system: UnitSystem): string {
  const buzz = VERDICT_WORDS.buzz(VERDICT_WORDS.notes(String(buzzing), String(notes)));
  return VERDICT_WORDS.feel(textOf('actionMm', actionMm, system), buzzing > 0 ? buzz : VERDICT_WORDS.clean);
}

/** @param feel null while it is not known */
export function verdictClauses(verdict: Verdict, feel: Feel | null, system: UnitSystem): Clause[] {
  const { saw, obstacle, decides } = verdict;
  const kerf = textOf('kerfMm', saw.kerfMm, system);
  const clauses: (Clause | null)[] = [
    obstacle && { id: 'not', text: notText(verdict, system) },
    {
      id: 'saw',
      text: saw.isSawn
        ? VERDICT_WORDS.saw(kerf, textOf('slotDepthMm', saw.slotDepthMm, system))
        : VERDICT_WORDS.asTheyAre(kerf),
      opens: { control: 'kerfMm' },
    },
    { id: 'seat', text: seatText(verdict, system), opens: { control: 'method' } },
    { id: 'nip', text: nipText(verdict, system), opens: { control: 'nipClearanceMm' } },
    { id: 'expect', text: expectText(verdict, system), opens: { origin: 'settledReliefMm' } },
    verdict.rod && { id: 'rod', text: rodText(verdict, system), opens: { origin: 'turnsOfNut' } },
    decides ? { id: 'decides', text: VERDICT_WORDS.decides(UNCERTAIN_INPUT_WORDS[decides]) } : null,
    feel && { id: 'feel', text: feelText(feel, system), opens: { origin: 'actionMm' } },
  ];
  return clauses.filter((clause) => clause !== null);
}

/** Short enough to be read aloud: whether it comes out, what it settles to, what the rod does. */
export function spokenVerdict(verdict: Verdict, system: UnitSystem): string {
  const [not, rod] = [notText(verdict, system), rodText(verdict, system)];
  return [not, rod === '' ? expectText(verdict, system) : rod].filter((text) => text !== '').join(' ');
}

/** "saw 0.60 mm, not 0.58". */
export function leastChangeText(change: LeastChange, system: UnitSystem): string {
  if (change.kind === 'method') return VERDICT_WORDS.method(METHOD_WORDS[change.method].label);
  const { parameter, from, to } = change;
  const say = parameter === 'kerfMm' ? VERDICT_WORDS.kerf : VERDICT_WORDS.depth;
  return say(textOf(parameter, to, system), numberOf(parameter, from, system));
}
