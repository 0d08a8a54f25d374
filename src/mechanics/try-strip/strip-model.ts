/**
 * A strip as the mechanics see it: its lines and slots (strip/strip.ts), one contact for the frets of each group, and how both
 * answer to what is uncertain.
 *
 *   hump over a span   y = max over it of  ω(t)·Σ_g F_g·s_g(x)·q          s_g: line of the group's frets above the chord, mm/N
 *   force              F_g = φ_g(c_g·q_c·F_g)                             one slot for all of its group (uncertainty/one-slot.ts)
 *   wood               q = exp(a_a·z_a + a_d·z_d)/E,  q_c likewise        E over the stated one, z_a: stiffness across the grain,
 *                                                                         z_d: depth of the slots, deviates; a from two solves
 *                                                                         each of a shorter strip
 *
 * c_g is the opening over the force of the group's slots, on average, when all frets of the strip are seated together.
 * ω relaxes and creeps as on the neck (time.ts). Slots are meshed with the mean of their kerfs, which matters less than 0.5 %.
 */
import type { Build } from '../../neck/build.ts';
import { isOwnWood, ownWoodsWith } from '../../neck/materials/own-woods.ts';
import type { NeckWood } from '../description.ts';
import { AS_STATED } from '../deviations.ts';
import {
  boardProperties,
  measuredModulusMPa,
  standing,
  woodProperties,
  type WoodProperties,
} from '../elements/materials.ts';
import { sampleLine } from '../relief.ts';
import { embeddingStrengthMPa, type Contact } from '../seating/contact.ts';
import { seat } from '../seating/seating.ts';
import { studDiameterMm, tangContact } from '../seating/wire-contact.ts';
import { stripWedges, type StripDescription, type StripWedges } from '../strip/strip.ts';
import { logSpread, MODULUS_VARIATION, spreadsOf, type Spreads } from '../uncertainty/inputs.ts';
import { deviatedContact } from '../uncertainty/one-slot.ts';
import type { StripContent, StripSpan } from './document.ts';
import { fretsOf, groupOfSlot, slotPitchMm, slotXMm, spanOf } from './layout.ts';
import { STRIP_SLOT_DEPTH_ERROR_MM } from './spreads.ts';

/** What a strip takes from the neck that it speaks for: what is assumed of walls and time, and the wood of its board. */
export type StripNeck = Build;

export interface StripGroupModel {
  readonly contact: Contact;
  /** c_g, mm/N. */
  readonly flexibilityMmN: number;
  readonly frets: number;
}

export interface StripSpanModel {
  readonly over: StripSpan;
  /** s_g at the points of the span: groups × points, mm/N. */
  readonly shapeMm: Float64Array;
  readonly points: number;
}

/** ln of a response for one standard deviation of stiffness across the grain and of slot depth. */
export interface WoodAnswer {
  readonly acrossGrain: number;
  readonly slotDepth: number;
}

export interface StripModel {
  readonly strip: StripContent;
  readonly ownBoard: boolean;
  readonly wood: WoodProperties;
  readonly spreads: Spreads;
  readonly description: StripDescription;
  readonly groups: readonly StripGroupModel[];
  readonly spans: readonly StripSpanModel[];
  readonly bow: WoodAnswer;
  readonly opening: WoodAnswer;
  readonly wedgeRelaxation: number;
  /** All frets seated together, as stated, on the day that they go in: force of each, N, and hump over each span, mm. */
  readonly statedForceN: Float64Array;
  readonly statedHumpMm: readonly number[];
}

/** Points of a span at which its hump is looked for. */
const POINTS = 25;
/** Slots of the shorter strip. */
const TRIAL_SLOTS = 4;
/** Least interference of the studs in the state in which openings are found, mm; as in uncertainty/model.ts. */
const REFERENCE_INTERFERENCE_MM = 0.1;

/** The wood of an offcut: the neck's own where it was cut from its board, as far as that was measured. */
export function stripWood({ offcut }: StripContent, neck: StripNeck, ownBoard: boolean): WoodProperties {
  if (ownBoard) {
    const board = boardProperties(neck);
    return { ...board, modulusMPa: measuredModulusMPa(neck, 'board') ?? board.modulusMPa };
  }
  return woodProperties(offcut.wood, {
    woodValues: neck.woodValues,
    ownWoods: isOwnWood(offcut.wood)
      ? ownWoodsWith({ modulusGPa: offcut.ownModulusGPa!, densityKgM3: offcut.ownDensityKgM3! })
      : [],
  });
}

/** Spreads of a strip's inputs: those of the neck, and for another board those of a wood that nobody has measured. */
function stripSpreads(neck: StripNeck, ownBoard: boolean): Spreads {
  const spreads = spreadsOf(neck);
  return ownBoard ? spreads : { ...spreads, boardModulus: logSpread(MODULUS_VARIATION) };
}

export function describeStrip(strip: StripContent, wood: WoodProperties, acrossGrain = 1): StripDescription {
  const { offcut, wire, slotDepthMm, groups } = strip;
  const across = standing(wood.ratios, offcut.sawn === 'quarter' ? 'tangential' : 'radial');
  const board: NeckWood = {
    modulusMPa: wood.modulusMPa,
    ...across,
    depthRatio: across.depthRatio * acrossGrain,
    widthRatio: across.widthRatio * acrossGrain,
    shearRatio: across.shearRatio * acrossGrain,
  };
  const meanKerf = groups.reduce((sum, { kerfMm, frets }) => sum + kerfMm * frets, 0) / fretsOf(strip);
  return {
    lengthMm: offcut.lengthMm,
    widthMm: offcut.widthMm,
    thicknessMm: offcut.thicknessMm,
    slotXMm: slotXMm(strip),
    kerfMm: meanKerf,
    slotDepthMm,
    contactDepthMm: wire.tangDepthMm,
    wood: board,
  };
}

/** The contact of a group's frets, with the neck's assumptions on walls and an unmeasured bite. */
function stripContact(
  strip: StripContent,
  wood: WoodProperties,
  neck: StripNeck,
  kerfMm: number,
  studShape: number,
): Contact {
  const { wire, offcut } = strip;
  return tangContact({
    lengthMm: offcut.widthMm,
    depthMm: wire.tangDepthMm,
    kerfMm,
    tangWidthMm: wire.tangWidthMm,
    studWidthMm: wire.studWidthMm,
    studAreaMm2: wire.studAreaMm2,
    studPitchMm: wire.studPitchMm,
    studShape,
    embeddingStrengthMPa: embeddingStrengthMPa(studDiameterMm(wire.studAreaMm2), wood.densityKgM3),
    crushingMPa: wood.crushingMPa,
    studSoftnessMm: neck.studSoftnessMm,
    wallStiffnessNMm3: neck.wallStiffnessNMm3,
    biteFactor: 1,
  });
}

/** Opening of every slot, and line over the stations, under a force in each slot. */
function openings({ openingMm }: StripWedges, forceN: ArrayLike<number>): Float64Array {
  const slots = forceN.length;
  return Float64Array.from({ length: slots }, (_, i) => {
    let sum = 0;
    for (let j = 0; j < slots; j += 1) sum += openingMm[j * slots + i] * forceN[j];
    return sum;
  });
}

/** A strip of a few slots with the same pitch, which answers to the wood and to the depth of its slots as the whole does. */
export function shorterStrip(strip: StripContent): StripContent {
  const frets = Math.min(TRIAL_SLOTS, fretsOf(strip));
  const pitch = slotPitchMm(strip);
  return {
    ...strip,
    offcut: { ...strip.offcut, lengthMm: frets * pitch },
    endMm: pitch / 2,
    groups: [{ ...strip.groups[0], frets }],
  };
}

/** The strip with slots that are less deep. The tang may reach to their floor, and is taken to end above it. */
export function shallower(strip: StripContent, wood: WoodProperties, byMm: number, acrossGrain = 1): StripDescription {
  const slotDepthMm = strip.slotDepthMm - byMm;
  const description = describeStrip({ ...strip, slotDepthMm }, wood, acrossGrain);
  return { ...description, contactDepthMm: Math.min(description.contactDepthMm, 0.99 * slotDepthMm) };
}

function woodAnswers(strip: StripContent, wood: WoodProperties, spreads: Spreads): Pick<StripModel, 'bow' | 'opening'> {
  const short = shorterStrip(strip);
  const frets = fretsOf(short);
  /** Bow over the whole strip, and opening of the slot in its middle, with 1 N in each. */
  const amounts = (shallowerMm: number, acrossGrain: number) => {
    const wedges = stripWedges(shallower(short, wood, shallowerMm, acrossGrain));
    const { stationXMm, wedgeMm } = wedges;
    const stations = stationXMm.length;
    const line = new Float64Array(stations);
    for (let i = 0; i < frets * stations; i += 1) line[i % stations] += wedgeMm[i];
    const middle = sampleLine(stationXMm, line, short.offcut.lengthMm / 2);
    const bow = middle - (line[0] + line[stations - 1]) / 2;
    return [bow, openings(wedges, new Float64Array(frets).fill(1))[frets >> 1]] as const;
  };
  const stated = amounts(0, 1);
  const across = amounts(0, Math.exp(spreads.acrossGrain));
  const shallow = amounts(STRIP_SLOT_DEPTH_ERROR_MM, 1);
  const answer = (at: 0 | 1): WoodAnswer => ({
    acrossGrain: Math.log(across[at] / stated[at]),
    slotDepth: -Math.log(shallow[at] / stated[at]),
  });
  return { bow: answer(0), opening: answer(1) };
}

/** The line of a group's frets above the chord of a span, at its points, 1 N being the mean of their forces. */
function spanModel(
  strip: StripContent,
  wedges: StripWedges,
  over: StripSpan,
  shares: ArrayLike<number>,
): StripSpanModel {
  const [from, to] = spanOf(strip, over);
  const groupOf = groupOfSlot(strip);
  const { stationXMm, wedgeMm } = wedges;
  const stations = stationXMm.length;
  const shapeMm = new Float64Array(strip.groups.length * POINTS);
  groupOf.forEach((group, slot) => {
    const line = wedgeMm.subarray(slot * stations, (slot + 1) * stations);
    const at = (x: number) => shares[slot] * sampleLine(stationXMm, line, x);
    const [a, b] = [at(from), at(to)];
    for (let p = 0; p < POINTS; p += 1) {
      const s = (p + 1) / (POINTS + 1);
      shapeMm[group * POINTS + p] += at(from + s * (to - from)) - a - (b - a) * s;
    }
  });
  return { over, shapeMm, points: POINTS };
}

/** Every span that a straightedge can bridge. */
export function spansOf(strip: Pick<StripContent, 'groups'>): StripSpan[] {
  return ['ends', ...strip.groups.keys()];
}

function solved(strip: StripContent, neck: StripNeck, ownBoard: boolean, studShape: number): StripModel {
  const wood = stripWood(strip, neck, ownBoard);
  const spreads = stripSpreads(neck, ownBoard);
  const description = describeStrip(strip, wood);
  const wedges = stripWedges(description);
  const groupOf = groupOfSlot(strip);
  const contacts = strip.groups.map(({ kerfMm }) => stripContact(strip, wood, neck, kerfMm, studShape));
  const least = Math.min(...contacts.map(({ studInterferenceMm }) => studInterferenceMm));
  const studWidthMm = Math.max(0, REFERENCE_INTERFERENCE_MM - least);
  const biting = contacts.map((contact) => deviatedContact(contact, { ...AS_STATED, studWidthMm }));
  const seated = seat(
    groupOf.map((group) => biting[group]),
    wedges.openingMm,
  );
  const statedForceN =
    studWidthMm === 0
      ? seated.forceN
      : seat(
          groupOf.map((group) => contacts[group]),
          wedges.openingMm,
        ).forceN;
  const slotsOf = contacts.map((_, group) => groupOf.flatMap((of, slot) => (of === group ? [slot] : [])));
  const mean = (group: number, values: (slot: number) => number) =>
    slotsOf[group].reduce((sum, slot) => sum + values(slot), 0) / slotsOf[group].length;
  const meanForce = contacts.map((_, group) => mean(group, (slot) => seated.forceN[slot]));
  const shares = seated.forceN.map((force, slot) => force / meanForce[groupOf[slot]]);
  return {
    strip,
    ownBoard,
    wood,
    spreads,
    description,
    groups: contacts.map((contact, group) => ({
      contact,
      flexibilityMmN: mean(group, (slot) => seated.openingMm[slot]) / meanForce[group],
      frets: slotsOf[group].length,
    })),
    spans: spansOf(strip).map((over) => spanModel(strip, wedges, over, shares)),
    ...woodAnswers(strip, wood, spreads),
    wedgeRelaxation: neck.wedgeRelaxation,
    statedForceN,
    statedHumpMm: spansOf(strip).map((over) => {
      const { shapeMm, points } = spanModel(strip, wedges, over, statedForceN);
      return greatest(shapeMm, points, () => 1);
    }),
  };
}

/** The last strips that were solved: readings come one by one, and change nothing of them. */
const kept = new Map<string, StripModel>();
const MOST_KEPT = 8;

/** All that a model rests on. */
function keyOf(strip: StripContent, neck: StripNeck, ownBoard: boolean, studShape: number): string {
  const { stiffness: _stiffness, cutFrom: _cutFrom, ...offcut } = strip.offcut;
  const { name: _name, ...wire } = strip.wire;
  const groups = strip.groups.map(({ kerfMm, kerfErrorMm, frets }) => [kerfMm, kerfErrorMm, frets]);
  const { studSoftnessMm, wallStiffnessNMm3, wedgeRelaxation } = neck;
  return JSON.stringify([
    [offcut, wire, strip.slotDepthMm, strip.endMm, groups, ownBoard, studShape],
    [studSoftnessMm, wallStiffnessNMm3, wedgeRelaxation],
    [stripWood(strip, neck, ownBoard), stripSpreads(neck, ownBoard)],
  ]);
}

/**
 * @param neck the build that the strip speaks for
 * @param ownBoard was the strip cut from its board?
 * @param studShape what the deviates of the shape are told from; as the strip believes it when left out
 */
export function stripModel(
  strip: StripContent,
  neck: StripNeck,
  ownBoard: boolean,
  studShape: number = strip.wire.studShape,
): StripModel {
  const key = keyOf(strip, neck, ownBoard, studShape);
  const model = kept.get(key) ?? solved(strip, neck, ownBoard, studShape);
  kept.delete(key);
  kept.set(key, model);
  const [oldest] = kept.keys();
  if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  return { ...model, strip };
}

/** The value of greatest size of Σ_g amount_g·shape_g over the points, with its sign. */
export function greatest(shapeMm: Float64Array, points: number, amount: (group: number) => number): number {
  let found = 0;
  const groups = shapeMm.length / points;
  for (let p = 0; p < points; p += 1) {
    let sum = 0;
    for (let group = 0; group < groups; group += 1) sum += amount(group) * shapeMm[group * points + p];
    if (Math.abs(sum) > Math.abs(found)) found = sum;
  }
  return found;
}
