/**
 * The one parameter table. It feeds the controls, the validation, the project file, the link, the sheets and the help.
 * To add a parameter: add a row here; `Build` (build.ts), the schema and the controls follow.
 */
import type { Build } from './build.ts';
import { sayText } from '../speech/language.ts';
import { GLUES } from './glues.ts';
import { METALS } from './metals.ts';
import type { ChoiceParameter, FlagParameter, GroupId, NumberParameter, Parameter } from './parameter-kinds.ts';
import type { Unit } from './units.ts';
import { WOOD_OPTIONS } from './woods.ts';

const PRACTICE = 'common practice, no source';
const ASSUMED = 'assumption; the bench log corrects it';

type When = Readonly<Record<string, readonly (string | boolean)[]>>;
interface More {
  readonly digits?: number;
  readonly source?: string;
  readonly when?: When;
  readonly integer?: true;
}

function number<const Id extends string>(
  group: GroupId,
  id: Id,
  label: string,
  unit: Unit,
  [min, max, step, standard]: readonly [min: number, max: number, step: number, standard: number],
  typical: readonly [number, number],
  hint: string,
  more: More = {},
): NumberParameter<Id> {
  const digits = more.digits ?? Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const { source = PRACTICE, when, integer } = more;
  return {
    kind: 'number',
    id,
    group,
    label: sayText(label),
    unit,
    min,
    max,
    step,
    digits,
    default: standard,
    typical,
    hint: sayText(hint),
    source: sayText(source),
    ...(when ? { when } : {}),
    ...(integer ? { integer } : {}),
  };
}

function choice<const Id extends string, const Value extends string>(
  group: GroupId,
  id: Id,
  label: string,
  options: readonly { readonly value: Value; readonly label: string }[],
  standard: NoInfer<Value>,
  hint: string,
  more: Pick<More, 'source' | 'when'> = {},
): ChoiceParameter<Id, Value> {
  const { source = PRACTICE, when } = more;
  return {
    kind: 'choice',
    id,
    group,
    label: sayText(label),
    options: options.map((option) => ({ ...option, label: sayText(option.label) })),
    default: standard,
    hint: sayText(hint),
    source: sayText(source),
    ...(when ? { when } : {}),
  };
}

function flag<const Id extends string>(
  group: GroupId,
  id: Id,
  label: string,
  standard: boolean,
  hint: string,
  more: Pick<More, 'source' | 'when'> = {},
): FlagParameter<Id> {
  const { source = PRACTICE, when } = more;
  return {
    kind: 'flag',
    id,
    group,
    label: sayText(label),
    default: standard,
    hint: sayText(hint),
    source: sayText(source),
    ...(when ? { when } : {}),
  };
}

/** A wood known by its species, or measured as a blank by tapping it or by hanging a weight on it. */
function blank<const P extends 'neck' | 'board'>(
  part: P,
  group: GroupId,
  name: string,
  size: readonly [number, number, number],
) {
  const tap: When = { [`${part}BlankTest`]: ['tap'] };
  const measured: When = { [`${part}BlankTest`]: ['tap', 'sag'] };
  const sag: When = { [`${part}BlankTest`]: ['sag'] };
  const size3 = 'ASTM E1876 for the bar in bending, beam formula for the weight';
  return [
    choice(
      group,
      `${part}BlankTest`,
      `${name} blank measured`,
      [
        { value: 'none', label: 'no: use the species value' },
        { value: 'tap', label: 'tapped, by its ringing frequency' },
        { value: 'sag', label: 'bent, by a weight at its middle' },
      ],
      'none',
      `A measured ${name.toLowerCase()} blank replaces the stiffness of the species and narrows the band.`,
    ),
    number(
      group,
      `${part}BlankLengthMm`,
      `${name} blank length`,
      'mm',
      [200, 1200, 1, size[0]],
      [400, 900],
      'Length of the rectangular blank that was measured.',
      { when: measured, source: size3 },
    ),
    number(
      group,
      `${part}BlankWidthMm`,
      `${name} blank width`,
      'mm',
      [20, 200, 0.5, size[1]],
      [50, 110],
      'Width of the rectangular blank.',
      { when: measured, source: size3 },
    ),
    number(
      group,
      `${part}BlankThicknessMm`,
      `${name} blank thickness`,
      'mm',
      [3, 60, 0.1, size[2]],
      [6, 30],
      'Thickness in the direction in which it bends.',
      { when: measured, source: size3 },
    ),
    number(
      group,
      `${part}BlankMassG`,
      `${name} blank mass`,
      'g',
      [20, 5000, 1, Math.round((size[0] * size[1] * size[2] * 0.7) / 1000)],
      [150, 2000],
      'Mass of the blank on the scale.',
      { when: tap, source: size3 },
    ),
    number(
      group,
      `${part}BlankFrequencyHz`,
      `${name} blank frequency`,
      'Hz',
      [10, 3000, 0.5, part === 'neck' ? 225 : 105],
      [40, 400],
      'First bending frequency when hung at 22 % from both ends and tapped at the middle.',
      { when: tap, source: size3 },
    ),
    number(
      group,
      `${part}BlankSpanMm`,
      `${name} blank span`,
      'mm',
      [150, 1200, 1, Math.round(size[0] * 0.8)],
      [300, 800],
      'Distance between the two supports.',
      { when: sag, source: size3 },
    ),
    number(
      group,
      `${part}BlankLoadN`,
      `${name} blank load`,
      'N',
      [0.5, 500, 0.5, part === 'neck' ? 50 : 10],
      [5, 100],
      'Weight hung at mid-span: 1 kg pulls 9.81 N.',
      { when: sag, source: size3 },
    ),
    number(
      group,
      `${part}BlankSagMm`,
      `${name} blank deflection`,
      'mm',
      [0.05, 50, 0.01, part === 'neck' ? 0.6 : 2.2],
      [0.5, 5],
      'How far the middle goes down under that weight.',
      { when: sag, source: size3 },
    ),
  ] as const;
}

// prettier-ignore
export const PARAMETERS = [
  // The neck
  number('neck', 'scaleLengthMm', 'Scale length', 'mm', [450, 920, 1, 648], [560, 870], 'Vibrating length of the open string; it places every fret.', { digits: 1 }),
  number('neck', 'fretCount', 'Frets', '', [12, 36, 1, 22], [19, 24], 'How many frets the board carries. More slots, more bow.', { integer: true }),
  number('neck', 'bodyJointFret', 'Body joins at fret', '', [10, 24, 1, 16], [12, 19], 'Fret over the edge of the body. The neck is free up to here and hardly bends beyond.', { integer: true }),
  number('neck', 'widthNutMm', 'Width at the nut', 'mm', [34, 64, 0.1, 43], [38, 54], 'Board width at the nut.'),
  number('neck', 'widthLastFretMm', 'Width at the last fret', 'mm', [38, 80, 0.1, 56], [50, 65], 'Board width at the last fret.'),
  number('neck', 'thicknessFret1Mm', 'Thickness at fret 1', 'mm', [15, 32, 0.1, 21], [19, 24], 'Board and neck together, at the centre. Stiffness grows with its third power.'),
  number('neck', 'thicknessFret12Mm', 'Thickness at fret 12', 'mm', [15, 34, 0.1, 23], [20, 26], 'Board and neck together, at the centre.'),
  number('neck', 'backExponent', 'Back profile', '', [1.4, 4, 0.05, 2.2], [1.7, 2.8], '2 is half an ellipse; below leans towards a V, above towards a square U.', { source: 'the profile equation in mechanics/MODEL.md' }),
  number('neck', 'backShoulderMm', 'Shoulder under the board', 'mm', [0.5, 6, 0.1, 2.5], [2, 3], 'Straight edge of the neck below the board before the back curves in.'),
  choice('neck', 'heelStyle', 'Heel', [{ value: 'block', label: 'bolt-on block' }, { value: 'set', label: 'set heel' }], 'block', 'Shape of the heel. The calculation sees its thickness and length only.'),
  number('neck', 'heelThicknessMm', 'Heel adds', 'mm', [0, 50, 0.5, 20], [10, 30], 'How much deeper the neck becomes at the body joint.', { source: ASSUMED }),
  number('neck', 'heelLengthMm', 'Heel begins before the joint', 'mm', [5, 90, 1, 30], [15, 50], 'Over this length the neck thickens into the heel.', { source: ASSUMED }),
  number('neck', 'ownModulusGPa', 'My own wood: E along the grain', 'GPa', [4, 30, 0.1, 13], [8, 24], 'Longitudinal modulus of the wood called “my own wood”.', { source: 'your own measurement' }),
  number('neck', 'ownDensityKgM3', 'My own wood: density', 'kg/m³', [250, 1400, 5, 700], [400, 1200], 'Density at the moisture content of the shop. It sets how hard the studs bite.', { source: 'your own measurement' }),
  ...blank('neck', 'neck', 'Neck', [750, 90, 25]),

  // The board
  choice('board', 'boardWood', 'Board wood', WOOD_OPTIONS, 'indian-rosewood', 'Its density decides how firmly the studs bite; its stiffness joins the neck’s.', { source: 'Wood Handbook FPL-GTR-190 and -282, AH 607, Tropix: see woods.ts' }),
  choice('board', 'boardSawn', 'Board sawn', [{ value: 'flat', label: 'flat-sawn' }, { value: 'quarter', label: 'quarter-sawn' }], 'flat', 'Which way the growth rings stand. It changes stiffness across the grain only.', { source: 'Wood Handbook FPL-GTR-190 Table 5-1' }),
  number('board', 'boardThicknessMm', 'Board thickness', 'mm', [3.5, 10, 0.1, 6], [5, 7], 'At the centre line, on top of the neck.'),
  choice('board', 'boardShape', 'Board shape', [{ value: 'flat', label: 'flat' }, { value: 'cylinder', label: 'one radius' }, { value: 'cone', label: 'conical, two radii' }], 'cylinder', 'The arc across the strings.'),
  number('board', 'radiusNutMm', 'Radius at the nut', 'mm', [150, 1000, 1, 305], [184, 508], 'Radius of the board; on a conical board, at the nut.', { when: { boardShape: ['cylinder', 'cone'] } }),
  number('board', 'radiusLastFretMm', 'Radius at the last fret', 'mm', [150, 1500, 1, 406], [254, 610], 'Radius of a conical board at the last fret.', { when: { boardShape: ['cone'] } }),
  number('board', 'boardBeyondLastFretMm', 'Board beyond the last fret', 'mm', [3, 40, 0.5, 10], [5, 20], 'How far the board runs on after the last fret.'),
  ...blank('board', 'board', 'Board', [560, 70, 9]),

  // The wire
  choice('wire', 'wireMetal', 'Wire metal', METALS.map((metal) => ({ value: metal.id, label: metal.label })), 'nickel-silver-18', 'Nickel, hardness and springback come from the alloy; the wedge comes from the tang.', { source: 'alloy data, see metals.ts' }),
  number('wire', 'crownWidthMm', 'Crown width', 'mm', [1.2, 3.4, 0.01, 2.4], [2, 2.9], 'Width of the crown at its foot.'),
  number('wire', 'crownHeightMm', 'Crown height', 'mm', [0.6, 1.8, 0.01, 1.2], [0.9, 1.5], 'From the board to the top of the crown, as bought. Levelling spends it.'),
  number('wire', 'tangWidthMm', 'Tang body width', 'mm', [0.3, 0.9, 0.005, 0.5], [0.48, 0.56], 'Thickness of the tang between its studs. Wider than the kerf, it wedges hard.'),
  number('wire', 'studWidthMm', 'Width over the studs', 'mm', [0.3, 1.4, 0.005, 0.76], [0.7, 0.95], 'Tang width measured over the studs on both sides.'),
  number('wire', 'tangDepthMm', 'Tang depth', 'mm', [0.8, 3, 0.05, 2], [1.4, 2.2], 'From the underside of the crown to the foot of the tang.'),
  number('wire', 'studAreaMm2', 'Area of one stud', 'mm²', [0.1, 1.5, 0.01, 0.48], [0.3, 0.7], 'Area with which one stud stands against the slot wall.', { source: ASSUMED }),
  number('wire', 'studPitchMm', 'Stud pitch per side', 'mm', [1, 8, 0.05, 2.5], [2, 4], 'Distance from stud to stud on one side of the tang.'),
  number('wire', 'leastCrownMm', 'Least crown height', 'mm', [0.3, 1.4, 0.05, 0.8], [0.7, 1], 'Below this a crown is too low to play well or to level again.'),
  number('wire', 'levellingLossMm', 'Spent on unevenness', 'mm', [0, 0.4, 0.01, 0.05], [0.02, 0.1], 'What filing, crowning and polishing take off every crown besides the bow: uneven wire and seating.'),
  choice('wire', 'wireForm', 'Wire bought as', [{ value: 'stick', label: 'straight sticks' }, { value: 'coil', label: 'a coil' }], 'stick', 'Sticks are cut with least waste. A coil comes bent, and is bent on from there.'),
  number('wire', 'stickLengthMm', 'Stick length', 'mm', [100, 2000, 1, 260], [240, 620], 'Length of one stick of wire.', { when: { wireForm: ['stick'] } }),
  number('wire', 'coilRadiusMm', 'Radius of the coil', 'mm', [50, 600, 1, 150], [90, 300], 'Radius to which the wire is bent as it comes.', { when: { wireForm: ['coil'] } }),
  number('wire', 'cutLossMm', 'Lost at each cut', 'mm', [0, 5, 0.1, 0.5], [0, 2], 'What the nippers crush or the saw takes between two pieces.'),
  number('wire', 'wireSparePercent', 'Spare wire', '%', [0, 100, 1, 10], [5, 20], 'Wire to order beyond what the frets take, in whole spare frets.'),
  number('wire', 'wireRadiusPercent', 'Bend the wire to', '%', [50, 120, 1, 90], [80, 100], 'Radius of the bent wire as a share of the board’s. Below 100 the ends sit down first. A flat board takes straight wire.', { when: { boardShape: ['cylinder', 'cone'] } }),
  flag('wire', 'nickelSensitivePlayer', 'Player sensitive to nickel', false, 'Ask before choosing the wire. It only adds a check.'),

  // The slots
  number('slots', 'kerfMm', 'Kerf', 'mm', [0.3, 1.2, 0.005, 0.58], [0.51, 0.64], 'Width of the saw cut. A few hundredths decide between no bite and a bowed neck.', { digits: 3 }),
  number('slots', 'slotDepthMm', 'Slot depth', 'mm', [1, 6, 0.05, 3], [2.3, 3.2], 'Below the board’s surface at the centre line. It must clear the tang.'),
  number('slots', 'slotClearanceMm', 'Air below the tang', 'mm', [0, 2, 0.05, 0.4], [0.2, 0.8], 'Least depth that must be left under the foot of the tang, for dust, glue and filler.'),
  choice('slots', 'slotBottom', 'Slot bottom', [{ value: 'radiused', label: 'follows the radius' }, { value: 'flat', label: 'flat, straight saw cut' }], 'radiused', 'A flat cut in a radiused board is shallower at the edges than at the centre.'),
  number('slots', 'chamferMm', 'Chamfer', 'mm', [0, 1.2, 0.05, 0.25], [0.15, 0.4], 'Width of the bevel on each edge of the slot; it saves the board at the next refret.'),

  // How they go in
  choice('seating', 'method', 'Seating', [{ value: 'press', label: 'press fit' }, { value: 'glue', label: 'glue fit' }, { value: 'both', label: 'press and glue' }], 'press', 'Pressed frets wedge the board. Glued ones fill the slot. Pressed and glued do both.'),
  choice('seating', 'seatingTool', 'Driven by', [{ value: 'hammer', label: 'a hammer' }, { value: 'press', label: 'a press with a caul' }], 'press', 'It decides the steps on the bench sheet, not the forces.'),
  choice('seating', 'seatingOrder', 'Order of the frets', [{ value: 'spread', label: 'every fourth, then between' }, { value: 'nut-first', label: 'from the nut on' }, { value: 'body-first', label: 'from the last fret on' }], 'spread', 'Spread out, each quarter of the frets makes about a quarter of the bow, so the straightedge tells early.'),
  choice('seating', 'glueKind', 'Glue', GLUES.map((glue) => ({ value: glue.id, label: glue.label })), 'wood-glue', 'Sets the open time, the clamping time and the cautions. The stiffness below is a number of its own.', { when: { method: ['glue', 'both'] } }),
  number('seating', 'glueModulusMPa', 'Glue stiffness', 'MPa', [50, 6000, 50, 2500], [500, 3500], 'Modulus of the set glue.', { source: ASSUMED, when: { method: ['glue', 'both'] } }),
  number('seating', 'glueReachPercent', 'Slot filled to', '%', [0, 100, 1, 100], [50, 100], 'Share of the slot depth, from the top, that the glue reaches.', { source: ASSUMED, when: { method: ['glue', 'both'] } }),

  // Edges and binding
  number('edges', 'bindingLineCount', 'Binding lines per side', '', [0, 5, 1, 0], [0, 3], 'Lines of binding and purfling along each edge of the board. 0 is an unbound board.', { integer: true }),
  number('edges', 'linesSawnThrough', 'Inner lines sawn through', '', [0, 5, 1, 0], [0, 3], 'How many lines, from the wood outwards, the saw passes through. The crown rests on the rest.', { integer: true }),
  number('edges', 'nipClearanceMm', 'Nip clearance', 'mm', [0, 2, 0.05, 0.5], [0.3, 1], 'Air between the end of the nipped tang and the binding left whole.'),
  number('edges', 'endBevelDegrees', 'Fret-end bevel', '°', [10, 60, 1, 32], [25, 40], 'Angle by which the filed fret end leans in from the vertical.'),
  number('edges', 'endInsetMm', 'Fret end inset', 'mm', [0, 1.5, 0.05, 0.1], [0, 0.4], 'How far the foot of the crown stops short of the edge of the board after filing.'),
  number('edges', 'oversizeMm', 'Wire oversize per end', 'mm', [0, 8, 0.25, 2], [1, 4], 'Wire left over each edge before it is cut flush and filed.'),

  // The strings
  number('strings', 'stringHeightNutMm', 'String height at the nut', 'mm', [0.5, 5, 0.05, 1.7], [1.2, 2.2], 'Mean height of the strings above the crown of the board at the nut.'),
  number('strings', 'stringHeightFret12Mm', 'String height at fret 12', 'mm', [1, 8, 0.05, 3.1], [2.5, 5], 'Mean height above the crown of the board at fret 12: action plus fret height.'),
  number('strings', 'stringEdgeMm', 'Outer strings from the edge', 'mm', [1.5, 7, 0.1, 3.4], [2.8, 4.5], 'Distance of the outer strings from the edge of the board.'),

  // Rod and bars
  choice('rod', 'rodKind', 'Rod', [{ value: 'none', label: 'no rod' }, { value: 'one-way', label: 'one-way' }, { value: 'two-way', label: 'two-way' }], 'two-way', 'A one-way rod can only be tightened, which bends all but very thick necks backwards; a two-way rod bends both ways.'),
  number('rod', 'rodStartMm', 'Rod begins', 'mm', [-20, 60, 1, 5], [0, 20], 'Distance of the first anchor behind the nut.', { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'rodEndMm', 'Rod ends', 'mm', [200, 700, 1, 385], [340, 480], 'Distance of the second anchor from the nut.', { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'channelWidthMm', 'Channel width', 'mm', [0, 14, 0.1, 6.5], [5, 10], 'Width of the rod channel. 0 is no channel. It tapers with the neck.', { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'channelDepthMm', 'Channel depth', 'mm', [0, 20, 0.1, 9], [7, 14], 'Depth below the underside of the board; never more than 0.55 of the wood there.', { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'rodCurveMm', 'Curve of the rod', 'mm', [0, 8, 0.1, 3], [1, 5], 'How far the middle of a one-way rod lies below the line of its anchors.', { when: { rodKind: ['one-way'] } }),
  number('rod', 'rodSpacingMm', 'Bars apart', 'mm', [3, 12, 0.1, 6], [5, 8], 'Distance between the axes of the two bars of a two-way rod.', { when: { rodKind: ['two-way'] } }),
  choice('rod', 'rodThread', 'Thread', [{ value: 'M5', label: 'M5' }, { value: 'M6', label: 'M6' }], 'M5', 'Thread of the rod’s nut.', { source: 'ISO 898-1', when: { rodKind: ['one-way', 'two-way'] } }),
  choice('rod', 'rodClass', 'Strength class', [{ value: '4.8', label: '4.8, mild' }, { value: '8.8', label: '8.8, high tensile' }], '4.8', 'Strength class of the threaded bar; it limits the pull.', { source: 'ISO 898-1', when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'wrenchTorqueNm', 'Wrench torque limit', 'N·m', [0.5, 6, 0.1, 2], [1.5, 3], 'What the hand should never pass on the wrench.', { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'rodSettingPercent', 'Rod setting', '%', [-100, 100, 1, 0], [-60, 60], 'Share of the rod’s range in use. Plus bends the neck backwards; minus, two-way only, forwards.', { when: { rodKind: ['one-way', 'two-way'] } }),
  number('rod', 'barCount', 'Stiff bars', '', [0, 2, 1, 0], [0, 2], 'Carbon bars bonded into the neck beside the rod.', { integer: true }),
  number('rod', 'barWidthMm', 'Bar width', 'mm', [1, 10, 0.1, 3.2], [3, 6], 'Width of one stiff bar.'),
  number('rod', 'barDepthMm', 'Bar depth', 'mm', [2, 14, 0.1, 9.5], [6, 10], 'Depth of one stiff bar below the underside of the board.'),
  number('rod', 'barModulusGPa', 'Bar stiffness', 'GPa', [50, 250, 1, 125], [110, 150], 'Modulus of the bar along its fibres.', { source: ASSUMED }),

  // Time and climate
  number('time', 'restDays', 'Days before stringing', 'day', [0, 365, 0.5, 3], [1, 14], 'Days between pressing the frets and putting the strings on.'),
  number('time', 'settleDays', 'Settled after', 'day', [1, 3650, 1, 90], [30, 365], 'Days under string tension at which the neck is called settled.'),
  flag('time', 'climateOn', 'Climate change', false, 'Add the movement between a dry winter and a damp summer.'),
  number('time', 'boardMoistureChange', 'Board moisture change', '% MC', [-6, 6, 0.1, 2], [-3, 3], 'Change of the board’s moisture content since fretting.', { source: 'Wood Handbook ch. 4', when: { climateOn: [true] } }),
  number('time', 'neckMoistureChange', 'Neck moisture change', '% MC', [-6, 6, 0.1, 1], [-3, 3], 'Change of the neck’s moisture content since fretting.', { source: 'Wood Handbook ch. 4', when: { climateOn: [true] } }),
  choice('time', 'levelledIn', 'Crowns levelled', [{ value: 'none', label: 'not yet' }, { value: 'bare', label: 'on the bench, strings off' }, { value: 'strung', label: 'under simulated string pull' }], 'none', 'The state of the neck in which the crowns are filed to one line. What the file takes is gone from every later state.'),
  number('time', 'targetReliefMm', 'Relief wanted', 'mm', [-0.2, 0.8, 0.01, 0.15], [0.05, 0.35], 'Forward bow of the fret tops under string tension that the player wants.'),

  // A neck that exists
  choice('existing', 'job', 'The job', [{ value: 'new', label: 'a new neck' }, { value: 'refret', label: 'a refret' }], 'new', 'A refret starts from the bow that the neck already has.'),
  number('existing', 'startingBowMm', 'Bow before fretting', 'mm', [-1, 1.5, 0.01, 0], [-0.2, 0.6], 'Relief of the bare board from fret 1 to the body joint, strings off, as measured. Plus is a forward bow. A list per fret, where you have one, goes before this number.', { source: 'your own measurement', when: { job: ['refret'] } }),

  // Assumptions
  number('assumptions', 'studSoftnessMm', 'Embedding length', 'mm', [0.01, 0.2, 0.005, 0.05], [0.02, 0.09], 'Over about this bite a stud reaches the full embedding strength of the wood.', { source: ASSUMED }),
  number('assumptions', 'wallStiffnessNMm3', 'Stiffness of a sawn wall', 'N/mm³', [50, 3000, 10, 500], [250, 900], 'How firmly sawn end grain pushes back on the tang body.', { source: ASSUMED }),
  number('assumptions', 'friction', 'Friction of metal on wood', '', [0.1, 0.8, 0.01, 0.4], [0.2, 0.65], 'For the seating force and the pull-out force.', { source: 'McKenzie & Karpovich 1968: 0.65 static, air-dry wood on steel; lower when waxed or moving' }),
  number('assumptions', 'wedgeRelaxation', 'Wedge relaxation', '', [0, 2, 0.05, 0.5], [0.3, 0.7], 'How much of the wedge force fades: 0.5 leaves two thirds after three months.', { source: 'Wood Handbook, from memory; ' + ASSUMED }),
  number('assumptions', 'biteFactor', 'Bite factor', '', [0.2, 5, 0.01, 1], [0.6, 1.6], 'Measured over predicted back-bow of your own necks; 1 before any measurement.', { source: 'your bench log' }),
] as const satisfies readonly Parameter[];

export type ParameterRow = (typeof PARAMETERS)[number];
export type ParameterId = ParameterRow['id'];

const BY_ID = new Map<string, Parameter>(PARAMETERS.map((parameter) => [parameter.id, parameter]));

/** @throws {RangeError} when no parameter has that id. */
export function parameterById(id: string): Parameter {
  const parameter = BY_ID.get(id);
  if (!parameter) throw new RangeError(`parameter "${id}" is not in the table`);
  return parameter;
}

/** Is the control for this parameter of use in this build? (Its `when` conditions hold.) */
export function isRelevant({ when }: Parameter, build: Build): boolean {
  if (!when) return true;
  return Object.entries(when).every(([id, values]) => values.includes(build[id as keyof Build] as string | boolean));
}
