import { describe, expect, it } from 'vitest';
import type { GardenSupply, GardenZone } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

/** Zones that run 110 min on ten and 109 min on ten of 20 watering days (`plain-garden.ts`), on 1 L/min each. */
function season(count: number, flowLpm: number, window: Partial<GardenSupply> = {}, zone: Partial<GardenZone> = {}) {
  const zones = Array.from({ length: count }, (_, index) =>
    plainZone({ id: `zone-${index}`, plantings: [plainPlanting({ id: `bed-${index}` })], ...zone }),
  );
  const sources = [{ from: FIRST_DAY, name: 'Main', flowLpm }];
  return runSeason(plainGarden(zones, { supply: { sources, windowWeekdays: 127, windowHoursPerDay: 3, ...window } }));
}

describe('a window that is too short', () => {
  it('is told for the garden: two zones of 110 min one after another in 180 min', () => {
    expect(noticesOfKind(season(2, 1), 'window-too-short')).toMatchObject([
      {
        kind: 'window-too-short',
        severity: 'warning',
        remedy: 'more-days',
        firstWeek: 0,
        lastWeek: 9,
        figures: {
          minutesNeeded: 220,
          windowMinutes: 180,
          minutesOver: 40,
          days: 20,
          minutesOverInAll: 780,
          minutesInAll: 4380,
        },
      },
    ]);
  });

  it('is not told where they run at once, or the window holds both', () => {
    expect(noticesOfKind(season(2, 2), 'window-too-short')).toEqual([]);
    expect(noticesOfKind(season(2, 1, { windowHoursPerDay: 220 / 60 }), 'window-too-short')).toEqual([]);
  });

  it('leaves a zone that is too long by itself to its own notice', () => {
    const alone = season(1, 1, { windowHoursPerDay: 1 });
    expect(noticesOfKind(alone, 'window-too-short')).toEqual([]);
    expect(noticesOfKind(alone, 'too-long')).toHaveLength(1);
  });

  it('counts the pauses that a soil needs: six runs of 20 min at most on clay outlast three hours', () => {
    const soil = { ...plainZone().soil, texture: 'clay' } as const;
    const [notice] = noticesOfKind(
      season(1, 1, {}, { longestCycleMinutes: 20, startsADay: 6, soil }),
      'window-too-short',
    );
    // 109 min in 6 cycles of 18 min; 5 pauses of at least half an hour.
    expect(notice?.figures.minutesNeeded).toBeGreaterThanOrEqual(108 + 5 * 30);
    // Loam takes 6 mm/h in as it comes, and needs none.
    expect(noticesOfKind(season(1, 1, {}, { longestCycleMinutes: 20, startsADay: 6 }), 'window-too-short')).toEqual([]);
  });

  it('is told of a watering day on which no water may run', () => {
    // Watering days: Thursday and Sunday; water may run from Monday to Saturday.
    const [notice] = noticesOfKind(season(1, 1, { windowWeekdays: 0b0111111 }), 'window-too-short');
    expect(notice?.figures).toMatchObject({ windowMinutes: 0, minutesOver: 110, days: 10 });
  });

  it('is a danger beyond a whole day', () => {
    expect(noticesOfKind(season(14, 1, { windowHoursPerDay: 24 }), 'window-too-short')).toMatchObject([
      { severity: 'danger' },
    ]);
  });

  it('is not told where nothing is known of the source, not even hours', () => {
    expect(noticesOfKind(season(14, Number.NaN, { windowHoursPerDay: 24, sources: [] }), 'window-too-short')).toEqual(
      [],
    );
    expect(noticesOfKind(season(2, Number.NaN, { sources: [] }), 'window-too-short')).toHaveLength(1);
  });
});
