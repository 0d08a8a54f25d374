/** One mesh of the picture: a bender and the buffers that it writes into. */
import { BufferAttribute, BufferGeometry, DynamicDrawUsage, Mesh as ThreeMesh, type Material } from 'three';
import { createBender, type Bender, type BowReader } from '../geometry/bend.ts';
import type { Mesh } from '../geometry/mesh.ts';

export interface Part {
  readonly object: ThreeMesh;
  /** The shape drawn now; null before the first. */
  shape(): Mesh | null;
  /** Takes a new straight shape; buffers are kept when their sizes fit. */
  setShape(mesh: Mesh): void;
  /** Writes the bowed shape into the buffers. */
  bend(reader: BowReader, lift?: ArrayLike<number>): void;
  /** Writes how much the seated frets shade the wood beside them; only shapes with `contact`. */
  setSeated(lift: ArrayLike<number> | undefined): void;
  bender(): Bender | null;
  dispose(): void;
}

/** Shadow of a fret that stands this high above its seat has faded to a third. */
const CONTACT_FADE_MM = 2.5;

export function createPart(material: Material, renderOrder = 0): Part {
  const object = new ThreeMesh(new BufferGeometry(), material);
  object.frustumCulled = false;
  object.renderOrder = renderOrder;
  object.matrixAutoUpdate = false;
  let bender: Bender | null = null;
  let shade: Float32Array | null = null;
  /** How much of its shadow each fret casts, by its number; wood that belongs to none (0) keeps what it has. */
  const left = new Float64Array(256).fill(1);

  const setAttribute = (geometry: BufferGeometry, name: string, array: Float32Array, size: number): void => {
    geometry.setAttribute(name, new BufferAttribute(array, size));
  };

  return {
    object,
    shape: () => bender?.mesh ?? null,
    bender: () => bender,
    setShape(mesh) {
      const geometry = object.geometry;
      const before = bender;
      const same =
        before !== null &&
        before.positions.length === mesh.positions.length &&
        before.mesh.indices.length === mesh.indices.length;
      bender = createBender(mesh, same ? before : undefined);
      if (!same || !shade) shade = mesh.cavity || mesh.contact ? new Float32Array(mesh.anchorOf.length * 2) : null;
      const fresh: [string, Float32Array, number][] = [
        ['position', bender.positions, 3],
        ['normal', bender.normals, 3],
        ['rest', mesh.positions, 3],
        ['restNormal', mesh.normals, 3],
      ];
      if (mesh.colours) fresh.push(['tint', Float32Array.from(mesh.colours, (byte) => byte / 255), 3]);
      if (mesh.fretOf) fresh.push(['fret', new Float32Array(mesh.fretOf), 1]);
      if (shade) fresh.push(['shade', shade, 2]);
      if (same) {
        for (const [name, array] of fresh) {
          const attribute = geometry.getAttribute(name) as BufferAttribute;
          attribute.array = array;
          attribute.needsUpdate = true;
        }
        const index = geometry.getIndex() as BufferAttribute;
        index.array = mesh.indices;
        index.needsUpdate = true;
        return;
      }
      geometry.dispose();
      const next = new BufferGeometry();
      for (const [name, array, size] of fresh) setAttribute(next, name, array, size);
      (next.getAttribute('position') as BufferAttribute).setUsage(DynamicDrawUsage);
      (next.getAttribute('normal') as BufferAttribute).setUsage(DynamicDrawUsage);
      next.setIndex(new BufferAttribute(mesh.indices, 1));
      object.geometry = next;
    },
    bend(reader, lift) {
      if (!bender) return;
      bender.bend(reader, lift);
      (object.geometry.getAttribute('position') as BufferAttribute).needsUpdate = true;
      (object.geometry.getAttribute('normal') as BufferAttribute).needsUpdate = true;
    },
    setSeated(lift) {
      const mesh = bender?.mesh;
      if (!mesh || !shade) return;
      const { cavity, contact, fretOf } = mesh;
      for (let fret = 1; fret < left.length; fret++) {
        const raised = lift?.[fret - 1] ?? 0;
        left[fret] = raised === Infinity ? 0 : Math.exp(-raised / CONTACT_FADE_MM);
      }
      for (let i = 0; i < mesh.anchorOf.length; i++) {
        shade[2 * i] = cavity?.[i] ?? 0;
        shade[2 * i + 1] = (contact?.[i] ?? 0) * left[fretOf?.[i] ?? 0];
      }
      (object.geometry.getAttribute('shade') as BufferAttribute).needsUpdate = true;
    },
    dispose() {
      object.geometry.dispose();
      bender = null;
      shade = null;
    },
  };
}
