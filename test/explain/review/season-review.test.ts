/** The season looked back on, against figures that are read off the season by hand. */
import { describe, expect, it } from 'vitest';
import { compareZone } from '../../../src/engine/mix/compare-zone.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { seasonReview } from '../../../src/explain/review/season-review.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';

const reviewOf = (plan: Plan) => seasonReview(plan, computeSeason(plan));

describe('a season in review', () => {
  it('has what was run beside what was planned', () => {
    const plain = reviewOf(oneBed()).zones[0];
    const lived = reviewOf(oneBed({ log: { runs: { beds: { '2027-06-07': 10 } } } })).zones[0];
    expect(plain?.plannedLitres).toBe(plain?.runLitres);
    expect(lived?.plannedLitres).toBeCloseTo(plain?.plannedLitres ?? 0, 9);
    expect(lived?.runLitres).not.toBeCloseTo(plain?.runLitres ?? 0, 0);
    // 120 sq ft; a square foot is 0.09290304 m2.
    expect(plain?.groundM2).toBeCloseTo(120 * 0.09290304, 9);
  });

  it('has what was needed at the meter, which is not the own need of its plantings', () => {
    const compared = (plan: Plan) => {
      const season = computeSeason(plan);
      const [zone = expect.unreachable()] = season.zones;
      const [bed = expect.unreachable()] = seasonReview(plan, season).zones;
      return {
        own: compareZone(season, bed.zone).plantings.reduce((sum, { neededLitres }) => sum + neededLitres, 0),
        atRoots: bed.neededLitres * zone.zone.efficiency,
        gets: zoneFigure(zone, 'litres', 1),
      };
    };
    const run = compared(oneBed());
    const closed = { '2027-06-14': { closed: true }, '2027-06-21': { closed: true } };
    const left = compared(oneBed({ choices: { beds: closed } }));
    // One planting, watered as it asks: what the meter needs is its own need and what is lost on the way.
    expect(run.atRoots).toBeGreaterThan(0.95 * run.own);
    expect(run.atRoots).toBeLessThan(1.1 * run.own);
    expect(left.gets).toBe(0);
    // Its own need counts a lack once, whoever closed the zone; the first closed week's lack is needed in the second again.
    expect(left.own).toBeCloseTo(run.own, 6);
    expect(left.atRoots).toBeGreaterThan(1.02 * run.atRoots);
  });

  it('adds up rain and compares it with the usual', () => {
    const plan = oneBed({ log: { days: { '2027-06-09': { rain: 1 } } } });
    const { rainMm, usualRainMm } = reviewOf(plan);
    // An inch in place of a Wednesday of June, whose month has 0.15 in.
    expect(rainMm - usualRainMm).toBeGreaterThan(24);
    expect(rainMm - usualRainMm).toBeLessThan(25.4);
    expect(reviewOf(oneBed()).rainMm).toBeCloseTo(reviewOf(oneBed()).usualRainMm, 9);
  });

  it('finds the worst weeks, and why', () => {
    const closed = { choices: { beds: { '2027-07-05': { closed: true }, '2027-07-12': { closed: true } } } };
    const { worstWeeks, shortDays, zones } = reviewOf(mixedGarden(closed));
    expect(worstWeeks[0]).toMatchObject({ zone: 'Beds', cause: 'closed' });
    // It is worst in the second of the two; the week after them found their dry soil, until it was watered.
    expect(worstWeeks).toMatchObject([
      { week: 14, since: 14 },
      { week: 15, cause: 'closed', since: 14 },
    ]);
    expect(worstWeeks.map(({ unmetLitres }) => unmetLitres)).toEqual(
      worstWeeks.map(({ unmetLitres }) => unmetLitres).toSorted((one, other) => other - one),
    );
    expect(shortDays).toBeGreaterThan(5);
    expect(shortDays).toBeLessThanOrEqual(zones.reduce((sum, zone) => sum + zone.shortDays, 0));
    const runs = { log: { runs: { beds: { '2027-07-05': 0, '2027-07-12': 0 } } }, choices: {} };
    expect(reviewOf(mixedGarden(runs)).worstWeeks[0]).toMatchObject({ zone: 'Beds', cause: 'ran-less' });
    const set = { choices: { beds: { '2027-07-05': { minutes: 0 }, '2027-07-12': { minutes: 0 } } } };
    expect(reviewOf(mixedGarden(set)).worstWeeks[0]).toMatchObject({ zone: 'Beds', cause: 'set-less' });
    const cut = { supply: { sources: [], cuts: [{ from: '2027-06-28', to: '2027-07-25', share: 0.9 }] }, choices: {} };
    expect(reviewOf(mixedGarden(cut)).worstWeeks[0]).toMatchObject({ cause: 'cut' });
  });

  it('lacks no more than the plants did', () => {
    const plan = mixedGarden({ choices: { beds: { '2027-07-05': { closed: true } } } });
    const season = computeSeason(plan);
    for (const { week, unmetLitres } of seasonReview(plan, season).worstWeeks) {
      const lacked = season.zones.reduce(
        (sum, zone) => sum + zoneFigure(zone, 'demandLitres', week) - zoneFigure(zone, 'usedLitres', week),
        0,
      );
      expect(unmetLitres).toBeCloseTo(lacked, 6);
    }
  });
});
