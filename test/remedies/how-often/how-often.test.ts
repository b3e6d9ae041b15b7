import { describe, expect, it } from 'vitest';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { daysThatFit, proposedDays } from '../../../src/remedies/how-often/how-often.ts';
import { mixFigures } from '../../../src/remedies/mix/mix-figures.ts';
import { planOn } from '../../support/one-soil.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const shortDays = (plan: Plan) => mixFigures(computeSeason(plan), ['beds']).shortDays;

function proposed(plan: Plan) {
  const season = computeSeason(plan);
  return { season, fits: daysThatFit(season, 'beds'), proposal: proposedDays(plan, season, 'beds') };
}

describe('how often a bed should be watered', () => {
  // The days are worked by hand in oracle/days-a-week.test.ts.
  it.each([
    ['sand', [4, 7, 7, 7, 7, 7, 4], [true, true, true, true, true, true, true]],
    ['loam', [2, 3, 3, 4, 3, 3, 2], [false, false, false, true, false, false, false]],
    ['clay', [2, 3, 3, 3, 3, 3, 2], [false, false, false, false, false, false, false]],
  ] as const)('on %s, April to October, %s days a week', (soil, days, isTooSeldom) => {
    const { fits } = proposed(planOn(soil));
    expect(fits.map(({ daysAWeek }) => daysAWeek)).toEqual(days);
    expect(fits.map(({ isEnough }) => !isEnough)).toEqual(isTooSeldom);
  });

  // Watered on 2 days a week: each in time on 3, sand has water at hand for a day and a half.
  it.each(['sand', 'loam'] as const)(
    'on %s, with the proposed days no day is short that more days could cure',
    (soil) => {
      const plan = planOn(soil, Object.fromEntries([4, 5, 6, 7, 8, 9, 10].map((month) => [month, 2])));
      const { proposal = expect.unreachable() } = proposed(plan);
      const mended = applyEdit(plan, proposal.edit);
      const daily = {
        ...mended,
        zones: mended.zones.map((zone) => ({ ...zone, wateringDays: 7, wateringDaysByMonth: {} })),
      };
      expect(shortDays(mended)).toBe(shortDays(daily));
      expect(proposal.shortDaysBefore).toBe(shortDays(plan));
      expect(proposal.shortDaysAfter).toBe(shortDays(mended));
      if (soil === 'sand') expect(proposal.shortDaysBefore).toBeGreaterThan(proposal.shortDaysAfter);
      expect(proposed(mended).proposal).toBeUndefined();
    },
  );

  it('proposes nothing where the days are enough, and for a zone that is not there', () => {
    expect(proposed(planOn('clay')).proposal).toBeUndefined();
    const season = computeSeason(mixedGarden());
    expect(daysThatFit(season, 'nowhere')).toEqual([]);
    expect(proposedDays(mixedGarden(), season, 'nowhere')).toBeUndefined();
  });

  it('leaves months alone whose own days are enough, and takes those that lie side by side for what they are', () => {
    const [zone = expect.unreachable()] = planOn('clay').zones;
    // Three days running, then none for five: clay lasts three.
    const plan = {
      ...planOn('clay'),
      zones: [{ ...zone, wateringDays: ['mon', 'tue', 'wed'] as ('mon' | 'tue' | 'wed')[] }],
    };
    const { proposal = expect.unreachable() } = proposed(plan);
    expect(applyEdit(plan, proposal.edit).zones[0]?.wateringDaysByMonth).toMatchObject({ 5: 3, 7: 3 });
    const inJuly = { ...plan, zones: [{ ...zone, wateringDays: 3, wateringDaysByMonth: { 7: 1 } }] };
    const july = proposed(inJuly).proposal ?? expect.unreachable();
    expect(applyEdit(inJuly, july.edit).zones[0]?.wateringDaysByMonth).toEqual({ 7: 3 });
  });
});
