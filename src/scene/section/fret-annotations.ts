/** The numbers on the cut along a fret, whole or at one end. All are the library's. */
import type { Build } from '../../neck/build.ts';
import { channelWidthMm, heelDepthMm, totalThicknessMm } from '../../neck/neck-shape.ts';
import type { UnitSystem } from '../../neck/units.ts';
import type { QuantityKey } from '../../neck/quantities.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { arcMm } from '../../fretwork/arc.ts';
import { fretEnd } from '../../fretwork/ends.ts';
import { slots } from '../../fretwork/slots.ts';
import { arcPoint } from '../../geometry/arc.ts';
import { channelFloorMm, rodRunMm } from '../../geometry/rod.ts';
import { createSurface } from '../../geometry/surface.ts';
import { SCENE_WORDS } from '../../speech/en/workshop/scene.ts';
import type { Annotations, Callout, Distance, Point3 } from './annotations.ts';

const distance = (from: Point3, to: Point3, up: number, text: string, aside = 0): Distance => ({
  kind: 'distance',
  from,
  to,
  beside: [0, up, aside],
  text,
});

const callout = (margin: Callout['margin'], at: Point3, text: string): Callout => ({
  kind: 'callout',
  at,
  margin,
  text,
});

/** The channel of the rod, where there is one at x, and the wood that is left under it. */
function channelCallout(build: Build, xMm: number, units: UnitSystem): Callout[] {
  const run = rodRunMm(build);
  if (!run || xMm < run[0] || xMm > run[1] || build.channelWidthMm === 0 || build.channelDepthMm === 0) return [];
  const mm = (value: number): string => formatQuantity(value, 'mm', 2, units);
  const floor = channelFloorMm(build, xMm);
  const back = totalThicknessMm(build, xMm) + heelDepthMm(build, xMm);
  const width = channelWidthMm(build, xMm);
  const text = SCENE_WORDS.section.channel(mm(width), mm(floor - build.boardThicknessMm), mm(back - floor));
  const low = floor - (floor - build.boardThicknessMm) * 0.4;
  return [callout('right', [xMm, -low, -width * 0.45], text)];
}

/** The whole width, looking towards the nut: z > 0 is on the left. */
export function fretAnnotations(build: Build, fret: number, units: UnitSystem, lifted: boolean): Annotations {
  const words = SCENE_WORDS.section;
  const text = (key: QuantityKey, value: number): string => textOf(key, value, units);
  const end = fretEnd(build, fret);
  const slot = slots(build)[fret - 1];
  const { xMm } = end;
  const surface = createSurface(build);
  const top = (z: number): number => surface.heightMm(end.radiusMm, z);
  const floor = (z: number): number => surface.floorMm(end.radiusMm, z);
  const items: (Distance | Callout)[] = [
    distance(
      [xMm, -build.boardThicknessMm, -end.boardHalfMm],
      [xMm, -build.boardThicknessMm, end.boardHalfMm],
      -3.2,
      words.boardWidth(text('boardWidthMm', slot.boardWidthMm)),
    ),
    distance([xMm, 0, 0], [xMm, floor(0), 0], 0, words.slotDepth(text('slotDepthMm', slot.depthMm)), 6),
    {
      ...distance(
        [xMm, top(end.slotHalfMm), -end.slotHalfMm],
        [xMm, floor(end.slotHalfMm), -end.slotHalfMm],
        0,
        words.depthAtEnd(text('slotDepthAtEndMm', slot.depthAtEndMm)),
        -Math.max(3, end.boardHalfMm - end.slotHalfMm + 2),
      ),
      minor: true,
    },
    callout(
      'right',
      [xMm, top(end.slotHalfMm * 0.5), -end.slotHalfMm * 0.5],
      end.radiusMm === Infinity ? words.flatBoard : words.radius(text('boardRadiusMm', end.radiusMm)),
    ),
  ];
  items.push(...channelCallout(build, xMm, units));
  if (!lifted) {
    items.push(
      distance(
        [xMm, top(end.crownFootHalfMm), -end.crownFootHalfMm],
        [xMm, top(end.crownFootHalfMm), end.crownFootHalfMm],
        build.crownHeightMm + 3.4,
        words.crownLength(text('filedLengthMm', 2 * arcMm(end.radiusMm, end.crownFootHalfMm))),
      ),
      callout(
        'left',
        [xMm, floor(end.tangHalfMm * 0.6) / 2, end.tangHalfMm * 0.6],
        words.tangLength(text('tangLengthMm', 2 * arcMm(end.radiusMm, end.tangHalfMm))),
      ),
    );
  }
  return { anchorMm: xMm, items };
}

/** Close to the end: saw, nip, shelf, lines of binding, bevel. */
export function endAnnotations(build: Build, fret: number, units: UnitSystem, lifted: boolean): Annotations {
  const words = SCENE_WORDS.section;
  const text = (key: QuantityKey, value: number): string => textOf(key, value, units);
  const end = fretEnd(build, fret);
  const { xMm } = end;
  const surface = createSurface(build);
  const top = (z: number): number => surface.heightMm(end.radiusMm, z);
  const floor = surface.floorMm(end.radiusMm, end.slotHalfMm);
  const edgeTop = top(end.boardHalfMm);
  const items: (Distance | Callout)[] = [];
  // The lines of binding, each named where the saw leaves it visible.
  end.lines.forEach((line, index) => {
    const z = (line.innerMm + line.outerMm) / 2;
    const y = line.sawn ? (floor - build.boardThicknessMm) / 2 : top(z) - 0.3;
    items.push(
      callout('left', [xMm, y, z], words.line(index + 1, text('bindingThicknessMm', line.thicknessMm), line.sawn)),
    );
  });
  if (!lifted) {
    const crownEnd = arcPoint(end.radiusMm, arcMm(end.radiusMm, end.crownFootHalfMm), 0);
    if (end.shelfMm > 0.01) {
      items.push(
        distance(
          [xMm, top(end.slotHalfMm), end.slotHalfMm],
          [xMm, crownEnd.y, crownEnd.z],
          build.crownHeightMm + 0.8,
          words.shelf(text('shelfMm', end.shelfMm)),
        ),
      );
    }
    if (end.nipMm > 0) {
      const tangDown = arcPoint(end.radiusMm, arcMm(end.radiusMm, end.tangHalfMm), -build.tangDepthMm * 0.55);
      items.push(
        distance(
          [xMm, tangDown.y, end.tangHalfMm],
          [xMm, tangDown.y, end.slotHalfMm],
          -build.tangDepthMm * 0.75,
          words.nipClearance(text('nipClearanceMm', build.nipClearanceMm)),
        ),
        callout('right', [xMm, tangDown.y, end.tangHalfMm - 0.6], words.nip(text('nipMm', end.nipMm))),
      );
    } else {
      items.push(callout('right', [xMm, -build.tangDepthMm * 0.5 + edgeTop, end.tangHalfMm - 0.8], words.tangFlush));
    }
    const bevelled = arcPoint(
      end.radiusMm,
      arcMm(end.radiusMm, (end.crownFootHalfMm + end.crownTopHalfMm) / 2),
      build.crownHeightMm / 2,
    );
    items.push(
      callout('left', [xMm, bevelled.y, bevelled.z], words.bevel(text('endBevelDegrees', build.endBevelDegrees))),
    );
    if (build.endInsetMm > 0.005) {
      items.push(
        callout(
          'left',
          [xMm, edgeTop, (end.crownFootHalfMm + end.boardHalfMm) / 2],
          words.inset(text('endInsetMm', build.endInsetMm)),
        ),
      );
    }
  } else {
    items.push(
      callout('right', [xMm, edgeTop, end.boardHalfMm], words.overhang(formatQuantity(end.overhangMm, 'mm', 2, units))),
    );
  }
  return { anchorMm: xMm, items };
}
