/** Bad input of every kind, drawn by fast-check so that a failure shrinks to its least form and tells its seed. */
import fc from 'fast-check';

/** Texts that break programs which take text for something else. */
export const HOSTILE_TEXTS = [
  '',
  ' ',
  '\0',
  '\uFEFF',
  '\uD800',
  '<script>window.hacked = true</script>',
  '"><img src=x onerror="window.hacked = true">',
  'javascript:alert(1)',
  "'; DROP TABLE necks; --",
  '=HYPERLINK("http://elsewhere.invalid","x")',
  '\u202Egnp.kcen\u202C',
  'שלום neck مرحبا',
  '𝔫𝔢𝔠𝔨 🎸'.repeat(3),
  '__proto__',
  'constructor',
  'NaN',
  'Infinity',
  '-0',
  '1e400',
  '0x10',
  '1,5',
  '%00%ff',
  '../../etc/passwd',
  'a'.repeat(10_001),
] as const;

/** Values of the wrong kind, size or sign, as JSON can hold them. */
const HOSTILE_VALUES: readonly unknown[] = [
  null,
  true,
  false,
  0,
  -1,
  -1e-300,
  1e308,
  1.5,
  Number.MAX_SAFE_INTEGER,
  [],
  {},
  [[]],
  [null],
  { value: 1 },
  { length: 3 },
  Array.from({ length: 200 }, () => 1),
  ...HOSTILE_TEXTS,
];

export const hostileValue: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...HOSTILE_VALUES) },
  { weight: 1, arbitrary: fc.jsonValue() },
  { weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
);

export const hostileText: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...HOSTILE_TEXTS),
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.json(),
);

/** One cut, doubling, insertion or exchange of characters somewhere in a text. */
export function damaged(text: string): fc.Arbitrary<string> {
  const at = fc.nat({ max: Math.max(0, text.length - 1) });
  return fc.oneof(
    at.map((end) => text.slice(0, end)),
    at.map((start) => text.slice(start)),
    fc.tuple(at, fc.integer({ min: 1, max: 40 })).map(([from, many]) => text.slice(0, from) + text.slice(from + many)),
    fc.tuple(at, fc.integer({ min: 1, max: 40 })).map(([from, many]) => {
      return text.slice(0, from + many) + text.slice(from);
    }),
    fc.tuple(at, fc.string({ unit: 'binary', minLength: 1, maxLength: 4 })).map(([from, other]) => {
      return text.slice(0, from) + other + text.slice(from + other.length);
    }),
    fc
      .tuple(at, fc.constantFrom(...HOSTILE_TEXTS))
      .map(([from, other]) => text.slice(0, from) + other + text.slice(from)),
  );
}

type Path = readonly (string | number)[];

/** Every place in plain data, the whole of it first. */
function placesIn(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...path, key]))];
}

function withValueAt(value: unknown, path: Path, other: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return other;
  if (Array.isArray(value))
    return value.map((entry: unknown, i) => (String(i) === key ? withValueAt(entry, rest, other) : entry));
  return { ...(value as object), [key]: withValueAt((value as Record<string, unknown>)[key], rest, other) };
}

function withoutPlace(value: unknown, path: Path): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return undefined;
  if (Array.isArray(value)) {
    return rest.length === 0
      ? value.filter((_, i) => String(i) !== key)
      : value.map((entry: unknown, i) => (String(i) === key ? withoutPlace(entry, rest) : entry));
  }
  const entries = Object.entries(value as object);
  return Object.fromEntries(
    entries.flatMap(([name, inner]) =>
      name !== key ? [[name, inner]] : rest.length === 0 ? [] : [[name, withoutPlace(inner, rest)]],
    ),
  );
}

/** The same data with one to three places spoilt: another value, nothing, or one too many. */
export function spoilt(data: unknown): fc.Arbitrary<unknown> {
  const place = fc.constantFrom(...placesIn(data));
  const harm: fc.Arbitrary<(value: unknown) => unknown> = fc.oneof(
    {
      weight: 5,
      arbitrary: fc.tuple(place, hostileValue).map(
        ([path, other]) =>
          (value: unknown) =>
            withValueAt(value, path, other),
      ),
    },
    { weight: 1, arbitrary: place.map((path) => (value: unknown) => withoutPlace(value, path)) },
    {
      weight: 1,
      arbitrary: fc
        .tuple(place, fc.constantFrom('extra', '__proto__', 'constructor', 'toString', '0', ''), hostileValue)
        .map(
          ([path, key, other]) =>
            (value: unknown) =>
              withValueAt(value, [...path, key], other),
        ),
    },
  );
  return fc.array(harm, { minLength: 1, maxLength: 3 }).map((harms) =>
    harms.reduce<unknown>((value, apply) => {
      try {
        return apply(value);
      } catch {
        // An earlier harm has taken the place away.
        return value;
      }
    }, data),
  );
}
