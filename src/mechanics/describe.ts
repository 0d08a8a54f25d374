/** From a build to the description that the finite-element core takes. */
import { sheetMaterial } from '../neck/materials/binding.ts';
import { bindingInUse, type Build } from '../neck/build.ts';
import {
  areLaminatesConstant,
  bodyJointMm,
  boardEndMm,
  fretPositionMm,
  fretPositionsMm,
  laminateJoints,
  lastFretMm,
  MOST_CHANNEL_SHARE,
  slotShortMm,
  tangShortMm,
} from '../neck/neck-shape.ts';
import { metalById } from '../neck/metals.ts';
import type { Deviations } from './deviations.ts';
import type { ElasticRatios } from '../neck/woods.ts';
import type { BarLayer, Linear, NeckDescription, NeckPiece, NeckWood, SlotEnds, WidthShears } from './description.ts';
import { boardProperties, meanModulusMPa, measuredModulusMPa, standing, woodProperties } from './elements/materials.ts';

/**
 * Kerf of the mesh. The wires, kerfs and fillers of a build all share one mesh: a slot's flexibility hardly depends on
 * its width (see MODEL.md), and a filler's modulus is scaled to this width.
 */
export const MESH_KERF_MM = 0.6;

function through(x1: number, value1: number, x2: number, value2: number): Linear {
  const slope = (value2 - value1) / (x2 - x1);
  return { atNut: value1 - slope * x1, slope };
}

type BoardDeviations = Pick<Deviations, 'boardModulus' | 'acrossGrain'>;

function boardWoodOf(build: Build, { boardModulus, acrossGrain }: BoardDeviations): NeckWood {
  const { modulusMPa, ratios } = boardProperties(build);
  const across = standing(ratios, build.boardSawn === 'quarter' ? 'tangential' : 'radial');
  return {
    modulusMPa: (measuredModulusMPa(build, 'board') ?? modulusMPa) * boardModulus,
    ...across,
    depthRatio: across.depthRatio * acrossGrain,
    widthRatio: across.widthRatio * acrossGrain,
    shearRatio: across.shearRatio * acrossGrain,
  };
}

/** G_yz of woods over E along the grain, rolling shear: assumption, of little weight (MODEL.md). */
const ROLLING_SHEAR = 0.03;
const SHEET_POISSON = 0.35;

/** A wood as it lies in the neck, with its shears across the width. @param depth which of its directions is the depth */
function standingShears(ratios: ElasticRatios, depth: 'radial' | 'tangential'): WidthShears {
  return { alongWidth: depth === 'radial' ? ratios.shearLT : ratios.shearLR, depthWidth: ROLLING_SHEAR };
}

function bindingLine(build: Build, widthMm: number, material: string): SlotEnds['lines'][number] {
  const sheet = sheetMaterial(material);
  if (sheet) {
    const shear = 1 / (2 * (1 + SHEET_POISSON));
    const wood: NeckWood = {
      modulusMPa: sheet.modulusMPa,
      depthRatio: 1,
      widthRatio: 1,
      shearRatio: shear,
      poisson: SHEET_POISSON,
      poissonWidth: SHEET_POISSON,
      poissonDepthWidth: SHEET_POISSON,
    };
    return { widthMm, wood, shears: { alongWidth: shear, depthWidth: shear } };
  }
  const { modulusMPa, ratios } = woodProperties(material, build);
  return {
    widthMm,
    wood: { modulusMPa, ...standing(ratios, 'radial') },
    shears: standingShears(ratios, 'radial'),
  };
}

/** What the ends of the slots are like, where they differ from their middle. */
function endsOf(build: Build, deviations: BoardDeviations): Pick<NeckDescription, 'ends'> {
  const used = bindingInUse(build);
  // Lines as stiff as the board are board, as far as they lie inside the first that is not.
  const from = used.findIndex(({ material }) => material !== undefined && material !== build.boardWood);
  const [slotShort, tangShort] = [slotShortMm(build), tangShortMm(build)];
  if (from < 0 && slotShort === 0 && tangShort === 0) return {};
  const { ratios } = boardProperties(build);
  const depth = build.boardSawn === 'quarter' ? 'tangential' : 'radial';
  const boardShears = standingShears(ratios, depth);
  const lines = from < 0 ? [] : used.slice(from);
  return {
    ends: {
      boardShears,
      lines: lines.map(({ thicknessMm, material }) =>
        material === undefined
          ? { widthMm: thicknessMm, wood: boardWoodOf(build, deviations), shears: boardShears }
          : bindingLine(build, thicknessMm, material),
      ),
      slotShortMm: slotShort,
      tangShortMm: tangShort,
    },
  };
}

/** What tubes and T bars are in each layer; nothing of solid bars. */
function barLayers({ barKind, barWidthMm, barDepthMm, barWallMm }: Build): { readonly layers?: readonly BarLayer[] } {
  const wall = barWallMm / barWidthMm;
  if (barKind === 'steel-tube')
    return {
      layers: [
        { toMm: barWallMm, metal: 1, gone: 1 },
        { toMm: barDepthMm - barWallMm, metal: 2 * wall, gone: 1 },
        { toMm: barDepthMm, metal: 1, gone: 1 },
      ],
    };
  if (barKind === 'steel-t')
    return {
      layers: [
        { toMm: barWallMm, metal: 1, gone: 1 },
        { toMm: barDepthMm, metal: wall, gone: wall },
      ],
    };
  return {};
}

export function describeNeck(
  build: Build,
  deviations: Pick<Deviations, 'boardModulus' | 'neckModulus' | 'slotDepthMm' | 'acrossGrain'>,
): NeckDescription {
  const last = lastFretMm(build);
  const slotDepthMm = build.slotDepthMm + deviations.slotDepthMm;

  // A measured neck blank gives one modulus for all its laminates together: each keeps its share of the stiffness.
  const measured = measuredModulusMPa(build, 'neck');
  const scale = (measured === undefined ? 1 : measured / meanModulusMPa(build)) * deviations.neckModulus;
  const joints = laminateJoints(build);
  const isConstant = areLaminatesConstant(build);
  const neck: NeckPiece[] = build.laminates.map((laminate, index) => {
    const wood = woodProperties(laminate.wood, build);
    const to = joints[index];
    return {
      ...(to !== undefined && isConstant ? { toHalfWidthFraction: 0, plusMm: to } : { toHalfWidthFraction: to ?? 1 }),
      wood: { modulusMPa: wood.modulusMPa * scale, ...standing(wood.ratios, 'radial') },
    };
  });

  const { scaleLengthMm } = build;
  const hasRod = build.rodKind !== 'none';
  return {
    lengthMm: boardEndMm(build),
    jointMm: bodyJointMm(build),
    support: 'determinate',
    fretXMm: fretPositionsMm(scaleLengthMm, build.fretCount),
    widthMm: through(0, build.widthNutMm, last, build.widthLastFretMm),
    boardThicknessMm: build.boardThicknessMm,
    boardRadiusMm:
      build.boardShape === 'flat'
        ? null
        : build.boardShape === 'cylinder'
          ? { atNut: build.radiusNutMm, slope: 0 }
          : through(0, build.radiusNutMm, last, build.radiusLastFretMm),
    totalThicknessMm: through(
      fretPositionMm(scaleLengthMm, 1),
      build.thicknessFret1Mm,
      fretPositionMm(scaleLengthMm, 12),
      build.thicknessFret12Mm,
    ),
    backShoulderMm: build.backShoulderMm,
    backExponent: build.backExponent,
    heel: { thicknessMm: build.heelThicknessMm, lengthMm: build.heelLengthMm },
    channel:
      hasRod && build.channelWidthMm > 0 && build.channelDepthMm > 0
        ? {
            widthAtMidMm: build.channelWidthMm,
            depthMm: build.channelDepthMm,
            mostShare: MOST_CHANNEL_SHARE,
            fromMm: build.rodStartMm,
            toMm: build.rodEndMm,
            ...(build.channelCut === 'straight' ? { straight: true as const } : {}),
            ...(build.channelCut === 'straight' && build.rodKind === 'one-way' && build.channelFollowsRod
              ? { risesMm: build.rodCurveMm }
              : {}),
            ...(build.rodCount > 1 ? { apartMm: build.rodsApartMm } : {}),
          }
        : null,
    bars:
      build.barCount > 0
        ? {
            totalWidthMm: build.barCount * build.barWidthMm,
            depthMm: build.barDepthMm,
            modulusMPa: 1000 * (build.barKind === 'solid' ? build.barModulusGPa : metalById('mild-steel').modulusGPa),
            ...barLayers(build),
          }
        : null,
    board: boardWoodOf(build, deviations),
    neck,
    ...endsOf(build, deviations),
    slot: {
      kerfMm: MESH_KERF_MM,
      depthMm: slotDepthMm,
      bottom: build.slotBottom,
      contactDepthMm: Math.min(build.tangDepthMm, slotDepthMm),
    },
    rod: hasRod ? { startMm: Math.max(0, build.rodStartMm), endMm: build.rodEndMm } : null,
  };
}
