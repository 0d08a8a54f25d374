/** All rows of the table of reference values. */
import type { Row } from './row.ts';
import { BEAM_ROWS } from './rows/beam.ts';
import { CLIMATE_ROWS } from './rows/climate.ts';
import { FRET_ROWS } from './rows/frets.ts';
import { PLAYING_ROWS } from './rows/playing.ts';
import { PRACTICE_ROWS } from './rows/practice.ts';
import { ROD_ROWS } from './rows/rod.ts';
import { SEATING_ROWS } from './rows/seating.ts';
import { SLOT_ROWS } from './rows/slots.ts';
import { SOLID_BOARD_ROWS } from './rows/solid-board.ts';
import { SOLID_BOUND_ROWS } from './rows/solid-bound.ts';
import { SOLID_FAN_ROWS } from './rows/solid-fan.ts';
import { SOLID_FE_ROWS } from './rows/solid-fe.ts';
import { STRING_ROWS } from './rows/strings.ts';
import { TIME_ROWS } from './rows/time.ts';
import { WIRE_ROWS } from './rows/wire.ts';
import { WOOD_ROWS } from './rows/woods.ts';

export const ROWS: readonly Row[] = [
  ...FRET_ROWS,
  ...SOLID_FE_ROWS,
  ...SOLID_BOUND_ROWS,
  ...SOLID_FAN_ROWS,
  ...SOLID_BOARD_ROWS,
  ...SLOT_ROWS,
  ...BEAM_ROWS,
  ...WOOD_ROWS,
  ...SEATING_ROWS,
  ...STRING_ROWS,
  ...PLAYING_ROWS,
  ...ROD_ROWS,
  ...TIME_ROWS,
  ...CLIMATE_ROWS,
  ...WIRE_ROWS,
  ...PRACTICE_ROWS,
];
