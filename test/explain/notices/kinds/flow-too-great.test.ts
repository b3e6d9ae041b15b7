import { describe, expect, it } from 'vitest';
import type { SupplySource } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

const supplied = (...sources: readonly Partial<SupplySource>[]) => ({
  supply: {
    sources: sources.map((source) => ({ from: FIRST_DAY, name: 'Source', ...source })),
    windowWeekdays: 127,
    windowHoursPerDay: 24,
  },
});

/** Zones of 60 L/h each: 1 L/min. They water on the fourth and the seventh day unless told otherwise. */
function season(masks: readonly number[], ...sources: readonly Partial<SupplySource>[]) {
  const zones = masks.map((wateringDays, index) =>
    plainZone({ id: `zone-${index}`, wateringDays, plantings: [plainPlanting({ id: `bed-${index}` })] }),
  );
  return runSeason(plainGarden(zones, supplied(...sources)));
}

const USUAL = 0b1001000;

describe('a zone that asks for more than its source gives', () => {
  it('is told, with how much', () => {
    expect(noticesOfKind(season([USUAL], { flowLpm: 0.75 }), 'flow-too-great')).toMatchObject([
      {
        kind: 'flow-too-great',
        severity: 'warning',
        remedy: 'split-zone',
        zoneId: 'zone-0',
        firstWeek: 0,
        lastWeek: 9,
        figures: { flowLpm: expect.closeTo(1, 9), sourceLpm: 0.75, excessLpm: expect.closeTo(0.25, 9) },
      },
    ]);
  });

  it('is told for the weeks of that source alone', () => {
    const changed = season([USUAL], { flowLpm: 0.75 }, { from: FIRST_DAY + 14, flowLpm: 2 });
    expect(noticesOfKind(changed, 'flow-too-great')).toMatchObject([{ weeks: [0, 1] }]);
  });

  it.each([
    ['just as much', { flowLpm: 1 }],
    ['a flow that is not known', {}],
  ])('is not told of %s', (_name, source) => {
    expect(noticesOfKind(season([USUAL], source), 'flow-too-great')).toEqual([]);
  });
});

describe('zones that cannot run at once', () => {
  it('are told for the garden, in groups that can', () => {
    expect(noticesOfKind(season([USUAL, USUAL, USUAL], { flowLpm: 2.5 }), 'flow-together')).toMatchObject([
      {
        kind: 'flow-together',
        severity: 'note',
        remedy: 'stagger',
        groups: [['zone-0', 'zone-1'], ['zone-2']],
        firstWeek: 0,
        lastWeek: 9,
        figures: { flowLpm: expect.closeTo(3, 9), sourceLpm: 2.5, days: 20, groups: 2 },
      },
    ]);
  });

  it('are not told where they water on different days, or fit together', () => {
    expect(noticesOfKind(season([0b0001001, 0b0110000, 0b1000000], { flowLpm: 1.5 }), 'flow-together')).toEqual([]);
    expect(noticesOfKind(season([USUAL, USUAL], { flowLpm: 2 }), 'flow-together')).toEqual([]);
  });

  it('are not told of a zone that asks too much by itself: that is another notice', () => {
    expect(noticesOfKind(season([USUAL, USUAL], { flowLpm: 0.5 }), 'flow-together')).toEqual([]);
  });
});
