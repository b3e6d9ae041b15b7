/** A season in which no water may run on the zone's days for seven weeks. */
import { expect, it } from 'vitest';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed, shrubs, zone } from '../../support/small-plans.ts';

/** Deep roots under lines that wet 0.7 of the ground, on Mondays; from June 7 to July 25 water runs on Tuesdays alone. */
function bannedGarden(): Plan {
  const plan = oneBed();
  const eto = [1.2, 1.6, 2.4, 3, 3.7, 4.5, 4.9, 4.7, 4, 2.8, 1.4, 0.8];
  const plants = shrubs({
    need: { kind: 'class', class: 'moderate' },
    shutOff: false,
    rootDepth: 79,
    wettedShare: 0.7,
    extent: { kind: 'area', area: 430 },
    lines: [{ kind: 'dripline', flow: 0.5, spacing: 12, layout: { kind: 'rows', rows: 4, length: 33 } }],
  });
  return {
    ...plan,
    season: { firstDay: '2027-04-05', weeks: 30 },
    site: {
      ...plan.site,
      soil: 'clay-loam',
      rain: { method: 'fraction', fraction: 0.6 },
      climate: { ...plan.site.climate, eto, rain: eto.map(() => 1.6) },
    },
    supply: { sources: [], restrictions: [{ from: '2027-06-07', to: '2027-07-25', weekdays: ['tue'] }] },
    zones: [zone({ wateringDays: ['mon'], plantings: [plants] })],
    log: { weeks: { '2027-05-03': { rain: 0 } } },
  };
}

/** The last week before the ban. */
const LAST_WEEK = 8;

it('looks ahead over all of the ban, however little of the season is computed anew', () => {
  const plan = bannedGarden();
  const [fresh] = computeSeason(plan).zones;
  const [after] = computeSeason(
    plan,
    computeSeason({ ...plan, log: { weeks: { '2027-05-03': { rain: 0.4 } } } }),
  ).zones;
  if (fresh === undefined || after === undefined) throw new Error('the garden has no zone');
  expect(zoneFigure(fresh, 'minutes', LAST_WEEK)).toBeGreaterThan(0);
  expect(zoneFigure(after, 'minutes', LAST_WEEK)).toBe(zoneFigure(fresh, 'minutes', LAST_WEEK));
});
