import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstFitDecreasing } from '../../../src/engine/supply/first-fit-decreasing.ts';

describe('first fit decreasing', () => {
  it.each([
    ['the greatest opens the first group, the next that fits joins it', [2, 7, 5, 3], [1, 0, 1, 0]],
    ['equal flows go in the order given', [5, 5, 5], [0, 0, 1]],
    ['exactly full is within', [4, 6, 10], [1, 1, 0]],
    ['what is above the source is in no group', [11, 4], [-1, 0]],
    ['no zone, no group', [], []],
  ])('on 10 L/min: %s', (_name, flows, groups) => {
    expect([...firstFitDecreasing(flows, 10)]).toEqual(groups);
  });

  it('any flows: no group above the source, none opened while an earlier one had room, none left out that fits', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 120 })), (flows) => {
        const groups = firstFitDecreasing(Object.freeze(flows), 100);
        const sums: number[] = [];
        for (const index of flows.map((_, zone) => zone).sort((a, b) => (flows[b] ?? 0) - (flows[a] ?? 0))) {
          const group = groups[index] as number;
          const flow = flows[index] as number;
          expect(group < 0).toBe(flow > 100);
          if (group < 0) continue;
          for (const earlier of sums.slice(0, group)) expect(earlier + flow).toBeGreaterThan(100);
          sums[group] = (sums[group] ?? 0) + flow;
          expect(sums[group]).toBeLessThanOrEqual(100);
        }
      }),
    );
  });
});
