import { predictString, pitchFrequencyHz, musicWireStrengthMPa, tensionN, unitMassKgM } from '../../../src/mechanics/strings.ts';
import { halfDigit, rowFromCheck, type ValueRow } from '../row.ts';

const MM_PER_M = 1000;

function plain(diameterMm: number, pitch: number) {
  return predictString({ construction: 'steel-plain', diameterMm, coreMm: diameterMm, pitch }, 647.7);
}

/** Tension is proportional to the square of the wave speed 2·L·f: half a metre at 1 Hz is a speed of 1 m/s. */
function waveSpeed(massKgM: number, tension: number): number {
  return Math.sqrt(tension / tensionN(massKgM, 0.5 * MM_PER_M, 1));
}

/** A steel string of 3.5 g that carries 900 N at 700 MPa. */
const SOUND_MASS_KG = 3.5e-3;
const SOUND_DIAMETER_MM = 2 * MM_PER_M * Math.sqrt(900 / 7e8 / Math.PI);
const SOUND_LENGTH_M =
  SOUND_MASS_KG / unitMassKgM({ construction: 'steel-plain', diameterMm: SOUND_DIAMETER_MM, coreMm: SOUND_DIAMETER_MM });

export const STRING_ROWS: readonly ValueRow[] = [
  rowFromCheck('wave-speed', 'Strings', [() => waveSpeed(3.09e-4, 56.4)]),
  rowFromCheck('string-low', 'Strings', [() => tensionN(5.78e-3, 0.5 * MM_PER_M, 427.23)]),
  rowFromCheck('plain-e4', 'Strings', [() => plain(0.254, 64).tensionN]),
  rowFromCheck('plain-b3', 'Strings', [() => plain(0.3302, 59).tensionN]),
  rowFromCheck('plain-stress', 'Strings', [() => plain(0.254, 64).stressMPa]),
  rowFromCheck('sound-string', 'Strings', [() => SOUND_LENGTH_M], {
    note: 'Length from the unit mass that the library gives to wire of the radius that carries 900 N.',
  }),
  {
    id: 'sound-string-pitch',
    kind: 'verification',
    subject: 'Strings',
    quantity: 'fundamental of the same string',
    inputs: 'steel 7850 kg/m³; 3.5 g; 900 N; 700 MPa',
    source: 'Young & Freedman, University Physics, exercise (0.347 m, radius 0.640 mm)',
    mark: 'src',
    comparisons: [
      {
        printed: '430.6',
        reference: 430.6,
        unit: 'Hz',
        tolerance: halfDigit('430.6'),
        why: 'half a unit of the last digit printed',
        ours: () => waveSpeed(SOUND_MASS_KG / SOUND_LENGTH_M, 900) / (2 * SOUND_LENGTH_M),
      },
    ],
  },
  rowFromCheck(
    'wound',
    'Strings',
    [
      () => {
        const string = { construction: 'steel-wound', diameterMm: 1.168, coreMm: 0.45 } as const;
        const core = unitMassKgM({ ...string, construction: 'steel-plain', diameterMm: string.coreMm });
        const solid = unitMassKgM({ ...string, construction: 'steel-plain' });
        return (unitMassKgM(string) - core) / (solid - core);
      },
    ],
    { note: 'Steel wrap on steel: the mass of the wrap over that of a solid tube in its place.' },
  ),
  {
    id: 'equal-temperament',
    kind: 'verification',
    subject: 'Strings',
    quantity: 'frequency of open strings',
    inputs: 'twelve-tone equal temperament, A4 = 440 Hz',
    source: 'ISO 16 for A4; note tables of acoustics textbooks',
    mark: 'mem',
    comparisons: (
      [
        ['E4', 64, '329.63'],
        ['B3', 59, '246.94'],
        ['E2', 40, '82.41'],
        ['E1', 28, '41.20'],
      ] as const
    ).map(([label, pitch, printed]) => ({
      label,
      printed,
      reference: Number(printed),
      unit: 'Hz',
      tolerance: halfDigit(printed),
      why: 'half a unit of the last digit printed',
      ours: () => pitchFrequencyHz(pitch),
    })),
  },
  {
    id: 'music-wire',
    kind: 'verification',
    subject: 'Strings',
    quantity: 'least tensile strength of music wire',
    inputs: 'd 0.037 in',
    source: 'Shigley, Mechanical Engineering Design, worked example with music wire: 201/0.037^0.145 = 324 kpsi',
    mark: 'mem',
    comparisons: [
      {
        printed: '324',
        reference: 324,
        unit: 'kpsi',
        tolerance: 3e-3,
        why: 'the book rounds its constant for inches (201) and for millimetres (2211) apart',
        ours: () => musicWireStrengthMPa(0.037 * 25.4) / 6.894757,
      },
    ],
  },
];
