import { describe, expect, test } from 'vitest';
import { LANDSCAPE_ROOTS } from '../../../src/engine/plants/landscape-roots.data.ts';

describe('landscape roots', () => {
  // Depths in inches handed down in the trade: common practice, no source; from memory.
  test.each([
    ['annual-flowers', 6, 12, 0.3, 0.4],
    ['perennials-and-groundcover', 8, 12, 0.3, 0.4],
    ['shrubs', 12, 24, 0.5, 0.5],
    ['trees', 18, 36, 0.5, 0.5],
  ] as const)('%s: %d to %d in deep, %d to %d allowed (common practice)', (id, minIn, maxIn, minShare, maxShare) => {
    const row = LANDSCAPE_ROOTS.find((candidate) => candidate.id === id);
    expect(row?.rootDepthM.min).toBeCloseTo(minIn * 0.0254, 12);
    expect(row?.rootDepthM.max).toBeCloseTo(maxIn * 0.0254, 12);
    expect(row?.rootDepthUsedM).toBeCloseTo(((minIn + maxIn) / 2) * 0.0254, 12);
    expect(row?.allowedDepletion).toEqual({ min: minShare, max: maxShare });
    expect(row?.allowedDepletionUsed).toBeCloseTo((minShare + maxShare) / 2, 12);
    expect(row).toMatchObject({ fromMemory: true, source: 'common practice, no source; from memory' });
  });
});
