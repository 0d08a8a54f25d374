/**
 * A shape as plain arrays, in straight (unbowed) coordinates.
 *
 * Coordinates of every mesh: x along the neck from the nut, y UP from the crown of the board (minus the library's depth),
 * z across, the bass side of a right-handed neck on the plus side. Right-handed; triangles run counter-clockwise seen from outside.
 * All lengths mm.
 */
export interface Mesh {
  /** x, y, z of each vertex. */
  readonly positions: Float32Array;
  /** Unit outward normal of each vertex. Edges are sharp where vertices are doubled. */
  readonly normals: Float32Array;
  /** Three vertices a triangle. */
  readonly indices: Uint32Array;
  /**
   * x of each cross-section that moves as a rigid plane when the neck bows, and the cross-section that each vertex
   * belongs to. A slice of wood belongs to its own x; a fret belongs as a whole to the x of its slot.
   */
  readonly anchorsMm: Float64Array;
  readonly anchorOf: Uint16Array;
  /** sRGB colour of each vertex, three bytes; only where a mesh has several colours. */
  readonly colours?: Uint8Array;
  /** Fret that each vertex belongs to or lies beside, 0 = none; only where it matters. */
  readonly fretOf?: Uint8Array;
  /** How much of the light is kept from each vertex by the wood around it (a slot), 0…1. */
  readonly cavity?: Float32Array;
  /** How much of the light is kept from each vertex by the seated fret `fretOf`, 0…1. */
  readonly contact?: Float32Array;
}

export type Vertex = number;

/** Writes a mesh vertex by vertex. */
export interface MeshWriter {
  vertex(x: number, y: number, z: number, nx: number, ny: number, nz: number): Vertex;
  triangle(a: Vertex, b: Vertex, c: Vertex): void;
  /** Two triangles a-b-c and a-c-d. */
  quad(a: Vertex, b: Vertex, c: Vertex, d: Vertex): void;
  /** The cross-section that the following vertices move with; null = each with its own x. */
  anchor(xMm: number | null): void;
  colour(hex: string): void;
  fret(number: number): void;
  /** Shading of the following vertices. */
  shade(cavity: number, contact: number): void;
  /** The mesh; nothing more is written with this writer. */
  finish(): Mesh;
}

/** Where a mesh is written before its size is known. */
interface Room {
  positions: Float32Array;
  normals: Float32Array;
  colours: Uint8Array;
  anchorOf: Uint16Array;
  fretOf: Uint8Array;
  cavity: Float32Array;
  contact: Float32Array;
  indices: Uint32Array;
}

const FIRST_VERTICES = 1024;

function newRoom(): Room {
  return {
    positions: new Float32Array(FIRST_VERTICES * 3),
    normals: new Float32Array(FIRST_VERTICES * 3),
    colours: new Uint8Array(FIRST_VERTICES * 3),
    anchorOf: new Uint16Array(FIRST_VERTICES),
    fretOf: new Uint8Array(FIRST_VERTICES),
    cavity: new Float32Array(FIRST_VERTICES),
    contact: new Float32Array(FIRST_VERTICES),
    indices: new Uint32Array(FIRST_VERTICES * 6),
  };
}

/** Rooms of finished meshes, as large as they have grown: shapes are made again and again while a slider moves. */
const freeRooms: Room[] = [];

function grown<T extends Float32Array | Float64Array | Uint32Array | Uint16Array | Uint8Array>(array: T): T {
  const larger = new (array.constructor as new (length: number) => T)(array.length * 2);
  larger.set(array);
  return larger;
}

/** sRGB hex "#rrggbb" → three bytes. @throws {RangeError} on anything else. */
export function bytesOfHex(hex: string): [number, number, number] {
  const digits = /^#([0-9a-f]{6})$/i.exec(hex)?.[1];
  if (!digits) throw new RangeError(`colour "${hex}" is not of the form #rrggbb`);
  const value = Number.parseInt(digits, 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
}

/** The cross-sections of a mesh, each once, in the order in which they came. */
function createAnchors() {
  const xMm: number[] = [];
  const indexByX = new Map<number, number>();
  // Vertices of one section mostly come one after the other.
  let last = Number.NaN;
  let lastIndex = 0;
  return {
    xMm,
    indexOf(x: number): number {
      if (x === last) return lastIndex;
      const known = indexByX.get(x);
      last = x;
      lastIndex = known ?? xMm.length;
      if (known === undefined) {
        xMm.push(x);
        indexByX.set(x, lastIndex);
      }
      return lastIndex;
    },
  };
}

/** What was written into a room. */
interface Written {
  readonly vertices: number;
  readonly corners: number;
  readonly used: Readonly<Record<'colours' | 'fretOf' | 'cavity' | 'contact', boolean>>;
  readonly anchorsMm: readonly number[];
}

function meshOf(room: Room, { vertices, corners, used, anchorsMm }: Written): Mesh {
  return {
    positions: room.positions.slice(0, vertices * 3),
    normals: room.normals.slice(0, vertices * 3),
    indices: room.indices.slice(0, corners),
    anchorsMm: Float64Array.from(anchorsMm),
    anchorOf: room.anchorOf.slice(0, vertices),
    ...(used.colours ? { colours: room.colours.slice(0, vertices * 3) } : {}),
    ...(used.fretOf ? { fretOf: room.fretOf.slice(0, vertices) } : {}),
    ...(used.cavity ? { cavity: room.cavity.slice(0, vertices) } : {}),
    ...(used.contact ? { contact: room.contact.slice(0, vertices) } : {}),
  };
}

export function createMeshWriter(): MeshWriter {
  let { positions, normals, colours, anchorOf, fretOf, cavity, contact, indices } = freeRooms.pop() ?? newRoom();
  let vertices = 0;
  let corners = 0;
  const anchors = createAnchors();
  let fixedAnchor: number | null = null;
  let [red, green, blue] = [255, 255, 255];
  let fretNow = 0;
  let [cavityNow, contactNow] = [0, 0];
  const used = { colours: false, fretOf: false, cavity: false, contact: false };

  const writer: MeshWriter = {
    vertex(x, y, z, nx, ny, nz) {
      if (vertices === anchorOf.length) {
        positions = grown(positions);
        normals = grown(normals);
        colours = grown(colours);
        anchorOf = grown(anchorOf);
        fretOf = grown(fretOf);
        cavity = grown(cavity);
        contact = grown(contact);
      }
      const at = vertices * 3;
      positions[at] = x;
      positions[at + 1] = y;
      positions[at + 2] = z;
      const size = Math.sqrt(nx * nx + ny * ny + nz * nz) || 1;
      normals[at] = nx / size;
      normals[at + 1] = ny / size;
      normals[at + 2] = nz / size;
      colours[at] = red;
      colours[at + 1] = green;
      colours[at + 2] = blue;
      anchorOf[vertices] = anchors.indexOf(fixedAnchor ?? x);
      fretOf[vertices] = fretNow;
      cavity[vertices] = cavityNow;
      contact[vertices] = contactNow;
      return vertices++;
    },
    triangle(a, b, c) {
      if (corners + 3 > indices.length) indices = grown(indices);
      indices[corners++] = a;
      indices[corners++] = b;
      indices[corners++] = c;
    },
    quad(a, b, c, d) {
      writer.triangle(a, b, c);
      writer.triangle(a, c, d);
    },
    anchor(xMm) {
      fixedAnchor = xMm;
    },
    colour(hex) {
      [red, green, blue] = bytesOfHex(hex);
      used.colours = true;
    },
    fret(number) {
      fretNow = number;
      used.fretOf ||= number !== 0;
    },
    shade(cavityShare, contactShare) {
      cavityNow = cavityShare;
      contactNow = contactShare;
      used.cavity ||= cavityShare !== 0;
      used.contact ||= contactShare !== 0;
    },
    finish() {
      const room = { positions, normals, colours, anchorOf, fretOf, cavity, contact, indices };
      freeRooms.push(room);
      return meshOf(room, { vertices, corners, used, anchorsMm: anchors.xMm });
    },
  };
  return writer;
}
