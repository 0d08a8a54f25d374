/** The minutes of the workshop: what is kept is read back, and nothing else is taken for one. */
import { describe, expect, it } from 'vitest';
import { readMinutes, writeMinutes } from '../../../src/state/answers/minutes.ts';
import { STANDARD_MINUTES } from '../../../src/verdict/what-to-measure.ts';

describe('minutes', () => {
  it('that differ from the standard are kept and read back; else nothing is kept', () => {
    const own = { ...STANDARD_MINUTES, kerf: 4, strip: 300 };
    expect(JSON.parse(writeMinutes(own))).toEqual({ kerf: 4, strip: 300 });
    expect(readMinutes(writeMinutes(own))).toEqual(own);
    expect(writeMinutes(STANDARD_MINUTES)).toBe('');
    expect(readMinutes(null)).toEqual(STANDARD_MINUTES);
  });

  it.each(['', '{', '7', 'null', '[5]', '{"kerf":0}', '{"kerf":2401}', '{"kerf":"9"}', '{"kerf":null}', '{"other":3}'])(
    'of %j are those of the standard',
    (text) => expect(readMinutes(text)).toEqual(STANDARD_MINUTES),
  );

  it('stay within a minute and a week, both counted', () => {
    expect(readMinutes('{"kerf":1,"lens":2400}')).toEqual({ ...STANDARD_MINUTES, kerf: 1, lens: 2400 });
  });
});
