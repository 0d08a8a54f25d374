/**
 * Surfaces as a binary glTF 2.0 file (ISO/IEC 12113).
 *
 *   lengths      metres, as glTF demands; right-handed, y up: the axes of the surfaces are kept
 *   colours      linear, c = ((s + 0.055)/1.055)^2.4, or s/12.92 below 0.04045       s, c: 0…1 (IEC 61966-2-1)
 *
 * One node for each part, under one node for the neck; one primitive for each surface. What the file shows and how much
 * larger than life its bow is stands in `asset.extras`.
 */
import { Document, WebIO, type Material } from '@gltf-transform/core';
import { bytesOfHex } from '../mesh.ts';
import type { Finish, Surface } from './surface.ts';

/** Plain data for `asset.extras`. */
export type Extras = Readonly<Record<string, string | number | boolean | null | readonly (string | number)[]>>;

const METRES_PER_MM = 0.001;

/** Metalness and roughness of each finish: by eye. */
const FINISHES: Readonly<Record<Finish, { metallic: number; roughness: number }>> = {
  wood: { metallic: 0, roughness: 0.6 },
  plastic: { metallic: 0, roughness: 0.45 },
  metal: { metallic: 1, roughness: 0.25 },
};

/** sRGB byte → linear light, 0…1. */
export function linearOf(byte: number): number {
  const s = byte / 255;
  return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
}

/**
 * @param name of the neck
 * @param generator program and version
 * @throws {RangeError} when there is no surface, or a colour is not of the form #rrggbb
 */
export async function writeGlb(
  surfaces: readonly Surface[],
  name: string,
  generator: string,
  extras: Extras,
): Promise<Uint8Array> {
  if (surfaces.length === 0) throw new RangeError('there is nothing to write: no surfaces were given');
  const document = new Document();
  const asset = document.getRoot().getAsset() as { generator?: string; extras?: Extras };
  asset.generator = generator;
  asset.extras = extras;
  const buffer = document.createBuffer();
  const neck = document.createNode(name);
  const scene = document.createScene(name).addChild(neck);
  document.getRoot().setDefaultScene(scene);

  const materials = new Map<string, Material>();
  const materialOf = ({ material, colour, finish }: Surface): Material => {
    const key = `${material} ${colour} ${finish}`;
    const known = materials.get(key);
    if (known) return known;
    const [red, green, blue] = bytesOfHex(colour).map(linearOf);
    const made = document
      .createMaterial(material)
      .setBaseColorFactor([red, green, blue, 1])
      .setMetallicFactor(FINISHES[finish].metallic)
      .setRoughnessFactor(FINISHES[finish].roughness);
    materials.set(key, made);
    return made;
  };

  const parts = new Map<string, ReturnType<Document['createMesh']>>();
  for (const surface of surfaces) {
    let mesh = parts.get(surface.part);
    if (!mesh) {
      mesh = document.createMesh(surface.part);
      parts.set(surface.part, mesh);
      neck.addChild(document.createNode(surface.part).setMesh(mesh));
    }
    const accessor = (type: 'VEC3' | 'SCALAR', array: Float32Array<ArrayBuffer> | Uint32Array<ArrayBuffer>) =>
      document.createAccessor().setBuffer(buffer).setType(type).setArray(array);
    mesh.addPrimitive(
      document
        .createPrimitive()
        .setMaterial(materialOf(surface))
        .setIndices(accessor('SCALAR', Uint32Array.from(surface.indices)))
        .setAttribute(
          'POSITION',
          accessor(
            'VEC3',
            Float32Array.from(surface.positionsMm, (mm) => mm * METRES_PER_MM),
          ),
        )
        .setAttribute('NORMAL', accessor('VEC3', Float32Array.from(surface.normals))),
    );
  }
  return new WebIO().writeBinary(document);
}
