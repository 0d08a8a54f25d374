/** The rows of the table of differences: what is compared, each neck's value with its band, and why it differs. */
import { rodPercentText, settingText } from '../../speech/rod.ts';
import { isWithinReach } from '../../mechanics/inversion/rod.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { formatRange } from '../../speech/quantity.ts';
import { numberOf, textOf } from '../../speech/quantity-text.ts';
import { bowBandText, bowText } from '../../speech/bow.ts';
import { timeText } from '../../speech/times.ts';
import { settledBeside, type Bow, type NeckNumbers } from '../../verdict/compared-numbers.ts';
import { besideText } from '../../speech/answers/paired.ts';
import * as reasons from './reasons.ts';
import type { Reason } from './reasons.ts';
import { CELL_WORDS, COMPARE_WORDS, ORDER_WORDS, RISK_WORDS, ROW_WORDS } from '../../speech/en/pages/compare.ts';

export interface Cell {
  readonly value: string;
  /** Undefined while it is being computed, null where the number has none. */
  readonly band: string | null | undefined;
  readonly note?: string;
  /** How far it lies from the first, and how often nearer the relief wanted. */
  readonly beside?: string;
}

export type RowId =
  | 'now'
  | 'fretted'
  | 'strung'
  | 'settled'
  | 'rod'
  | 'action'
  | 'room'
  | 'mostRoom'
  | 'months'
  | 'flexibility'
  | 'pullOut'
  | 'seating'
  | 'glue'
  | 'steps'
  | 'refret';

export interface Row {
  readonly id: RowId;
  readonly label: string;
  readonly cells: readonly Cell[];
  /** One for each neck after the first; the first has its own where `ownReasons`. Empty where nothing differs. */
  readonly why: readonly { readonly neck: number; readonly text: string }[];
}

interface RowMaker {
  readonly id: RowId;
  readonly label: string;
  readonly cell: (neck: NeckNumbers, system: UnitSystem) => Cell;
  readonly why?: Reason;
  /** Does the reason speak of one neck by itself, so that the first has one as well? */
  readonly isOwn?: true;
}

function bowCell({ mm, band }: Bow, system: UnitSystem): Cell {
  return { value: bowText(mm, system), band: band ? bowBandText(band.p05, band.p95, system) : undefined };
}

function rodCell({ rod }: NeckNumbers, system: UnitSystem): Cell {
  if (!rod) return { value: CELL_WORDS.noRod, band: null };
  const { setting, needed } = rod;
  const isOut = !isWithinReach(needed);
  const value = isOut ? CELL_WORDS.outOfReach : settingText(needed.nut);
  if (!setting) return { value, band: isOut ? null : undefined };
  return {
    value,
    band: isOut ? null : formatRange(numberOf('rodRangePercent', setting.p05, system), rodPercentText(setting.p95), ''),
    note: CELL_WORDS.chance(rodPercentText(100 * setting.chance)),
  };
}

function forceCell(key: 'meanPullOutForceN' | 'meanSeatingForceN', newtons: number, system: UnitSystem): Cell {
  return { value: textOf(key, newtons, system), band: null, note: CELL_WORDS.perFret };
}

/** A glue fit without room for glue is not the same as none. */
function glueText({ glue, glueMm3 }: NeckNumbers, system: UnitSystem): string {
  return glue === null ? CELL_WORDS.dry : textOf('glueTotalMm3', glueMm3, system);
}

function settledLabel(necks: readonly NeckNumbers[]): string {
  const [first, ...others] = necks;
  const isOne = first !== undefined && others.every(({ settleDays }) => settleDays === first.settleDays);
  return isOne ? ROW_WORDS.settledAfter(timeText(first.settleDays)) : ROW_WORDS.settled;
}

/** The relief with the most room, as the chart of where it buzzes says it, and for which plucks it lies where. */
function mostRoomCell({ mostRoom, playedMm }: NeckNumbers, system: UnitSystem): Cell {
  if (mostRoom.status !== 'better') {
    const isSet = mostRoom.status === 'as-is';
    return { value: isSet ? CELL_WORDS.asSet(bowText(playedMm, system)) : CELL_WORDS.noRod, band: null };
  }
  const { reliefMm, band } = mostRoom;
  const value = bowText(reliefMm, system);
  if (bowText(band.lowMm, system) === bowText(band.highMm, system)) return { value, band: null };
  const [from, to] = [band.fromN, band.toN].map((force) => textOf('pluckForceN', force, system));
  return { value, band: bowBandText(band.lowMm, band.highMm, system), note: CELL_WORDS.plucks(from, to) };
}

/** How low, how clean, and how it changes. */
function playedMakers(): readonly RowMaker[] {
  return [
    {
      id: 'action',
      label: ROW_WORDS.action,
      cell: ({ actionMm }, system) => ({ value: textOf('actionMm', actionMm, system), band: null }),
    },
    {
      id: 'room',
      label: ROW_WORDS.room,
      cell: ({ leastRoomMm }, system) => ({ value: textOf('stringRoomMm', leastRoomMm, system), band: null }),
    },
    { id: 'mostRoom', label: ROW_WORDS.mostRoom, cell: mostRoomCell },
    {
      id: 'months',
      label: ROW_WORDS.months,
      cell: ({ overMonths: { strung, settled } }, system) => ({
        value: CELL_WORDS.fromTo(
          textOf('roomStrungMm', strung.roomMm, system),
          textOf('roomSettledMm', settled.roomMm, system),
        ),
        band: null,
      }),
    },
  ];
}

function makers(necks: readonly NeckNumbers[], moment: string): readonly RowMaker[] {
  return [
    { id: 'now', label: ROW_WORDS.now(moment), cell: ({ now }, system) => bowCell(now, system) },
    {
      id: 'fretted',
      label: ROW_WORDS.fretted,
      cell: ({ fretted }, system) => bowCell(fretted, system),
      why: reasons.fretted,
    },
    {
      id: 'strung',
      label: ROW_WORDS.strung,
      cell: ({ strung }, system) => bowCell(strung, system),
      why: reasons.strung,
    },
    {
      id: 'settled',
      label: settledLabel(necks),
      cell: ({ settled }, system) => bowCell(settled, system),
      why: reasons.settled,
    },
    { id: 'rod', label: ROW_WORDS.rod, cell: rodCell, why: reasons.rod, isOwn: true },
    ...playedMakers(),
    {
      id: 'flexibility',
      label: ROW_WORDS.flexibility,
      cell: ({ extraFlexibility }) => ({
        value: reasons.flexibleText(extraFlexibility),
        band: null,
      }),
      why: reasons.flexibility,
      isOwn: true,
    },
    {
      id: 'pullOut',
      label: ROW_WORDS.pullOut,
      cell: ({ pullOutN }, system) => forceCell('meanPullOutForceN', pullOutN, system),
      why: reasons.pullOut,
      isOwn: true,
    },
    {
      id: 'seating',
      label: ROW_WORDS.seating,
      cell: ({ seatingN }, system) => forceCell('meanSeatingForceN', seatingN, system),
      why: reasons.seating,
    },
    {
      id: 'glue',
      label: ROW_WORDS.glue,
      cell: (neck, system) => ({ value: glueText(neck, system), band: null }),
      why: reasons.glue,
      isOwn: true,
    },
    {
      id: 'steps',
      label: ROW_WORDS.steps,
      cell: ({ steps, waitDays, seatingOrder }) => ({
        value: CELL_WORDS.steps(steps.length, timeText(waitDays)),
        band: null,
        note: ORDER_WORDS[seatingOrder],
      }),
      why: reasons.steps,
    },
    {
      id: 'refret',
      label: ROW_WORDS.refret,
      cell: ({ refretRisk }) => ({ value: RISK_WORDS[refretRisk], band: null }),
      why: reasons.refret,
      isOwn: true,
    },
  ];
}

/** "Two, and three; four" → a sentence. */
function sentence(parts: readonly string[]): string {
  const text = parts.join('; ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** A difference that is seen: the value, or what stands under it, is printed otherwise. */
const isAlike = (one: Cell, other: Cell) => one.value === other.value && one.note === other.note;

function whyOf({ why, isOwn }: RowMaker, necks: readonly NeckNumbers[], cells: readonly Cell[], system: UnitSystem) {
  const [first] = necks;
  if (!why || !first) return [];
  const allAlike = cells.every((cell) => isAlike(cell, cells[0]));
  if (allAlike && !isOwn) {
    // The same count of steps may still be other steps.
    const parts = necks.slice(1).flatMap((neck, index) => ({ neck: index + 1, parts: why(neck, first, system) }));
    return parts.some((each) => each.parts.length > 0) && cells[0].note !== undefined
      ? parts.filter((each) => each.parts.length > 0).map(({ neck, parts: said }) => ({ neck, text: sentence(said) }))
      : [];
  }
  const said = necks.map((neck, index) => ({ neck: index, parts: why(neck, first, system) }));
  const told = isOwn ? said : said.slice(1).filter(({ neck }) => !isAlike(cells[neck], cells[0]));
  const texts = told
    .filter(({ parts }) => parts.length > 0)
    .map(({ neck, parts }) => ({ neck, text: sentence(parts) }));
  return allAlike && texts.every(({ text }) => text === texts[0].text) ? [] : texts;
}

function beside(first: NeckNumbers, neck: NeckNumbers, system: UnitSystem): Pick<Cell, 'beside'> {
  const found = settledBeside(first, neck);
  return found ? { beside: besideText(found, system) } : {};
}

/** @param moment the moment on the rail, in words */
export function differenceRows(necks: readonly NeckNumbers[], moment: string, system: UnitSystem): Row[] {
  return makers(necks, moment).map((maker) => {
    const cells = necks.map((neck, index) => ({
      ...maker.cell(neck, system),
      ...(maker.id === 'settled' && index > 0 ? beside(necks[0], neck, system) : {}),
    }));
    return { id: maker.id, label: maker.label, cells, why: whyOf(maker, necks, cells, system) };
  });
}

/** What a row says where nothing differs. */
export function isSame({ id, cells, why }: Row): boolean {
  return id !== 'now' && why.length === 0 && cells.every((cell) => isAlike(cell, cells[0]));
}

export const bandText = (band: Cell['band']): string | null => (band === undefined ? COMPARE_WORDS.waiting : band);
