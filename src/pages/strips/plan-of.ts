/** A strip that is being planned, and the document that it becomes: of the wire, the wood and the slots of the neck in hand. */
import type { Build } from '../../neck/build.ts';
import { isOwnWood, ownWoodOf } from '../../neck/materials/own-woods.ts';
import { documentWood } from '../../neck/woods.ts';
import { checkStrip, type CheckedStrip } from '../../mechanics/try-strip/document-problems.ts';
import type { Instrument, StripStiffness } from '../../mechanics/try-strip/document.ts';
import type { StripPlan } from '../../mechanics/try-strip/design.ts';
import { evenEndMm } from '../../mechanics/try-strip/layout.ts';

export interface GroupDraft {
  readonly blade: string;
  readonly kerfMm: number | null;
  readonly frets: number | null;
}

export interface StripDraft {
  readonly name: string;
  readonly lengthMm: number | null;
  readonly widthMm: number | null;
  readonly thicknessMm: number | null;
  readonly ownBoard: boolean;
  readonly groups: readonly GroupDraft[];
  /** One standard deviation of what the kerfs were measured with. */
  readonly kerfErrorMm: number | null;
  readonly instrument: Exclude<Instrument, 'own'>;
  /** How its stiffness will be measured. */
  readonly test: StripStiffness['test'];
}

/** How sure a kerf is that a feeler was put in, mm: a leaf more or less (assumption); a workshop enters its own. */
const KERF_ERROR_MM = 0.01;
/** As good as twenty when they are read with feelers. */
const FRETS = 6;

export function firstDraft({ kerfMm }: Pick<Build, 'kerfMm'>): StripDraft {
  return {
    name: '',
    lengthMm: null,
    widthMm: null,
    thicknessMm: null,
    ownBoard: false,
    groups: [{ blade: '', kerfMm, frets: FRETS }],
    kerfErrorMm: KERF_ERROR_MM,
    instrument: 'feelers',
    test: 'none',
  };
}

/** @returns undefined while a number is missing */
export function documentOf(draft: StripDraft, build: Build, id: string, date: string): CheckedStrip | undefined {
  const { lengthMm, widthMm, thicknessMm, kerfErrorMm } = draft;
  const frets = draft.groups.reduce((sum, group) => sum + (group.frets ?? Number.NaN), 0);
  const isWhole = draft.groups.every(({ kerfMm }) => kerfMm !== null) && !Number.isNaN(frets);
  if (lengthMm === null || widthMm === null || thicknessMm === null || kerfErrorMm === null || !isWhole)
    return undefined;
  const own = isOwnWood(build.boardWood) ? ownWoodOf(build, build.boardWood) : undefined;
  return checkStrip({
    id,
    date,
    name: draft.name,
    workshop: '',
    notes: '',
    offcut: {
      lengthMm,
      widthMm,
      thicknessMm,
      wood: documentWood(build.boardWood),
      sawn: build.boardSawn,
      ownModulusGPa: own?.modulusGPa ?? null,
      ownDensityKgM3: own?.densityKgM3 ?? null,
      cutFrom: draft.ownBoard ? build.name : '',
      stiffness: { test: 'none' },
    },
    wire: {
      name: '',
      tangWidthMm: build.tangWidthMm,
      tangDepthMm: build.tangDepthMm,
      studWidthMm: build.studWidthMm,
      studAreaMm2: build.studAreaMm2,
      studPitchMm: build.studPitchMm,
      studShape: build.studShape,
    },
    slotDepthMm: build.slotDepthMm,
    endMm: evenEndMm(lengthMm, frets),
    groups: draft.groups.map((group) => ({ ...group, kerfErrorMm })),
    readings: [],
  });
}

/** What will be read of it: from end to end, and each kerf by itself where there are several. */
export function planOf(
  checked: Extract<CheckedStrip, { ok: true }>,
  { ownBoard, instrument, test }: StripDraft,
): StripPlan {
  const { strip } = checked;
  const spans = strip.groups.length > 1 ? (['ends', ...strip.groups.keys()] as const) : (['ends'] as const);
  return {
    strip,
    ownBoard,
    readings: spans.map((over) => ({ days: 0, over, instrument, ownErrorMm: null })),
    stiffness: test === 'none' ? null : { test, state: 'slotted' },
  };
}
