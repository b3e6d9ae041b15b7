import { describe, expect, it } from 'vitest';
import { TONES, toneLimitsMm, toneOf } from '../../src/look/tones.ts';

const MM_PER_INCH = 25.4;

describe.each(['us', 'metric'] as const)('toneOf, %s', (units) => {
  it('leaves a week without water blank', () => {
    expect(toneOf(0, units)).toBe(0);
    expect(toneOf(Number.NaN, units)).toBe(0);
  });

  it('begins each tone beyond its limit and never grows paler with more water', () => {
    for (const [tone, limit] of toneLimitsMm(units).entries()) {
      if (tone === 0) continue;
      expect(toneOf(limit, units)).toBe(tone - 1);
      expect(toneOf(limit + 0.001, units)).toBe(tone);
    }
    const depths = Array.from({ length: 600 }, (_, tenth) => toneOf(tenth / 10, units));
    expect(depths).toEqual([...depths].sort((left, right) => left - right));
    expect(new Set(depths).size).toBe(TONES);
  });

  it('ends with the deepest tone, however much water', () => {
    expect(toneOf(1000, units)).toBe(TONES - 1);
    expect(toneOf(Number.POSITIVE_INFINITY, units)).toBe(TONES - 1);
  });
});

it('has round limits in the unit of the plan', () => {
  expect(toneLimitsMm('us').slice(2)).toEqual([0.25, 0.5, 1, 1.5].map((inches) => inches * MM_PER_INCH));
  expect(toneLimitsMm('metric').slice(2)).toEqual([5, 10, 25, 40]);
});
