/**
 * A fret that was spoilt, pulled and seated again: what its slot still grips, and what other ways give, by the law of the
 * grip (contact.ts).
 *
 *   same place     F = min{ ρ·F₀, φ(β₀ − e) }        the studs go back into their own pits, on the elastic line from where they
 *                                                   stood, of which time has left ρ; and grip no more than fresh studs would on
 *                                                   walls that lie back by e
 *   beside         F = φ(β₀ − e)                    moved along the slot by half a pitch of its studs, into wood that none has
 *                                                   pitted
 *   wider studs    F = φ(β₀)                        wider by 2e: each stud as deep in its wall as before
 *   glue           F of the same place, and 2·τ·A of pull-out beside its friction
 *
 * φ first loading, F₀ the force when it was new, β₀ the bite then, e = (kerf now − kerf before)/2, as feelers show it; N, mm.
 * Assumed: pulling tears no more wood out of the walls than the wider slot shows. What it does tear makes every one of these
 * too much; where chips came out, the first is no way.
 */
import { slotAndTang, type Build, type FretRegion } from '../../neck/build.ts';
import { gluedTangMm2 } from '../../neck/glue-reach.ts';
import { boardRadiusMm } from '../../neck/neck-shape.ts';
import { parameterById } from '../../neck/parameters.ts';
import { AS_STATED } from '../deviations.ts';
import type { Predictor } from '../predict.ts';
import type { Method, Prediction } from '../prediction-types.ts';
import { Refused } from '../refusal.ts';
import { extremeRelief } from '../relief.ts';
import { wedgeForceLeft } from '../time.ts';
import { contactForce, seatedAt } from './contact.ts';
import { GLUE_SHEAR_MPA } from './forces.ts';
import { contactsOf, tangLengthsMm } from './wire-contact.ts';

export const RESEAT_WAYS = ['same-place', 'beside', 'wider', 'glue'] as const;
export type ReseatWay = (typeof RESEAT_WAYS)[number];

export interface ReseatWish {
  readonly fret: number;
  /** Kerf of its slot now that the fret is out, mm; no less than it was. */
  readonly kerfMm: number;
  /** Days that the fret had been in. */
  readonly days: number;
}

export interface ReseatOption {
  readonly way: ReseatWay;
  /** Stretches with which the build has it so; null where a build cannot say it. */
  readonly regions: readonly FretRegion[] | null;
  /** Width over the studs, mm. */
  readonly studWidthMm: number;
  readonly forceN: number;
  /** Of the force that the fret had when it was new. */
  readonly share: number;
  readonly pullOutN: number;
  /** Relief of greatest size with all frets in, mm. */
  readonly reliefMm: number;
}

export interface ReseatAnswer {
  readonly fret: number;
  /** When it was new. */
  readonly forceN: number;
  readonly pullOutN: number;
  readonly reliefMm: number;
  readonly options: readonly ReseatOption[];
}

/** Wire comes, and studs are measured, in steps of this, mm. */
const STUD_STEP_MM = 0.005;

type Pressed = Exclude<Method, 'glue'>;

function regionsWith(build: Build, { fret, kerfMm }: ReseatWish, studWidthMm: number): readonly FretRegion[] {
  const { tangWidthMm } = slotAndTang(build, fret);
  const here = (region: FretRegion) => region.fromFret === fret && region.toFret === fret;
  return [
    ...build.regions.filter((region) => !here(region)),
    { fromFret: fret, toFret: fret, kerfMm, tangWidthMm, studWidthMm },
  ];
}

/** Relief with all frets in when one of them pushes with a share of its force. */
function reliefWithShare(
  { stationXMm, fretXMm, straightedge, methods }: Prediction,
  method: Pressed,
  fret: number,
  share: number,
) {
  const { fretted, basis } = methods[method];
  const own = basis.wedgeMm.subarray((fret - 1) * stationXMm.length, fret * stationXMm.length);
  const line = fretted.reliefMm.map((relief, i) => relief + (share - 1) * own[i]);
  const { fromFret, toFret } = straightedge;
  return extremeRelief(stationXMm, line, fretXMm[fromFret - 1], fretXMm[toFret - 1]).extremeMm;
}

/** @throws {RangeError} for a fret that is not there, a slot narrower than it was, or days below nothing. */
export function answerReseat(predictor: Pick<Predictor, 'predict'>, build: Build, wish: ReseatWish): ReseatAnswer {
  const { fret, kerfMm, days } = wish;
  if (!Number.isInteger(fret) || fret < 1 || fret > build.fretCount)
    throw new Refused({ code: 'fret-not-there', fret, frets: build.fretCount });
  const before = slotAndTang(build, fret);
  if (!(kerfMm >= before.kerfMm - 1e-9)) throw new Refused({ code: 'slot-narrower', kerfMm, beforeMm: before.kerfMm });
  if (!(days >= 0)) throw new Refused({ code: 'days-negative', days });
  const method: Pressed = build.method === 'both' ? 'both' : 'press';
  const prediction = predictor.predict(build);
  const stated = prediction.methods[method];
  const [forceN, openingMm] = [stated.wedgeForceN[fret - 1], stated.openingMm[fret - 1]];
  const frictionOf = (force: number) => 2 * build.friction * force;

  const contact = contactsOf(build, AS_STATED)[fret - 1];
  const wider = { ...build, regions: regionsWith(build, wish, before.studWidthMm) };
  const fresh = contactForce(contactsOf(wider, AS_STATED)[fret - 1], openingMm).forceN;
  const left = contactForce(
    contact,
    openingMm,
    seatedAt(contact, openingMm, wedgeForceLeft(days, build.wedgeRelaxation)),
  ).forceN;
  const again = Math.min(left, fresh);
  const shareOf = (force: number) => (forceN === 0 ? 0 : force / forceN);

  const length = tangLengthsMm(build)[fret - 1];
  const gluedMm2 = gluedTangMm2(build, boardRadiusMm(build, prediction.fretXMm[fret - 1]), length / 2);
  const same = {
    regions: null,
    studWidthMm: before.studWidthMm,
    forceN: again,
    share: shareOf(again),
    reliefMm: reliefWithShare(prediction, method, fret, shareOf(again)),
  };
  const byRegions = (way: ReseatWay, studWidthMm: number): ReseatOption => {
    const regions = regionsWith(build, wish, studWidthMm);
    const of = predictor.predict({ ...build, regions }).methods[method];
    const force = of.wedgeForceN[fret - 1];
    return {
      way,
      regions,
      studWidthMm,
      forceN: force,
      share: shareOf(force),
      pullOutN: frictionOf(force),
      reliefMm: of.fretted.extremeMm,
    };
  };
  const wanted = before.studWidthMm + kerfMm - before.kerfMm;
  const { max } = parameterById('studWidthMm') as { readonly max: number };
  const studs = Math.round(wanted / STUD_STEP_MM) * STUD_STEP_MM;
  return {
    fret,
    forceN,
    pullOutN: frictionOf(forceN),
    reliefMm: stated.fretted.extremeMm,
    options: [
      { way: 'same-place', ...same, pullOutN: frictionOf(again) },
      byRegions('beside', before.studWidthMm),
      ...(studs > before.studWidthMm && studs <= Math.min(max, build.crownWidthMm)
        ? [byRegions('wider', Number(studs.toFixed(3)))]
        : []),
      { way: 'glue', ...same, pullOutN: frictionOf(again) + 2 * GLUE_SHEAR_MPA * gluedMm2 },
    ],
  };
}
