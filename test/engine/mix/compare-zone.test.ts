import { describe, expect, it } from 'vitest';
import { compareZone, rulesOf } from '../../../src/engine/mix/compare-zone.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { fromSi } from '../../../src/engine/units.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { law } from '../../laws/law.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { denseAndShrubs } from '../../support/dense-and-shrubs.ts';

const inches = (mm: Iterable<number>) => [...mm].map((depth) => fromSi(depth, 'depth', 'us'));
const gallons = (litres: number) => fromSi(litres, 'volume', 'us');
const expectAll = (actual: readonly number[], expected: readonly number[], digits = 9) => {
  expect(actual).toHaveLength(expected.length);
  for (const [index, value] of expected.entries()) expect(actual[index], `index ${index}`).toBeCloseTo(value, digits);
};

/** A planting's own need is that of a timer of a thousandth of a minute: so many digits of it, in inches, are exact. */
const FINE_DIGITS = 3;

/** A US gallon is 231 in³, so one on a square foot is 231/144 in deep. */
const IN_PER_GALLON_PER_FT2 = 231 / 144;

/**
 * By hand. Efficiency 0.8; 0.2 in of reference ET a day; watered on days 3, 5 and 7, filled up.
 *
 * Dense bed: 4 rows x 25 ft / 0.5 ft = 200 emitters x 0.6 gph = 120 gph on 100 ft²: 1.2 x 231/144 = 1.925 in/h gross, 1.54 in/h net.
 * It uses 0.1 in a day. From full, 0.7 in must come in three equal waterings (0.2333 in; days 4 to 7 ask for
 * 0.4 / 2 = 0.2 in, days 6 and 7 for 0.2 / 1 in, which is less): 0.2333 / 1.54 h = 9.09 min, 9 on a timer of whole minutes.
 *
 * Shrubs: a loop is pi x 3 ft = 9.42 ft long and holds 6 emitters at 18 in: 54 x 0.6 = 32.4 gph on 9 x pi x 9 / 4 = 63.617 ft²:
 * 0.8170 in/h gross, 0.6536 in/h net. They use 0.02 in a day, 0.14 in a week.
 *
 * Minutes a day: week 1: 9 computed; week 2: 60 / 3 = 20 and week 3: 15 / 3 = 5 by hand; week 4: closed.
 * Week 1 brings the bed 3 x 9/60 x 1.54 = 0.693 in of its 0.7, week 3 3 x 5/60 x 1.54 = 0.385 in: it ends 0.315 in down; week 4 makes
 * that 1.015 in. Week 5: 1.715 in in three waterings: 0.571667 / 1.54 h = 22.27 min, so 22.
 */
const MINUTES = [9, 20, 5, 0, 22];
const BED_NET = (1.2 * IN_PER_GALLON_PER_FT2 * 0.8) / 60;
const SHRUB_AREA_FT2 = (9 * Math.PI * 9) / 4;
const SHRUBS_NET = ((32.4 / SHRUB_AREA_FT2) * IN_PER_GALLON_PER_FT2 * 0.8) / 60;

describe('compareZone of a dense bed with emitters every 6 in and shrubs with one loop at 18 in, by hand', () => {
  const [bed, shrubs] = compareZone(computeSeason(denseAndShrubs()), 'border').plantings;
  if (bed === undefined || shrubs === undefined) throw new Error('two plantings were expected');

  it('says how fast each line lays water on', () => {
    expect(fromSi(bed.rateMmPerHour, 'rate', 'us')).toBeCloseTo(1.925, 9);
    expect(fromSi(shrubs.rateMmPerHour, 'rate', 'us')).toBeCloseTo((32.4 / SHRUB_AREA_FT2) * IN_PER_GALLON_PER_FT2, 9);
    expect(fromSi(shrubs.rateMmPerHour, 'rate', 'us')).toBeCloseTo(0.817, 3);
  });

  it('gives each planting the same minutes, whatever it needs', () => {
    expectAll(
      inches(bed.receivedMm),
      MINUTES.map((minutes) => 3 * minutes * BED_NET),
    );
    expectAll(
      inches(shrubs.receivedMm),
      MINUTES.map((minutes) => 3 * minutes * SHRUBS_NET),
    );
  });

  it('measures that against what each would be given alone, with nothing set by hand', () => {
    expectAll(inches(bed.neededMm), [0.7, 0.7, 0.7, 0.7, 0.7], FINE_DIGITS);
    expectAll(inches(shrubs.neededMm), [0.14, 0.14, 0.14, 0.14, 0.14], FINE_DIGITS);
    expect(bed.ratio).toBeCloseTo((3 * 56 * BED_NET) / 3.5, FINE_DIGITS);
    expect(shrubs.ratio).toBeCloseTo((3 * 56 * SHRUBS_NET) / 0.7, FINE_DIGITS);
  });

  it('counts what went below the roots', () => {
    // Bed: week 2 brings 1.54 in, 0.833 in more than the 0.707 in that were used since it was full. In all other weeks less came than was used.
    expectAll(inches(bed.drainedMm), [0, 0.833, 0, 0, 0]);
    // The shrubs are full at the end of weeks 1 to 3: on days 3, 5, 7 they have used 0.06, 0.04, 0.04 in before each watering; 0.14 in
    // stay each week. In week 5 the 0.14 in of the closed week stay too.
    const came = MINUTES.map((minutes) => 3 * minutes * SHRUBS_NET);
    expectAll(
      inches(shrubs.drainedMm),
      came.map((depth, week) => (week === 3 ? 0 : depth - (week === 4 ? 0.28 : 0.14))),
    );
    expect(shrubs.shortDayCount + bed.shortDayCount).toBe(0);
  });

  it('adds up to what the meter shows: 120 and 32.4 gph for 168 minutes', () => {
    const comparison = compareZone(computeSeason(denseAndShrubs()), 'border');
    expect(gallons(comparison.litres)).toBeCloseTo((168 / 60) * 152.4, 9);
    expect(gallons(bed.receivedLitres)).toBeCloseTo((168 / 60) * 120 * 0.8, 9);
    expect(gallons(shrubs.receivedLitres)).toBeCloseTo((168 / 60) * 32.4 * 0.8, 9);
    expect(comparison.drainedLitres).toBeCloseTo(bed.drainedLitres + shrubs.drainedLitres, 9);
  });
});

describe('compareZone under another rule', () => {
  const season = computeSeason(denseAndShrubs({ choices: {} }));

  it('lets the named planting set the minutes: 0.14 in in three waterings of 0.6536 in/h are 4.28 min, so 4', () => {
    const { plantings } = compareZone(season, 'border', { kind: 'planting', plantingId: 'shrubs' });
    expect(inches(plantings[1]?.receivedMm ?? [])[0]).toBeCloseTo(12 * SHRUBS_NET, 9);
    expect(inches(plantings[0]?.receivedMm ?? [])[0]).toBeCloseTo(12 * BED_NET, 9);
    expect(plantings[0]?.ratio).toBeLessThan(0.6);
  });

  it('weights by the flow that each has: (9.09 x 120 + 4.28 x 32.4) / 152.4 = 8.07 min, so 8', () => {
    const { plantings } = compareZone(season, 'border', { kind: 'area-weighted' });
    expect(inches(plantings[0]?.receivedMm ?? [])[0]).toBeCloseTo(24 * BED_NET, 9);
  });

  it('is the season itself where the rule is the zone’s own', () => {
    expect(compareZone(season, 'border', { kind: 'thirstiest' })).toEqual(compareZone(season, 'border'));
  });

  it('knows every rule the zone can have', () => {
    const [zone] = season.zones;
    expect(zone && rulesOf(zone)).toEqual([
      { kind: 'thirstiest' },
      { kind: 'area-weighted' },
      { kind: 'planting', plantingId: 'dense' },
      { kind: 'planting', plantingId: 'shrubs' },
    ]);
  });

  it('throws a RangeError for a zone that is not there', () => {
    expect(() => compareZone(season, 'none')).toThrow(RangeError);
  });
});

describe('compareZone of any zone', () => {
  law('received in all is what was delivered: the season’s litres, less what the efficiency loses', {
    on: arbitraryPlan({ mostZones: 3, mostPlantings: 4, mostWeeks: 20 }),
    runs: 80,
    holds: (plan) => {
      const season = computeSeason(plan);
      for (const { zone, weeks, ...rest } of season.zones) {
        const comparison = compareZone(season, zone.id);
        const received = comparison.plantings.reduce((sum, { receivedLitres }) => sum + receivedLitres, 0);
        let delivered = 0;
        for (let week = 0; week < weeks; week++) delivered += zoneFigure({ zone, weeks, ...rest }, 'litres', week);
        // To the last bit: next to a half another sum is another gallon.
        expect(comparison.litres).toBe(delivered);
        const efficiencies = zone.plantings.flatMap(({ flows }) => flows.map(({ efficiency }) => efficiency));
        expect(received).toBeGreaterThanOrEqual(delivered * Math.min(1, ...efficiencies) - 1e-6);
        expect(received).toBeLessThanOrEqual(delivered * Math.max(0, ...efficiencies) + 1e-6);
        for (const planting of comparison.plantings) expectPlausible(planting);
      }
    },
  });
});

function expectPlausible({ receivedMm, drainedMm, ratio }: ReturnType<typeof compareZone>['plantings'][number]): void {
  expect(ratio).toBeGreaterThanOrEqual(0);
  for (const [week, drained] of drainedMm.entries()) {
    expect(drained).toBeLessThanOrEqual((receivedMm[week] as number) + 1e-9);
  }
}
