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

  it('any zones: each once, no group above the source, never two groups that are half empty', () => {
    const anyZones = fc.array(fc.integer({ min: 1, max: 130 }), { maxLength: 40 });
    fc.assert(
      fc.property(anyZones, (flows) => {
        const zones = Object.freeze(flows.map((flow, index) => ({ id: `zone ${index}`, flowLpm: flow / 10 })));
        const { groups, tooGreat } = flowGroups(zones, 10);
        const placed = [...groups.flatMap(({ ids }) => ids), ...tooGreat];
        expect(placed.toSorted()).toEqual(zones.map(({ id }) => id).toSorted());
        for (const { ids, flowLpm } of groups) {
          const sum = zones.filter(({ id }) => ids.includes(id)).reduce((total, zone) => total + zone.flowLpm, 0);
          expect(flowLpm).toBeCloseTo(sum, 9);
          expect(flowLpm).toBeLessThanOrEqual(10 + 1e-6);
        }
        expect(groups.filter(({ flowLpm }) => flowLpm < 5).length).toBeLessThanOrEqual(1);
        expect(flowGroups(zones, 10)).toEqual({ groups, tooGreat });
      }),
    );
  });

  it('zones cut from k full groups need at most 11/9 k + 6/9 groups (first fit decreasing, Dosa 2007)', () => {
    const cuts = fc.array(fc.integer({ min: 1, max: 99 }), { maxLength: 5 });
    fc.assert(
      fc.property(fc.array(cuts, { minLength: 1, maxLength: 12 }), (full) => {
        const flows = full.flatMap((cutsOfGroup) => {
          const edges = [0, ...new Set(cutsOfGroup.toSorted((a, b) => a - b)), 100];
          return edges.slice(1).map((edge, index) => edge - (edges[index] as number));
        });
        const zones = Object.freeze(flows.map((flowLpm, index) => ({ id: `zone ${index}`, flowLpm })));
        const { groups } = flowGroups(zones, 100);
        expect(groups.length).toBeGreaterThanOrEqual(full.length);
        expect(groups.length).toBeLessThanOrEqual((11 * full.length + 6) / 9);
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
