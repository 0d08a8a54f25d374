import { describe, expect, it } from 'vitest';
import { driversSentence } from '../../src/pages/workshop/readouts/figures.ts';

describe('what makes most of a band', () => {
  const drivers = [
    { input: 'bite', share: 0.744 },
    { input: 'neckModulus', share: 0.12 },
  ] as const;

  it('is a sentence of the inputs and their shares', () => {
    expect(driversSentence(drivers)).toContain('how hard the studs bite 74\u00a0%, stiffness of the neck 12\u00a0%');
  });

  it('is nothing where the band has no width: no sentence that breaks off', () => {
    expect(driversSentence([])).toBe('');
    expect(driversSentence(undefined)).not.toContain('undefined');
  });
});
