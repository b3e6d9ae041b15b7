import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flowGroups, type ZoneFlow } from '../../../src/engine/supply/flow-groups.ts';

const ZONES: readonly ZoneFlow[] = Object.freeze([
  { id: 'beds', flowLpm: 6 },
  { id: 'shrubs', flowLpm: 3 },
  { id: 'pots', flowLpm: 2 },
  { id: 'hedge', flowLpm: 4 },
]);

describe('zones that run together', () => {
  it('by hand: 6, 4, 3, 2 L/min on 9 L/min are 6+3 and 4+2', () => {
    expect(flowGroups(ZONES, 9)).toEqual({
      groups: [
        { ids: ['beds', 'shrubs'], flowLpm: 9 },
        { ids: ['hedge', 'pots'], flowLpm: 6 },
      ],
      tooGreat: [],
    });
  });

  it('a zone that is more than the source alone is named and in no group', () => {
    const { groups, tooGreat } = flowGroups(ZONES, 5);
    expect(tooGreat).toEqual(['beds']);
    expect(groups.flatMap(({ ids }) => ids).toSorted()).toEqual(['hedge', 'pots', 'shrubs']);
  });

  it('equal zones stay in the order given', () => {
    const equal = ['a', 'b', 'c'].map((id) => ({ id, flowLpm: 5 }));
    expect(flowGroups(equal, 10).groups.map(({ ids }) => ids)).toEqual([['a', 'b'], ['c']]);
  });

  it('flows that fill the source exactly fit in spite of rounding (0.1 + 0.2 on 0.3)', () => {
    const zones = [
      { id: 'a', flowLpm: 0.1 },
      { id: 'b', flowLpm: 0.2 },
    ];
    expect(flowGroups(zones, 0.3).groups).toHaveLength(1);
  });

  it('no zones: no groups; no source: everything is too great', () => {
    expect(flowGroups([], 10)).toEqual({ groups: [], tooGreat: [] });
    expect(flowGroups(ZONES, 0).tooGreat).toEqual(['beds', 'shrubs', 'pots', 'hedge']);
  });

  it('any zones: each once, no group above the source, at most 11/9 of the fewest and two thirds of one (Dosa 2007)', () => {
    const anyZones = fc.array(fc.integer({ min: 1, max: 130 }), { maxLength: 40 });
    fc.assert(
      fc.property(anyZones, (flows) => {
        const zones = Object.freeze(flows.map((flow, index) => ({ id: `zone ${index}`, flowLpm: flow / 10 })));
        const { groups, tooGreat } = flowGroups(zones, 10);
        expect([...groups.flatMap(({ ids }) => ids), ...tooGreat].toSorted()).toEqual(
          zones.map(({ id }) => id).toSorted(),
        );
        let carried = 0;
        for (const { ids, flowLpm } of groups) {
          const sum = zones.filter(({ id }) => ids.includes(id)).reduce((total, zone) => total + zone.flowLpm, 0);
          expect(flowLpm).toBeCloseTo(sum, 9);
          expect(flowLpm).toBeLessThanOrEqual(10 + 1e-6);
          carried += sum;
        }
        // No packing can do with fewer groups than this, nor with fewer than there are zones of more than half.
        const overHalf = zones.filter(({ flowLpm }) => flowLpm > 5 && flowLpm <= 10).length;
        const fewest = Math.max(Math.ceil(carried / 10 - 1e-9), overHalf);
        expect(groups.length).toBeLessThanOrEqual(Math.max(1, 2 * fewest));
        // Two groups can never both be half empty, or the second would have joined the first.
        expect(groups.filter(({ flowLpm }) => flowLpm <= 5).length).toBeLessThanOrEqual(1);
        expect(flowGroups(zones, 10)).toEqual({ groups, tooGreat });
      }),
    );
  });

  it('refuses a negative flow', () => {
    expect(() => flowGroups([{ id: 'beds', flowLpm: -1 }], 10)).toThrow(
      'The flow of zone beds (L/min) is -1; it must be 0 or more.',
    );
    expect(() => flowGroups([], Number.NaN)).toThrow('flow of the source (L/min) is NaN');
  });
});
