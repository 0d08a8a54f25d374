/**
 * What a tang does to the walls of its slot: two contacts in parallel on each wall.
 *
 *   studs   F_s = n·A(β)·p(β),   A(β) = A·min(1, β/H)^m,   p(β) = f·(1 − exp(−β/δ)),   f = 0.082·(1 − 0.01 d)·ρ N/mm²
 *           n = contact width / stud pitch; A projected area of a whole stud, mm²; H its height above the tang body, mm;
 *           m its shape: 0 a block, 1 a ridge or wedge, 2 a cone; d = √(4A/π) mm; ρ kg/m³; δ bite over which the pressure
 *           rises, mm: f/δ is what a sawn wall gives to a stud, N/mm³
 *           f: embedding strength along the grain, EN 1995-1-1 eq. 8.16 / 8.32. It was written for dowels of millimetres; a
 *           stud of well under 1 mm is an extrapolation. The form of p is that of Foschi 1974 without hardening (from memory);
 *           that of A is geometry.
 *   body    F_b = w·h·min(f_c, K_f·β_b) when the kerf is narrower than the tang: w contact width, h contact depth,
 *           f_c crushing strength parallel to the grain, K_f stiffness of a sawn wall, N/mm³ (assumption)
 *
 * Once seated, both give and take along elastic lines, the studs n·A(β₀)·f/δ, the body w·h·K_f, never into tension; what
 * time has relaxed is taken up along them too, until the curve of first loading is met again. Where that is the steeper one,
 * as for a ridge that has only just bitten, deeper wood answers like wood that was never touched:
 *
 *   F(β) = min{ curve(β),  ρ·F(β₀) + G(β) },   G = k·(β − β₀),  beyond β₀ no less than curve(β) − F(β₀)
 *                                                        β₀ bite as seated, ρ share of the force that time has left
 *
 * Both walls are alike: β = (width − kerf − Δ)/2 with Δ the slot's opening.
 */

export interface Contact {
  /** n·A·f on one wall, N: what the studs reach when they are fully in. */
  readonly studForceN: number;
  /** H, mm. */
  readonly studHeightMm: number;
  /** m. */
  readonly studShape: number;
  /** δ, mm. */
  readonly embeddingLengthMm: number;
  /** Width over the studs less the kerf, mm. */
  readonly studInterferenceMm: number;
  /** Tang body width less the kerf, mm. */
  readonly bodyInterferenceMm: number;
  /** w·h·K_f on one wall, N/mm. */
  readonly bodyStiffnessNMm: number;
  /** w·h·f_c on one wall, N. */
  readonly bodyLimitN: number;
}

/** f in N/mm². */
export function embeddingStrengthMPa(diameterMm: number, densityKgM3: number): number {
  return 0.082 * (1 - 0.01 * diameterMm) * densityKgM3;
}

export interface ContactState {
  readonly forceN: number;
  /** −dF/dΔ, N/mm, ≥ 0. */
  readonly stiffnessNMm: number;
}

/** A contact that has been seated, and has stood for a while since: the elastic lines that it goes along from there. */
export interface Seated {
  readonly openingMm: number;
  /** −dF/dΔ along the two lines together, N/mm. */
  readonly stiffnessNMm: number;
  readonly studs: ElasticLine;
  readonly body: ElasticLine;
}

export interface ElasticLine {
  /** β₀, mm. */
  readonly biteMm: number;
  /** F(β₀) of first loading, and ρ of it, N. */
  readonly firstN: number;
  readonly leftN: number;
  /** k, N per mm of bite. */
  readonly perBiteNMm: number;
}

/** Bite of the studs into one wall, mm; 0 when they do not reach it. */
export function studBiteMm(contact: Contact, openingMm: number): number {
  return Math.max(0, (contact.studInterferenceMm - openingMm) / 2);
}

const bodyBiteMm = (contact: Contact, openingMm: number) => Math.max(0, (contact.bodyInterferenceMm - openingMm) / 2);

/** A(β)/A. */
function areaShare({ studHeightMm, studShape }: Pick<Contact, 'studHeightMm' | 'studShape'>, biteMm: number): number {
  return biteMm >= studHeightMm ? 1 : (biteMm / studHeightMm) ** studShape;
}

/** A(β)/A·p(β)/f: how much of its full grip a stud has at a bite, 0 to 1. */
export function gripShare(
  law: Pick<Contact, 'studHeightMm' | 'studShape' | 'embeddingLengthMm'>,
  biteMm: number,
): number {
  return biteMm <= 0 ? 0 : areaShare(law, biteMm) * -Math.expm1(-biteMm / law.embeddingLengthMm);
}

/** A force on a wall, N, and how it grows with the bite, N/mm. */
type Branch = readonly [force: number, perBite: number];
const NOTHING: Branch = [0, 0];

function studsFirst(contact: Contact, biteMm: number): Branch {
  if (biteMm <= 0) return NOTHING;
  const { studForceN, embeddingLengthMm, studHeightMm, studShape } = contact;
  const fallen = Math.expm1(-biteMm / embeddingLengthMm);
  const full = studForceN * areaShare(contact, biteMm);
  const growing = biteMm < studHeightMm ? (-fallen * studShape) / biteMm : 0;
  return [full * -fallen, full * (growing + (1 + fallen) / embeddingLengthMm)];
}

function bodyFirst({ bodyStiffnessNMm, bodyLimitN }: Contact, biteMm: number): Branch {
  const elastic = bodyStiffnessNMm * biteMm;
  if (biteMm <= 0) return NOTHING;
  return elastic < bodyLimitN ? [elastic, bodyStiffnessNMm] : [bodyLimitN, 0];
}

/** The contact as it stands when it was seated at an opening. @param forceLeft ρ, 0 to 1. */
export function seatedAt(contact: Contact, openingMm: number, forceLeft: number): Seated {
  const line = (biteMm: number, [firstN]: Branch, perBiteNMm: number): ElasticLine => ({
    biteMm,
    firstN,
    leftN: forceLeft * firstN,
    perBiteNMm: biteMm > 0 ? perBiteNMm : 0,
  });
  const [biteMm, bodyMm] = [studBiteMm(contact, openingMm), bodyBiteMm(contact, openingMm)];
  const perBiteNMm = (contact.studForceN / contact.embeddingLengthMm) * areaShare(contact, biteMm);
  const studs = line(biteMm, studsFirst(contact, biteMm), perBiteNMm);
  const body = line(bodyMm, bodyFirst(contact, bodyMm), contact.bodyStiffnessNMm);
  return { openingMm, stiffnessNMm: (studs.perBiteNMm + body.perBiteNMm) / 2, studs, body };
}

/** Along the elastic line from where the contact stands, further in as steeply as first loading, and never above that. */
function again(first: Branch, { biteMm, firstN, leftN, perBiteNMm }: ElasticLine, nowMm: number): Branch {
  const line = perBiteNMm * (nowMm - biteMm);
  const [grown, perBite] =
    nowMm > biteMm && first[0] - firstN > line ? [first[0] - firstN, first[1]] : [line, perBiteNMm];
  const force = leftN + grown;
  if (force >= first[0]) return first;
  return force > 0 ? [force, perBite] : NOTHING;
}

/**
 * Force on a wall at an opening.
 * @param seated the same contact as it has stood since it was seated; undefined in a fresh slot.
 */
export function contactForce(contact: Contact, openingMm: number, seated?: Seated): ContactState {
  const [bite, bodyBite] = [studBiteMm(contact, openingMm), bodyBiteMm(contact, openingMm)];
  let studs = studsFirst(contact, bite);
  let body = bodyFirst(contact, bodyBite);
  if (seated) {
    studs = again(studs, seated.studs, bite);
    body = again(body, seated.body, bodyBite);
  }
  return { forceN: studs[0] + body[0], stiffnessNMm: (studs[1] + body[1]) / 2 };
}

/** No less than −dF/dΔ at any opening, N/mm. */
export function steepestNMm(contact: Contact): number {
  const { studForceN, embeddingLengthMm, studHeightMm, studShape, bodyStiffnessNMm } = contact;
  // While the area grows the pressure is at most β/δ of the whole: what a growing area adds is at most m/H of that.
  const growing = studShape / Math.max(studHeightMm, embeddingLengthMm);
  return (studForceN * (growing + 1 / embeddingLengthMm) + bodyStiffnessNMm) / 2;
}

/** Pressure of the tang's body over the crushing strength of the wall, at most 1; 0 where the body does not touch. */
export function wallPressureShare(contact: Contact, openingMm: number): number {
  return Math.min(1, (contact.bodyStiffnessNMm * bodyBiteMm(contact, openingMm)) / contact.bodyLimitN);
}
