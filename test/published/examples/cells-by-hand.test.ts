/**
 * Two cells worked by hand with a pocket calculator, from the plan to the gallons; the published relations they use stand beside them.
 *
 * The ground of all of them: 0.2 in of reference ET every day and no rain (invented, so that the figures are whole); a plant factor of 0.5, so
 * 0.1 in a day are used (the landscape coefficient method); roots of 24 in in loam, 1.86 in/ft x 2 ft = 3.72 in, of which half, 1.86 in, are
 * readily there: nothing is short. It is watered every morning and filled up, at an efficiency of 0.8. A gallon is 231 in3.
 *
 * **Plain emitters at low pressure.** 38.5 ft2 x 144 in2 x 0.1 in = 554.4 in3 = 2.40 gal a day; / 0.8 = 3.00 gal. 100 plain emitters of 0.6 gph
 * make 60 gph at the 20 psi that is printed for (common practice). At 5 psi, with an exponent of 0.5 (Keller and Karmeli 1975, from memory),
 * each gives 0.6 x (5/20)^0.5 = 0.3 gph: 30 gph, 0.5 gal a minute. Minutes: 3.00 / 0.5 = 6.0 a day, 42.0 a week; gallons: 21.0 a week. By
 * the label they would be 3.0 minutes, and the bed would get half of what it uses.
 *
 * **A week with a cut.** Two beds of 77 ft2, alike but for their place in line: 77 x 144 x
 * 0.1 = 1,108.8 in3 = 4.80 gal a day; / 0.8 = 6.00 gal, each at 60 gph = 1 gal a minute: 6.0 minutes a day, 42.0 gal a week, 84.0 gal for both.
 * A cut of 30 % takes 25.2 gal. All of it comes off the bed last in order: 25.2 / 42.0 = 0.6 of its water; 0.4 x 6.0 = 2.4 minutes a day are left,
 * 16.8 gal. The first keeps 6.0 minutes and 42.0 gal. The second uses 0.7 in and gets 7 x 2.4 x 0.8 gal = 13.44 gal x 231 / 11,088 in2 = 0.28 in,
 * so it ends 0.42 in drier than it began, full (a day's water counts against that day's use, FAO-56 eq. 85): less than the 1.86 in that are readily there.
 */
import { describe, expect, it } from 'vitest';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { PlanSupply, PlanZone } from '../../../src/plan/schema/plan-schema.ts';
import { denseAndShrubs } from '../../support/dense-and-shrubs.ts';

const L_PER_GALLON = 3.785411784;
const MM_PER_INCH = 25.4;
/** The fourth week begins on June 28, 2027: the beds are in the same state from their second morning on. */
const WEEK = 3;

/** A bed of plain emitters of 0.6 gph, 100 of them a foot apart in 5 rows; wide tubing, so that nothing is lost on the way. */
function bed(id: string, area: number): PlanZone {
  return {
    id,
    name: id,
    wateringDays: 7,
    timerStepMinutes: 0.1,
    longestCycleMinutes: 1440,
    application: { kind: 'efficiency', value: 0.8 },
    plantings: [
      {
        id: `${id}-plants`,
        name: id,
        need: { kind: 'class', class: 'moderate', factor: 0.5 },
        extent: { kind: 'area', area },
        rootDepth: 24,
        allowedDepletion: 0.5,
        watering: 'keep',
        target: 0,
        lines: [
          {
            kind: 'dripline',
            flow: 0.6,
            spacing: 12,
            layout: { kind: 'rows', rows: 5, length: 20 },
            insideDiameter: 1,
            emitter: { kind: 'plain', exponent: 0.5 },
          },
        ],
      },
    ],
  };
}

function cellsOf(zones: readonly PlanZone[], supply: PlanSupply) {
  const season = computeSeason(denseAndShrubs({ zones: [...zones], supply, choices: {} }));
  return season.zones.map((zone: ZoneSeason) => {
    const [own = expect.unreachable()] = zone.plantings;
    const inches = (field: 'depletionEndMm' | 'irrigationNetMm' | 'demandMm') =>
      plantingFigure(own, field, WEEK) / MM_PER_INCH;
    return {
      minutesPerDay: zoneFigure(zone, 'minutesPerDay', WEEK),
      minutes: zoneFigure(zone, 'minutes', WEEK),
      gallons: zoneFigure(zone, 'litres', WEEK) / L_PER_GALLON,
      usedIn: inches('demandMm'),
      broughtIn: inches('irrigationNetMm'),
      endsIn: inches('depletionEndMm'),
    };
  });
}

describe('cells worked by hand', () => {
  it('behind plain emitters at 5 psi: 42.0 minutes and 21.0 gal, twice the minutes of the label', () => {
    const [low = expect.unreachable()] = cellsOf([bed('low', 38.5)], { sources: [{ name: 'Main', pressure: 5 }] });
    expect(low.minutesPerDay).toBeCloseTo(6, 9);
    expect(low.minutes).toBeCloseTo(42, 9);
    expect(low.gallons).toBeCloseTo(21, 1);
    expect(low.usedIn).toBeCloseTo(0.7, 9);
    expect(low.broughtIn).toBeCloseTo(0.7, 2);
    const [label = expect.unreachable()] = cellsOf([bed('low', 38.5)], { sources: [{ name: 'Main', pressure: 20 }] });
    expect(label.minutesPerDay).toBeCloseTo(3, 9);
  });

  it('in a week with a cut of 30 %: the first keeps 42.0 gal, the last is left 16.8', () => {
    const cuts = [{ from: '2027-06-28', to: '2027-07-04', share: 0.3 }];
    const cells = cellsOf([bed('first', 77), bed('last', 77)], { sources: [], cuts });
    const [first = expect.unreachable(), last = expect.unreachable()] = cells;
    expect(first.minutesPerDay).toBeCloseTo(6, 9);
    expect(first.gallons).toBeCloseTo(42, 6);
    expect(last.minutesPerDay).toBeCloseTo(2.4, 9);
    expect(last.gallons).toBeCloseTo(16.8, 6);
    expect(last.broughtIn).toBeCloseTo(0.28, 6);
    expect(first.endsIn).toBeCloseTo(0, 6);
    expect(last.endsIn).toBeCloseTo(0.42, 6);
  });
});
