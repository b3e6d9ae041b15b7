/**
 * What a planting's week comes to, by hand, in the garden of plain-garden.ts: 17.5 mm go in a week, 0.08 mm come with a minute on the
 * fourth and the seventh day; the timer's step is 1 min. It starts full and is filled up.
 */
import { describe, expect, it } from 'vitest';
import type { ObservedWeather } from '../../../src/engine/garden.ts';
import { fieldByWeek } from '../../../src/engine/season/field-by-week.ts';
import { type PlantingWeek, plantingWeek } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, Season } from '../../../src/engine/season/season.ts';
import { SPAN_WEEKS, type WeekFigures } from '../../../src/engine/season/week-figures.ts';
import { FIRST_DAY, type PlantingChange, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

/** Without minutes: those that are computed. */
function bedWith(
  minutes: number | undefined,
  change: PlantingChange = {},
  days: ObservedWeather['days'] = new Map(),
): PlantingWeek {
  const choices = new Map(minutes === undefined ? [] : [[0, { minutes }]]);
  const zone = plainZone({ plantings: [plainPlanting(change)], choices });
  return plantingWeek(
    runSeason(plainGarden([zone], { observed: { days, weeks: new Map() } })).zones[0]?.plantings[0] as PlantingSeason,
    0,
  );
}

describe('figures of a season', () => {
  const garden = plainGarden([plainZone()], { span: { firstDay: FIRST_DAY, weeks: 2 * SPAN_WEEKS } });
  /** In the first week of the second span. */
  const readOn = FIRST_DAY + 7 * SPAN_WEEKS + 3;
  const gardenAt = (rainMm: number) => {
    return { ...garden, observed: { days: new Map([[readOn, { rainMm }]]), weeks: new Map() } };
  };
  const whole = runSeason(gardenAt(2));
  const figuresOf = ({ zones }: Season) => zones[0]?.figures as WeekFigures;
  const fieldsOf = (season: Season) => {
    const figures = figuresOf(season);
    return Array.from({ length: figures.fields }, (_, field) => [...fieldByWeek(figures, field)]);
  };

  it('are one array of a zone, its weeks and its plantings: an array a week would take twice the memory', () => {
    const { block, spans, weeks, fields } = figuresOf(whole);
    expect([block.length, spans]).toEqual([weeks * fields, undefined]);
  });

  it('are shared by a season with other rain, but for the spans of the weeks that it moves', () => {
    const before = figuresOf(whole).block.slice();
    const again = runSeason(gardenAt(3), whole);
    const { block, spans } = figuresOf(again);
    expect(block).toBe(figuresOf(whole).block);
    expect(block).toEqual(before);
    expect(Object.keys(spans ?? [])).toEqual(['1']);
    expect(fieldsOf(again)).toEqual(fieldsOf(runSeason(gardenAt(3))));
  });

  it('of a season that was run again from another such season leave both as they are', () => {
    const once = runSeason(gardenAt(3), whole);
    const before = fieldsOf(once);
    const twice = runSeason(gardenAt(4), once);
    expect(fieldsOf(once)).toEqual(before);
    expect(fieldsOf(twice)).toEqual(fieldsOf(runSeason(gardenAt(4))));
    expect(fieldsOf(twice)).not.toEqual(before);
  });
});

describe('a week’s need', () => {
  it('is what would have brought the planting to its goal by the last watering', () => {
    expect(bedWith(100).neededMm).toBeCloseTo(17.5, 9);
    // 7.5 mm of room are left for rain.
    expect(bedWith(100, { rootZone: { targetDepletion: 0.2 } }).neededMm).toBeCloseTo(10, 9);
    // From 7.5 mm down.
    expect(bedWith(100, { rootZone: { startDepletion: 0.2 } }).neededMm).toBeCloseTo(25, 9);
  });
});

describe('a week’s state', () => {
  it.each([
    // 2 x 98.5 min bring 15.76 mm, 2 x 98 bring 15.68: 1.74 and 1.82 mm are missed, of a tenth of 17.5 and 0.05 mm: 1.80.
    ['met with a tenth of the need missed', 197, 'met', 1.74],
    ['short with more', 196, 'short', 1.82],
    // 17.68 and 17.76 mm: 0.18 and 0.26 mm drain, of two steps and 0.05 mm: 0.21.
    ['met where a step a day drains', 221, 'met', 0],
    ['over where more does', 222, 'over', 0],
  ] as const)('is %s', (_, minutes, state, missedMm) => {
    expect(bedWith(minutes).state).toBe(state);
    expect(bedWith(minutes).missedMm).toBeCloseTo(missedMm, 9);
  });

  it('is met where what drains is what it asked for itself, over where more comes', () => {
    // In the ground from the fourth day: 7.5 mm go from then until the seventh is watered, which asks for 93.75 min on both days. On the
    // fourth 2.5 of 7.52 mm are used.
    const fromFourth = { from: FIRST_DAY + 3 };
    const asked = bedWith(undefined, fromFourth);
    expect(asked).toMatchObject({ state: 'met', openDays: 2 });
    expect(asked.irrigationDrainedMm).toBeCloseTo(2 * 94 * 0.08 - 10, 9);
    expect(asked.unaskedMm).toBeCloseTo(2 * 0.25 * 0.08, 9);
    // Two steps and 0.05 mm are 0.21 mm.
    const more = bedWith(2 * 96, fromFourth);
    expect(more).toMatchObject({ state: 'over' });
    expect(more.unaskedMm).toBeCloseTo(2 * 2.25 * 0.08, 9);
    expect(bedWith(2 * 95, fromFourth).state).toBe('met');
  });

  it('is met where a day uses less than its morning expected: nobody knew', () => {
    // 7.5 mm are missing on the fourth morning, 10 expected by its end, 8.75 a day asked for by the seventh; 0.5 mm are used of the 2.5.
    const cool = bedWith(undefined, {}, new Map([[FIRST_DAY + 3, { etoMm: 1 }]]));
    expect(cool.irrigationDrainedMm).toBeCloseTo(109 * 0.08 - 8 + (94 * 0.08 - 7.5), 9);
    expect(cool.unaskedMm).toBeCloseTo(0.25 * 0.08, 9);
    expect(cool.state).toBe('met');
  });

  it('counts what ran on a day on which nobody asks as not asked for', () => {
    // As much as was asked for, on the first and the second day: full, it keeps 5 mm of 17.5.
    const runs = new Map([0, 1].map((day) => [day, { minutes: 109.375 }]));
    const zone = plainZone({ choices: new Map([[0, { runs }]]) });
    const week = plantingWeek(runSeason(plainGarden([zone])).zones[0]?.plantings[0] as PlantingSeason, 0);
    expect(week.unaskedMm).toBeCloseTo(17.5, 9);
    expect(week.irrigationDrainedMm).toBeCloseTo(12.5, 9);
  });

  it('is short where it was short of water on a day, and dry where it still is', () => {
    // 4.5 mm are readily there of 9. The third day starts 5 mm down; filled on the fourth and the seventh, no other day is short.
    const filled = bedWith(300, { rootZone: { depthM: 0.06 } });
    expect(filled).toMatchObject({ state: 'short', shortDays: 1 });
    // On the third day (9 - 5) / 4.5 of 2.5 mm are used.
    expect(filled.demandMm - filled.usedMm).toBeCloseTo(2.5 - (2.5 * 4) / 4.5, 9);
    expect(bedWith(0, { rootZone: { depthM: 0.06 } }).state).toBe('dry');
  });

  it('is not short on a day on which it is watered in time: its water comes before its use (FAO-56 Example 38)', () => {
    // 6 mm are readily there of 12. The fourth day starts 7.5 mm down, and has 12 mm before it uses any.
    const filled = bedWith(300, { rootZone: { depthM: 0.08 } });
    expect(filled).toMatchObject({ shortDays: 0, usedMm: filled.demandMm });
  });

  it('says of what drains that it was the rain, as far as that went', () => {
    // 9.6 mm on each watering day, and 3 mm of rain on the fourth: 7.5 + 2.5 - 12.6 = -2.6 mm, less than the rain. On the seventh 7.5 - 9.6.
    const { irrigationDrainedMm, rainDrainedMm } = bedWith(240, {}, new Map([[FIRST_DAY + 3, { rainMm: 3 }]]));
    expect(rainDrainedMm).toBeCloseTo(2.6, 9);
    expect(irrigationDrainedMm).toBeCloseTo(2.1, 9);
  });
});
