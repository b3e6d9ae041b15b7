import { describe, expect, it } from 'vitest';
import { ownNeedMm } from '../../../src/engine/mix/own-need.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { denseAndShrubs, denseBed, shrubLoops } from '../../support/dense-and-shrubs.ts';

function needOf(plan: Plan, plantingId: string): Float64Array {
  const { garden, weather, zones } = computeSeason(plan);
  const [season] = zones;
  const planting = season?.plantings.find((each) => each.planting.id === plantingId);
  if (season === undefined || planting === undefined) throw new Error('there is no such planting');
  return ownNeedMm({ zone: season.zone, site: garden.site, weather }, planting);
}

const withPlantings = (...plantings: Plan['zones'][number]['plantings']): Plan => {
  const plan = denseAndShrubs();
  return { ...plan, zones: plan.zones.map((zone) => ({ ...zone, plantings })) };
};

describe('ownNeedMm', () => {
  it('does not hang on the neighbours, on what is set by hand, or on a shut-off', () => {
    const alone = needOf({ ...withPlantings(shrubLoops), choices: {} }, 'shrubs');
    expect(needOf(denseAndShrubs(), 'shrubs')).toEqual(alone);
    expect(needOf(withPlantings(denseBed, { ...shrubLoops, shutOff: true }), 'shrubs')).toEqual(alone);
  });

  it('is what the plants use from week to week, without rain: 0.02 in a day', () => {
    // Three waterings to a thousandth of a minute, of 0.277 mm: to half a thousandth of a millimetre.
    for (const week of needOf(denseAndShrubs(), 'shrubs')) expect(week).toBeCloseTo(0.14 * 25.4, 3);
  });

  it('is nothing where no line brings water', () => {
    const none = [0, 0, 0, 0, 0];
    expect([...needOf(withPlantings(denseBed, { ...shrubLoops, lines: [] }), 'shrubs')]).toEqual(none);
  });
});
