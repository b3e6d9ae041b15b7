import { describe, expect, it } from 'vitest';
import { TONE_STARTS_MM, TONES, toneOf } from '../../src/sheet/tone.ts';

describe('toneOf', () => {
  it('leaves a week without water on paper', () => {
    expect(toneOf(0)).toBe(0);
    expect(toneOf(Number.NaN)).toBe(0);
  });

  it('begins each ground at its depth and never grows paler with more water', () => {
    for (const [tone, start] of TONE_STARTS_MM.entries()) expect(toneOf(start)).toBe(tone);
    const depths = Array.from({ length: 600 }, (_, tenth) => toneOf(tenth / 10));
    expect(depths).toEqual([...depths].sort((left, right) => left - right));
    expect(new Set(depths).size).toBe(TONES);
  });

  it('ends with the deepest ground, however much water', () => {
    expect(toneOf(1000)).toBe(TONES - 1);
    expect(toneOf(Number.POSITIVE_INFINITY)).toBe(TONES - 1);
  });
});
