import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { ZONE_FIELDS as Z } from '../../../src/engine/season/season.ts';
import { minutesOnDay } from '../../../src/engine/season/zone-week.ts';
import { zoneFlows } from '../../../src/engine/supply/zone-flows.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { arbitraryGarden } from '../../support/arbitrary-garden.ts';
import { mixedGarden } from '../../support/small-plans.ts';

describe('the flow of a zone by day', () => {
  it('times its minutes is the week’s gross water, for any garden', () => {
    let watered = 0;
    fc.assert(
      fc.property(arbitraryGarden({ mostWeeks: 8 }), (garden) => {
        for (const zone of runSeason(garden).zones) {
          const flowLpm = zoneFlows(zone, garden.span.firstDay);
          for (let week = 0; week < zone.weeks; week += 1) {
            const litres = zone.figures.at(Z.litres, week);
            const days = [0, 1, 2, 3, 4, 5, 6].map((day) => 7 * week + day);
            const sum = days.reduce((total, day) => total + minutesOnDay(zone, day) * (flowLpm[day] as number), 0);
            expect(sum).toBeCloseTo(litres, 6);
            if (litres > 0) watered += 1;
          }
        }
      }),
      { numRuns: 150 },
    );
    expect(watered).toBeGreaterThan(100);
  });

  it('is that of the open lines alone: a shut-off that is open on one of three days adds its own on that day', () => {
    const plan = mixedGarden();
    const season = computeSeason(plan);
    const beds = season.zones[0];
    if (beds === undefined) return expect.unreachable('the garden has beds');
    // The week of 12 July: the shrubs are open on one day by hand; 80 x 0.9 gph, and 9 loops of 6 x 0.6 gph.
    const flow = [...zoneFlows(beds, season.garden.span.firstDay).slice(7 * 14, 7 * 15)];
    const gpm = flow.filter((each) => each > 0).map((each) => each / 3.785411784);
    expect(gpm).toHaveLength(3);
    expect(gpm.filter((each) => Math.abs(each - (80 * 0.9) / 60) < 1e-9)).toHaveLength(2);
    expect(Math.max(...gpm)).toBeCloseTo((80 * 0.9 + 54 * 0.6) / 60, 9);
  });
});
