/** What each computed quantity means, for whoever works on the house and whoever reads `predict --schema`. */
import type { ComputedKey } from '../neck/quantities.ts';

export interface QuantityMeaning {
  readonly meaning: string;
  /** Heading of mechanics/MODEL.md under which it is derived; what has none is geometry, told at the head of its file. */
  readonly model?: string;
}

const RELIEF = '2. Coordinates, signs, units';
const MOMENTS = '9. Moments of the job';
const SEATING = '7. Seating';
const ROD = '11. Rod';

export const QUANTITY_MEANINGS: Readonly<Record<ComputedKey, QuantityMeaning>> = {
  // Fret by fret
  fret: { meaning: 'number of a fret, 1 the first' },
  frets: { meaning: 'numbers of the frets that it is about' },
  fretXMm: { meaning: 'from the front of the nut along the centre line', model: '3. Shape and section' },
  fromLastFretMm: { meaning: 'from a fret to the last one' },
  fromPreviousFretMm: { meaning: 'from a fret to the one before it, or to the nut' },

  // Slots
  boardWidthMm: { meaning: 'width of the board at a fret', model: '3. Shape and section' },
  boardRadiusMm: { meaning: 'radius of the board at a fret', model: '3. Shape and section' },
  slotLengthMm: { meaning: 'length of a slot, end to end, seen from above' },
  slotDepthNeededMm: { meaning: 'least depth at the centre line that clears the tang with the air wanted' },
  slotDepthAtEndMm: { meaning: 'depth below the surface at the end of the slot' },
  boardLeftCentreMm: { meaning: 'board below the slot at the centre line' },
  boardLeftLeastMm: { meaning: 'board below the slot where it is least' },
  boardEdgeThicknessMm: { meaning: 'thickness of the board at its edge' },
  chamferLimitMm: { meaning: 'widest chamfer that the crown covers' },
  glueGapMm: { meaning: 'gap beside the tang of a glue fit, both sides together' },

  // Wire
  arcLengthMm: { meaning: 'along the arc of the board, edge to edge' },
  cutLengthMm: { meaning: 'length to cut a piece of wire to' },
  nipMm: { meaning: 'tang nipped off at each end of a piece as cut' },
  tangLengthMm: { meaning: 'tang that stays, along the wire' },
  shelfMm: { meaning: 'crown that rests on binding left whole, at each end' },
  bevelLossMm: { meaning: 'how much shorter the crown is at its top than at its foot, at each end' },
  filedLengthMm: { meaning: 'length of the finished fret at its foot, along the arc' },
  wantedWireRadiusMm: { meaning: 'radius that the free wire should have' },
  bendToRadiusMm: { meaning: 'radius to bend to, springback counted; negative: past straight' },
  bendStaysPercent: { meaning: 'share of a bend that stays' },
  middleStandsOffMm: { meaning: 'how far the middle of bent wire stands off when its ends touch' },
  besideStringMm: { meaning: 'top of the crown left beside an outer string' },
  wireTotalMm: { meaning: 'wire in all: frets, spare and loss at the cuts' },
  stick: { meaning: 'number of a stick of wire' },
  pieceLengthsMm: { meaning: 'lengths cut from a stick' },
  stickLeftMm: { meaning: 'left over of a stick' },

  // Seating
  studBiteMm: { meaning: 'how far the studs bite into each wall', model: SEATING },
  seatingTurn: { meaning: 'when a fret goes in: 1 is the first' },
  quarter: { meaning: 'quarter of the frets, in the order of seating' },
  fretsIn: { meaning: 'frets that are in' },
  fretsInQuarter: { meaning: 'frets of one quarter' },
  seatingForceN: { meaning: 'force to press one fret in', model: SEATING },
  caulPressureMPa: { meaning: 'pressure of that force on the foot of the crown' },
  wedgeForceN: { meaning: 'force with which a fret wedges its slot', model: SEATING },
  pullOutForceN: { meaning: 'force to lift one fret whole', model: SEATING },
  glueVolumeMm3: { meaning: 'room for glue in one slot' },
  glueTotalMm3: { meaning: 'room for glue in all slots together' },
  glueBeadMm: { meaning: 'round bead along the slot that fills it' },
  openTimeMin: { meaning: 'from spreading the glue to the fret being home' },
  heatSprungBackPercent: {
    meaning: 'how much of what heat and pressing took out of a neck came back, as it was measured',
    model: '9. Moments of the job',
  },
  clampPressureMPa: { meaning: 'pressure of clamps that holds a fretted board flat on the neck', model: SEATING },
  freeBoardBowMm: { meaning: 'hump of a fretted board on the bench, from its first to its last fret', model: SEATING },
  clampedForceN: { meaning: 'force with which a fret wedges its slot while the board is clamped flat', model: SEATING },
  clampTimeMin: { meaning: 'time under the clamp' },
  glueFullHours: { meaning: 'until the glue has set through' },
  slotOpeningMm: { meaning: 'how far a slot is wedged open', model: SEATING },
  meanWedgeForceN: { meaning: 'force with which a fret wedges its slot, mean of all frets', model: SEATING },
  meanSeatingForceN: { meaning: 'force to press one fret in, mean of all frets', model: SEATING },
  meanPullOutForceN: { meaning: 'force to lift one fret whole, mean of all frets', model: SEATING },
  wedgeForceStrungN: { meaning: 'force with which a fret wedges its slot, once the strings are on', model: SEATING },
  wallShearPercent: { meaning: 'shear along the grain beside a slot over the strength of the board', model: SEATING },

  // Bow
  reliefMm: {
    meaning: 'greatest distance of the fret tops below the straightedge; plus a hollow, minus a hump',
    model: RELIEF,
  },
  frettedReliefMm: { meaning: 'relief with all frets in, before the strings', model: MOMENTS },
  strungReliefMm: { meaning: 'relief on the day the strings go on, rod slack', model: MOMENTS },
  settledReliefMm: { meaning: 'relief strung and settled, rod slack', model: MOMENTS },
  rodSetReliefMm: { meaning: 'relief settled, with the rod as it is set', model: MOMENTS },
  atXMm: { meaning: 'where the relief is greatest, from the nut', model: RELIEF },
  atFret7Mm: { meaning: 'relief at fret 7', model: RELIEF },
  atFret8Mm: { meaning: 'relief at fret 8', model: RELIEF },
  levellingReliefMm: { meaning: 'relief of a fret top in the state in which the crowns are levelled', model: MOMENTS },
  missMm: { meaning: 'relief that the rod leaves over what is wanted; minus: short of it', model: ROD },
  bandWidthMm: {
    meaning: 'width of what holds 90 of 100 necks, of the relief strung and settled',
    model: '13. How sure, and the way back',
  },
  bandRemovedMm: { meaning: 'by how much a measurement makes that narrower', model: '13. How sure, and the way back' },
  errorPercent: { meaning: 'standard deviation of what a measurement leaves, of what is measured' },
  measuringMin: { meaning: 'time that a measurement takes in the workshop' },
  reliefP05Mm: { meaning: 'lower end of the band of the relief', model: '13. How sure, and the way back' },
  reliefP95Mm: { meaning: 'upper end of the band of the relief', model: '13. How sure, and the way back' },
  rodReachReliefMm: { meaning: 'relief nearest to the one wanted that the rod can reach', model: ROD },
  rodTightReliefMm: { meaning: 'relief with the rod as tight as it may be', model: ROD },
  reliefMeasuredMm: { meaning: 'relief as measured' },
  lineReliefMm: { meaning: 'relief of the fret tops at one fret, with the board planed straight', model: RELIEF },
  wantedLineReliefMm: { meaning: 'relief wanted at one fret', model: '13. How sure, and the way back' },
  planeOffMm: { meaning: 'wood to plane off the board', model: '13. How sure, and the way back' },

  // Rod and strings
  rodRangePercent: { meaning: 'share of the range of the rod that the relief wanted takes', model: ROD },
  turnsOfNut: { meaning: 'turns of the nut from where it is snug', model: ROD },
  rodTurnsAtLimit: { meaning: 'turns of the nut from where it is snug to the limit of the rod', model: ROD },
  rodSetPercent: { meaning: 'how the rod is set: as the build says, else for the relief wanted', model: ROD },
  nutTorqueNm: { meaning: 'torque on the nut', model: ROD },
  quarterTurnReliefMm: { meaning: 'what each quarter turn of the nut adds to the relief', model: ROD },
  stringTensionN: { meaning: 'tension of a string', model: '10. Strings' },
  stringStressMPa: { meaning: 'stress in the wire of a string, or in its core', model: '10. Strings' },
  stringStressPercent: { meaning: 'stress over the least strength of the wire of a string', model: '10. Strings' },
  stringPullN: { meaning: 'pull of all strings together', model: '10. Strings' },
  flatAfterDays: { meaning: 'days until the neck has settled flat', model: MOMENTS },
  settlingMoveMm: {
    meaning: 'how far the relief moves from the day of stringing until the neck has settled',
    model: MOMENTS,
  },
  extraFlexibilityPercent: { meaning: 'how much more the neck gives than with unsawn slots', model: '8. Methods' },

  // Playing
  stringRoomMm: { meaning: 'least room of a swinging string over the frets beyond the fretted one; minus: it buzzes' },
  stringRoomBoundMm: {
    meaning: 'the same within the bound of the partials, beyond which no stiffness takes the string',
  },
  buzzForceN: { meaning: 'force of the pluck at which a note just buzzes' },
  string: { meaning: 'number of a string, 1 the highest' },
  frettedAt: { meaning: 'fret at which a string is stopped; 0: open' },
  touchedFret: { meaning: 'fret over which a swinging string has the least room, which it touches first' },
  notesBuzzing: { meaning: 'notes of all strings that buzz' },
  notesMayBuzz: { meaning: 'notes that do not, but may where the string is stiff' },
  bestRoomMm: { meaning: 'least room at the relief that leaves the most' },
  roomCostMm: { meaning: 'how much of that room a little more relief takes' },
  moreReliefMm: { meaning: 'how much more relief that is' },
  actionMm: { meaning: 'height of the strings over the top of fret 12, mean of bass and treble side' },
  lowestActionMm: { meaning: 'least height of the strings over the top of fret 12 at which no note buzzes' },
  actionChangeMm: {
    meaning: 'what the first months change the action at fret 12 by, where it was set up on the day of stringing',
  },
  roomStrungMm: { meaning: 'least room of all notes, played medium, set up on the day of stringing' },
  roomSettledMm: { meaning: 'the same once the neck has settled and nothing was set again' },
  stringActionMm: { meaning: 'height of a string over the top of fret 12' },
  stringReliefMm: {
    meaning:
      'relief under a string: a straightedge along it, on the frets that the prediction names; less than at the centre where the strings open over a round board',
  },
  nutOverFret1Mm: { meaning: 'height of an open string over the top of fret 1, which the nut sets' },
  saddleOverFretsMm: {
    meaning: 'height of a string at the saddle over the straightedge along its frets, carried on to the saddle',
  },
  actionPerTurnMm: {
    meaning: 'what a full turn of the nut that bends the neck backwards changes the action at fret 12 by',
    model: '11. Rod',
  },
  pluckForceN: { meaning: 'force that a string is let go with; assumed' },
  ownForceN: { meaning: 'force of the pluck at which a neck that was measured just buzzes' },
  pluckFromSaddleMm: { meaning: 'where the string is plucked, from the saddle; assumed' },

  // Levelling
  aboveLineMm: { meaning: 'top of a fret above the levelling line' },
  takenOffMm: { meaning: 'taken off a crown in all' },
  crownLeftMm: { meaning: 'height of a crown after levelling' },
  levellingsLeft: { meaning: 'later levellings that a crown still takes' },
  crownMeasuredMm: { meaning: 'height of a crown as measured' },
  bindingThicknessMm: { meaning: 'thickness of one line of binding' },
  stringDiameterMm: { meaning: 'diameter of a string, outside' },
  besidePreviousMm: { meaning: 'from the middle of a string to the middle of the one before it in its course' },
  stringSpacingMm: { meaning: 'from the middle of a string to the middle of the next at the nut, evenly spread' },

  // Wood and metal
  blankModulusGPa: { meaning: 'stiffness along the grain of a blank that was measured', model: '4. Woods' },
  hardnessHV: { meaning: 'Vickers hardness of a wire' },
  wearLifeRatio: { meaning: 'wear life over that of the chosen metal' },
  modulusGPa: { meaning: 'stiffness of a metal' },
  yieldMPa: { meaning: 'yield strength of a metal' },
};
