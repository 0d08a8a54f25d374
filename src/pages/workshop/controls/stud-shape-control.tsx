/** The shape of the studs: a number, and three drawings of what a lens shows that set it. Values between stay possible. */
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import { STUD_WORDS } from '../../../speech/en/workshop/studs.ts';
import { parameterName } from '../../../speech/names.ts';
import { formatNumber } from '../../../speech/quantity.ts';
import { NumberControl, type NumberControlProps } from './number-control.tsx';
import './stud-shapes.css';

export function isStudShape({ id }: NumberParameter): boolean {
  return id === 'studShape';
}

type Corner = readonly [along: number, down: number, out: number];
/** Faces that are seen: of the top, the near side and the end, as far as the shape has them. */
type Faces = Readonly<Partial<Record<'top' | 'side' | 'end', readonly Corner[]>>>;

const FOOT = { left: [-1, 1, 0], near: [1, 1, 0], right: [1, -1, 0] } as const satisfies Record<string, Corner>;

const SHAPES: readonly { readonly id: 'block' | 'ridge' | 'point'; readonly value: number; readonly faces: Faces }[] = [
  {
    id: 'block',
    value: 0,
    faces: {
      top: [
        [-1, 1, 1],
        [1, 1, 1],
        [1, -1, 1],
        [-1, -1, 1],
      ],
      side: [FOOT.left, FOOT.near, [1, 1, 1], [-1, 1, 1]],
      end: [FOOT.near, FOOT.right, [1, -1, 1], [1, 1, 1]],
    },
  },
  {
    id: 'ridge',
    value: 1,
    faces: { side: [FOOT.left, FOOT.near, [1, 0, 1], [-1, 0, 1]], end: [FOOT.near, FOOT.right, [1, 0, 1]] },
  },
  {
    id: 'point',
    value: 2,
    faces: { side: [FOOT.left, FOOT.near, [0, 0, 1]], end: [FOOT.near, FOOT.right, [0, 0, 1]] },
  },
];

const [WIDTH, HEIGHT] = [56, 40];
/** The flank of the tang that the stud stands on. */
const FLANK: readonly Corner[] = [
  [-1.6, 1.6, 0],
  [1.6, 1.6, 0],
  [1.6, -1.6, 0],
  [-1.6, -1.6, 0],
];

/** Seen from above one corner, as a block is drawn on squared paper. */
function outline(corners: readonly Corner[]): string {
  return corners
    .map(([along, down, out]) => `${WIDTH / 2 + 8 * (along - down)} ${26 + 4 * (along + down) - 17 * out}`)
    .join(' ');
}

function Drawing({ faces }: { readonly faces: Faces }) {
  return (
    <svg width={WIDTH} height={HEIGHT} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <polygon className="flank" points={outline(FLANK)} />
      {Object.entries(faces).map(([face, corners]) => (
        <polygon key={face} className={`stud-${face}`} points={outline(corners)} />
      ))}
    </svg>
  );
}

export function StudShapeControl(props: NumberControlProps) {
  const { parameter, value, change } = props;
  return (
    <NumberControl {...props}>
      <p className="quiet stud-look">{STUD_WORDS.look}</p>
      <fieldset className="stud-shapes" aria-label={parameterName(parameter.id)}>
        {SHAPES.map(({ id, value: own, faces }) => {
          const { name, says } = STUD_WORDS[id];
          return (
            <button
              key={id}
              type="button"
              aria-pressed={value === own}
              aria-label={STUD_WORDS.choose(name, says, formatNumber(own, 0))}
              onClick={() => change(own)}
            >
              <Drawing faces={faces} />
              {name}
            </button>
          );
        })}
      </fieldset>
    </NumberControl>
  );
}
