/** The parameters of a neck in words: groups, names, hints, options, and where their values are from. */
import type { GroupId, ParameterSource } from '../../../neck/parameter-kinds.ts';
import type { ParameterRow } from '../../../neck/parameters.ts';
import { words } from '../../language.ts';

/** Their options are rows of the tables of woods, metals and glues, which have words of their own (materials.ts). */
type FromTables = 'boardWood' | 'wireMetal' | 'glueKind';

interface Named {
  /** Name as the maker says it, without the unit. */
  readonly label: string;
  /** What it is and what it changes, in one or two plain sentences. */
  readonly hint: string;
}

/** A parameter or an option without words does not compile. */
type ParameterWords = {
  readonly [Row in ParameterRow as Row['id']]: Row['id'] extends FromTables
    ? Named
    : Row extends { readonly kind: 'choice'; readonly options: readonly (infer Value extends string)[] }
      ? Named & { readonly options: Readonly<Record<Value, string>> }
      : Named;
};

export const GROUP_WORDS = words('GROUP_WORDS', {
  neck: 'The neck',
  board: 'The board',
  wire: 'The wire',
  slots: 'The slots',
  seating: 'How they go in',
  edges: 'Edges and binding',
  strings: 'The strings',
  rod: 'Rod and bars',
  time: 'Time and climate',
  existing: 'Work on an old neck',
  assumptions: 'Assumptions',
} satisfies Record<GroupId, string>);

// prettier-ignore
export const PARAMETER_WORDS = words('PARAMETER_WORDS', {
  scaleLengthMm: { label: 'Scale length', hint: 'Vibrating length of the open string; it places every fret.' },
  fretCount: { label: 'Frets', hint: 'How many frets the board carries.' },
  bodyJointFret: { label: 'Body joins at fret', hint: 'Fret over the edge of the body. The neck is free up to here and hardly bends beyond.' },
  widthNutMm: { label: 'Width at the nut', hint: 'Board width at the nut.' },
  widthLastFretMm: { label: 'Width at the last fret', hint: 'Board width at the last fret.' },
  thicknessFret1Mm: { label: 'Thickness at fret 1', hint: 'Board and neck together, at the centre. Stiffness grows with its third power.' },
  thicknessFret12Mm: { label: 'Thickness at fret 12', hint: 'Board and neck together, at the centre.' },
  backExponent: { label: 'Back profile', hint: '2 is half an ellipse; below leans towards a V, above towards a square U.' },
  backShoulderMm: { label: 'Shoulder under the board', hint: 'Straight edge of the neck below the board before the back curves in.' },
  heelStyle: { label: 'Heel', hint: 'Shape of the heel. The calculation sees its thickness and length only.', options: { block: 'bolt-on block', set: 'set heel' } },
  heelThicknessMm: { label: 'Heel adds', hint: 'How much deeper the neck becomes at the body joint.' },
  heelLengthMm: { label: 'Heel begins before the joint', hint: 'Over this length the neck thickens into the heel.' },
  neckBlankTest: { label: 'Neck blank measured', hint: 'A measured neck blank replaces the stiffness of the species and narrows the band.', options: { none: 'no: use the species value', tap: 'tapped, by its ringing frequency', sag: 'bent, by a weight at its middle' } },
  neckBlankLengthMm: { label: 'Neck blank length', hint: 'Length of the rectangular blank that was measured.' },
  neckBlankWidthMm: { label: 'Neck blank width', hint: 'Width of the rectangular blank.' },
  neckBlankThicknessMm: { label: 'Neck blank thickness', hint: 'Thickness in the direction in which it bends.' },
  neckBlankMassG: { label: 'Neck blank mass', hint: 'Mass of the blank on the scale.' },
  neckBlankFrequencyHz: { label: 'Neck blank frequency', hint: 'First bending frequency when hung at 22 % from both ends and tapped at the middle.' },
  neckBlankSpanMm: { label: 'Neck blank span', hint: 'Distance between the two supports.' },
  neckBlankLoadN: { label: 'Neck blank load', hint: 'Weight hung at mid-span: 1 kg pulls 9.81 N.' },
  neckBlankSagMm: { label: 'Neck blank deflection', hint: 'How far the middle goes down under that weight.' },
  leftHanded: { label: 'Left-handed', hint: 'The bass strings and the dots in the side change sides, and you look at the neck from the other one.' },
  boardWood: { label: 'Board wood', hint: 'Its density decides how firmly the studs bite; its stiffness joins the neck’s.' },
  boardSawn: { label: 'Board sawn', hint: 'Which way the growth rings run. It changes stiffness across the grain only.', options: { flat: 'flat-sawn', quarter: 'quarter-sawn' } },
  boardThicknessMm: { label: 'Board thickness', hint: 'At the centre line, on top of the neck.' },
  boardShape: { label: 'Board shape', hint: 'The arc across the strings.', options: { flat: 'flat', cylinder: 'one radius', cone: 'compound (conical)' } },
  radiusNutMm: { label: 'Radius at the nut', hint: 'Radius of the board; on a compound board, at the nut.' },
  radiusLastFretMm: { label: 'Radius at the last fret', hint: 'Radius of a compound board at the last fret.' },
  boardBeyondLastFretMm: { label: 'Board beyond the last fret', hint: 'How far the board runs on after the last fret.' },
  boardBlankTest: { label: 'Board blank measured', hint: 'A measured board blank replaces the stiffness of the species and narrows the band.', options: { none: 'no: use the species value', tap: 'tapped, by its ringing frequency', sag: 'bent, by a weight at its middle' } },
  boardBlankLengthMm: { label: 'Board blank length', hint: 'Length of the rectangular blank that was measured.' },
  boardBlankWidthMm: { label: 'Board blank width', hint: 'Width of the rectangular blank.' },
  boardBlankThicknessMm: { label: 'Board blank thickness', hint: 'Thickness in the direction in which it bends.' },
  boardBlankMassG: { label: 'Board blank mass', hint: 'Mass of the blank on the scale.' },
  boardBlankFrequencyHz: { label: 'Board blank frequency', hint: 'First bending frequency when hung at 22 % from both ends and tapped at the middle.' },
  boardBlankSpanMm: { label: 'Board blank span', hint: 'Distance between the two supports.' },
  boardBlankLoadN: { label: 'Board blank load', hint: 'Weight hung at mid-span: 1 kg pulls 9.81 N.' },
  boardBlankSagMm: { label: 'Board blank deflection', hint: 'How far the middle goes down under that weight.' },
  wireMetal: { label: 'Wire metal', hint: 'Nickel, hardness and springback come from the alloy; the wedge comes from the tang.' },
  crownWidthMm: { label: 'Crown width', hint: 'Width of the crown at its foot.' },
  crownHeightMm: { label: 'Crown height', hint: 'From the board to the top of the crown, as bought. Levelling spends it.' },
  tangWidthMm: { label: 'Tang body width', hint: 'Thickness of the tang between its studs. Wider than the kerf, it wedges hard.' },
  studWidthMm: { label: 'Width over the studs', hint: 'Tang width measured over the studs on both sides.' },
  tangDepthMm: { label: 'Tang depth', hint: 'From the underside of the crown to the foot of the tang.' },
  studAreaMm2: { label: 'Area of one stud', hint: 'Area with which one stud bears on the slot wall.' },
  studPitchMm: { label: 'Stud pitch per side', hint: 'Distance from stud to stud on one side of the tang.' },
  studShape: { label: 'Shape of the studs', hint: '0: a block, bearing with its whole area at once. 1: a ridge or wedge, whose area grows with the bite. 2: a cone or point. A lens shows which.' },
  leastCrownMm: { label: 'Least crown height', hint: 'Below this a crown is too low to play well or to level again.' },
  levellingLossMm: { label: 'Filed off for unevenness', hint: 'What filing, crowning and polishing take off every crown besides the bow: uneven wire and seating.' },
  wireForm: { label: 'Wire bought as', hint: 'Sticks are cut with least waste. A coil comes bent, and is bent on from there.', options: { stick: 'straight sticks', coil: 'a coil' } },
  stickLengthMm: { label: 'Stick length', hint: 'Length of one stick of wire.' },
  coilRadiusMm: { label: 'Radius of the coil', hint: 'Radius to which the wire is bent as it comes.' },
  cutLossMm: { label: 'Lost at each cut', hint: 'What the nippers crush or the saw takes between two pieces.' },
  wireSparePercent: { label: 'Spare wire', hint: 'Wire to order beyond what the frets take, in whole spare frets.' },
  wireRadiusPercent: { label: 'Bend the wire to', hint: 'Radius of the bent wire as a share of the board’s. Below 100 the ends sit down first. A flat board takes straight wire.' },
  nickelSensitivePlayer: { label: 'Player sensitive to nickel', hint: 'Ask before you choose the wire. It adds a check and changes nothing else.' },
  kerfMm: { label: 'Kerf', hint: 'Width of the saw cut. Against the width over the studs it decides how hard they bite.' },
  slotDepthMm: { label: 'Slot depth', hint: 'Below the board’s surface at the centre line. It must clear the tang.' },
  slotClearanceMm: { label: 'Least air below the tang', hint: 'How much must stay free under the foot of the tang, for dust, glue and filler. How much there is, the checks say.' },
  slotBottom: { label: 'Slot bottom', hint: 'A flat cut in a radiused board is shallower at the edges than at the centre.', options: { radiused: 'follows the radius', flat: 'flat, straight saw cut' } },
  chamferMm: { label: 'Chamfer', hint: 'Width of the bevel on each edge of the slot; it saves the board at the next refret.' },
  workOrder: { label: 'Order of work', hint: 'Fretted first, the board is clamped flat with its frets in, and bows the neck by what is left with the clamps off.', options: { 'neck-first': 'frets into the finished neck', 'board-first': 'board fretted, then glued on' } },
  method: { label: 'Seating', hint: 'Pressed frets wedge the board. Glued ones fill the slot. Pressed and glued do both.', options: { press: 'press fit', glue: 'glue fit', both: 'press and glue' } },
  seatingTool: { label: 'Driven by', hint: 'It decides the steps on the bench sheet, not the forces.', options: { hammer: 'a hammer', press: 'a press with a caul' } },
  seatingOrder: { label: 'Order of the frets', hint: 'Spread out, each quarter of the frets makes about a quarter of the bow, so the straightedge shows it early.', options: { spread: 'every fourth, then between', 'nut-first': 'from the nut on', 'body-first': 'from the last fret on' } },
  glueKind: { label: 'Glue', hint: 'Sets the open time, the clamping time and the cautions. The stiffness comes with it.' },
  glueStiffness: { label: 'Stiffness of the glue', hint: 'Each kind has its own, with its spread. A data sheet of the bottle in hand is better.', options: { kind: 'as its kind', own: 'entered here' } },
  glueModulusMPa: { label: 'Modulus of the set glue', hint: 'As the data sheet has it, cured and dry.' },
  glueReachPercent: { label: 'Slot filled to', hint: 'Share of the slot depth, from the top, that the glue reaches.' },
  bindingLineCount: { label: 'Binding lines per side', hint: 'Lines of binding and purfling along each edge of the board. 0 is an unbound board.' },
  linesSawnThrough: { label: 'Inner lines sawn through', hint: 'How many lines, from the wood outwards, the saw passes through. The crown rests on the rest.' },
  bridgeMm: { label: 'Left whole at each edge', hint: 'The saw stops this far from the edge, bound or not. 0: as far as the binding lets it, or through.' },
  undercutTangs: { label: 'Tangs nipped short in open slots', hint: 'The tang stops before the edge, so that it does not show when the board shrinks.' },
  nipClearanceMm: { label: 'Nip clearance', hint: 'Air between the end of the nipped tang and the end of its slot.' },
  endBevelDegrees: { label: 'Fret-end bevel', hint: 'Angle by which the filed fret end leans in from the vertical.' },
  endInsetMm: { label: 'Fret end inset', hint: 'How far the foot of the crown stops short of the edge of the board after filing.' },
  oversizeMm: { label: 'Wire oversize per end', hint: 'Wire left over each edge before it is cut flush and filed.' },
  stringHeightNutMm: { label: 'String height at the nut', hint: 'Mean height of the strings above the crown of the board at the nut.' },
  stringHeightFret12Mm: { label: 'String height at fret 12', hint: 'Mean height above the crown of the board at fret 12: action plus fret height.' },
  bassHigherMm: { label: 'Bass side higher by', hint: 'At fret 12: how much more action the lowest string has than the highest. The strings between rise evenly; the height above is their mean.' },
  stringEdgeMm: { label: 'Outer strings from the edge', hint: 'Distance of the outer strings from the edge of the board.' },
  rodKind: { label: 'Rod', hint: 'A one-way rod can only be tightened, which bends all but very thick necks backwards; a two-way rod bends both ways.', options: { none: 'no rod', 'one-way': 'one-way', 'two-way': 'two-way' } },
  rodStartMm: { label: 'Rod begins', hint: 'Distance of the first anchor from the nut.' },
  rodEndMm: { label: 'Rod ends', hint: 'Distance of the second anchor from the nut.' },
  channelWidthMm: { label: 'Channel width', hint: 'Width of the rod channel. 0 is no channel. It tapers with the neck.' },
  channelDepthMm: { label: 'Channel depth', hint: 'Depth below the underside of the board; never more than 0.55 of the wood there.' },
  rodCurveMm: { label: 'Curve of the rod', hint: 'How far the middle of a one-way rod lies below the line of its anchors.' },
  rodSpacingMm: { label: 'Bars apart', hint: 'Distance between the axes of the two bars of a two-way rod.' },
  rodThread: { label: 'Thread', hint: 'Thread of the rod’s nut.', options: { M5: 'M5', M6: 'M6' } },
  rodClass: { label: 'Strength class', hint: 'Strength class of the threaded bar; it limits the pull.', options: { '4.8': '4.8, mild', '8.8': '8.8, high tensile' } },
  wrenchTorqueNm: { label: 'Wrench torque limit', hint: 'Never turn the wrench harder than this.' },
  rodSettingPercent: { label: 'Rod setting', hint: 'Share of the rod’s range in use. Plus bends the neck backwards; minus, two-way only, forwards.' },
  barCount: { label: 'Stiff bars', hint: 'Carbon bars bonded into the neck beside the rod.' },
  barWidthMm: { label: 'Bar width', hint: 'Width of one stiff bar.' },
  barDepthMm: { label: 'Bar depth', hint: 'Depth of one stiff bar below the underside of the board.' },
  barModulusGPa: { label: 'Bar stiffness', hint: 'Modulus of the bar along its fibres.' },
  restDays: { label: 'Days before stringing', hint: 'Days between pressing the frets and putting the strings on.' },
  settleDays: { label: 'Settled after', hint: 'Days under string tension after which the neck counts as settled.' },
  climateOn: { label: 'Seasonal humidity', hint: 'Add the movement between a dry winter and a damp summer.' },
  boardMoistureChange: { label: 'Board moisture change', hint: 'Change of the board’s moisture content since fretting.' },
  neckMoistureChange: { label: 'Neck moisture change', hint: 'Change of the neck’s moisture content since fretting.' },
  levelledIn: { label: 'Crowns levelled', hint: 'The state of the neck in which the crowns are filed level. What the file takes off is gone for good.', options: { none: 'not yet', bare: 'on the bench, strings off', strung: 'under simulated string pull' } },
  fallAwayMm: { label: 'Fall-away', hint: 'How much lower the last fret is filed than the line of the others, so that the strings clear the last frets. 0 is none.' },
  fallAwayFromFret: { label: 'Fall-away begins after fret', hint: 'The last fret that stays on the line; from there the tops drop in a straight line to the last fret.' },
  targetReliefMm: { label: 'Relief you want', hint: 'Forward bow of the fret tops under string tension that the player wants.' },
  job: { label: 'The job', hint: 'A refret starts from the bow that the neck already has.', options: { new: 'a new neck', refret: 'a refret' } },
  startingBowMm: { label: 'Bow before fretting', hint: 'Relief of the bare board from fret 1 to the body joint, strings off, as measured: a hump (back-bow) or a hollow (forward bow). A list for each fret overrides this number.' },
  woodValues: { label: 'Values of the woods', hint: 'This neck was computed with earlier densities and stiffnesses of some woods.', options: { printed: 'as printed', earlier: 'as in its file' } },
  studSoftnessMm: { label: 'Embedding length', hint: 'Over about this bite the pressure under a stud rises to the embedding strength of the wood. It also sets how far a seated stud gives under the strings.' },
  wallStiffnessNMm3: { label: 'Stiffness of a sawn wall', hint: 'How firmly sawn end grain pushes back on the tang body, where the kerf is narrower than it.' },
  friction: { label: 'Friction of metal on wood', hint: 'For the seating force and the pull-out force.' },
  wedgeRelaxation: { label: 'Wedge relaxation', hint: 'How much of the wedge force fades: 0.5 leaves two thirds after three months.' },
  clampSlidePercent: { label: 'Slide under the clamps', hint: 'How far a fretted board slides while the glue takes hold, of the way it would go by itself. 0 is as if the finished neck were fretted.' },
  biteFactor: { label: 'Bite factor', hint: 'Measured back-bow of your own necks over the predicted one; 1 until something is measured.' },
} satisfies ParameterWords);

export const SOURCE_WORDS = words('SOURCE_WORDS', {
  practice: 'common practice, no source',
  assumed: 'assumption; the bench log corrects it',
  'own-measurement': 'your own measurement',
  'bench-log': 'your bench log',
  profile: 'the equation of the profile',
  'blank-tests': 'ASTM E1876 for the bar in bending, beam formula for the weight',
  'wood-tables':
    'Wood Handbook FPL-GTR-190 and -282, Agriculture Handbook 607, Tropix sheets; of bamboo, roasted maple and paper with resin single papers and data sheets',
  'elastic-ratios': 'Wood Handbook FPL-GTR-190 Table 5-1',
  moisture: 'Wood Handbook ch. 4',
  relaxation: 'Wood Handbook, from memory; assumption; the bench log corrects it',
  'alloy-data': 'published data of each alloy',
  'glue-table': 'Konnerth, Gindl & Müller 2007 for the range of wood glues; each kind: data sheets, from memory',
  'iso-898': 'ISO 898-1',
  friction: 'McKenzie & Karpovich 1968: 0.65 static, air-dry wood on steel; lower when waxed or moving',
} satisfies Record<ParameterSource, string>);
