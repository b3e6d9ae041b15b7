/**
 * Weeks of the plain garden of which mornings know more than the normals, worked by hand. It uses 2.5 mm a day, starts full, and is
 * watered on Thursday and Sunday; a minute brings 0.08 mm.
 */
import { describe, expect, it } from 'vitest';
import type { Garden, ObservedWeather } from '../../../src/engine/garden.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { StepId } from '../../../src/explain/trace/step-kinds.ts';
import { traceCell } from '../../../src/explain/trace/trace-cell.ts';
import type { TraceStep } from '../../../src/explain/trace/trace-step.ts';
import { FIRST_DAY, type PlantingChange, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';
import { inputsOf } from './step-inputs.ts';

const THURSDAY = FIRST_DAY + 3;
const FRIDAY = FIRST_DAY + 4;
const SATURDAY = FIRST_DAY + 5;
const SUNDAY = FIRST_DAY + 6;

const observed = (change: Partial<ObservedWeather>): ObservedWeather => ({
  days: new Map(),
  weeks: new Map(),
  ...change,
});

const rainOn = (day: number, rainMm: number) => observed({ days: new Map([[day, { rainMm }]]) });

function traced(planting: PlantingChange, garden: Partial<Garden>, zone: Parameters<typeof plainZone>[0] = {}) {
  const season = runSeason(plainGarden([plainZone({ ...zone, plantings: [plainPlanting(planting)] })], garden));
  const place = { week: 0, zoneId: 'zone' };
  return { zone: traceCell(season, place), bed: traceCell(season, { ...place, plantingId: 'bed' }) };
}

/** Steps of a kind by their day. */
const byDay = (steps: readonly TraceStep[], id: StepId) =>
  steps.filter((step) => step.id === id).map((step) => ['day' in step ? step.day : undefined, step.result.value]);

const stepOf = (steps: readonly TraceStep[], id: StepId): TraceStep => {
  const found = steps.find((step) => step.id === id);
  if (found === undefined) throw new Error(`there is no step ${id}`);
  return found;
};

const variantsOf = (steps: readonly TraceStep[], id: StepId) =>
  steps.filter((step) => step.id === id).map((step) => inputsOf(step).variant);

describe('10 mm read on Friday', () => {
  // Thursday: (7.5 + 10) / 0.16 = 109.375. It ends with 1.28; Friday drains 6.22 of the rain, and Sunday starts with 2.5.
  const { zone, bed } = traced({}, { observed: rainOn(FRIDAY, 10) });

  it('is news on Sunday, which asks for (2.5 + 2.5) / 0.08', () => {
    expect(byDay(zone, 'zone-minutes')).toEqual([
      [THURSDAY, expect.closeTo(109.375, 9)],
      [SUNDAY, expect.closeTo(62.5, 9)],
    ]);
    expect(byDay(zone, 'minutes-per-day')).toEqual([
      [THURSDAY, 109],
      [SUNDAY, 63],
    ]);
    expect(variantsOf(zone, 'minutes')).toEqual(['by-day']);
    expect(stepOf(zone, 'minutes').result.value).toBe(172);
  });

  it('was not known on Thursday', () => {
    expect(byDay(bed, 'expected-demand')).toEqual([[THURSDAY, expect.closeTo(10, 9)]]);
    expect(byDay(bed, 'expected-rain')).toEqual([[THURSDAY, 0]]);
    expect(stepOf(bed, 'effective-rain').result.value).toBe(10);
  });

  it('drains as rain, after the day’s use', () => {
    expect(stepOf(bed, 'rain-drained').result.value).toBeCloseTo(6.22, 9);
    // Of Sunday’s 63 min: 5.04 less 2.5 and 2.5.
    expect(stepOf(bed, 'irrigation-drained').result.value).toBeCloseTo(0.04, 9);
    expect(byDay(bed, 'day-balance').at(4)).toEqual([FRIDAY, 0]);
    expect(stepOf(bed, 'day-balance').source).toEqual([
      'FAO-56 eq. 85, 88',
      { id: 'order-of-day', cite: 'FAO-56 Example 38' },
    ]);
  });
});

describe('10 mm read on Saturday, with a step of 15 min', () => {
  it('leaves Sunday with less than half a step, skipped', () => {
    // Room of 2.3 mm: Thursday asks for (17.5 - 2.3) / 0.16 = 95, Sunday for (2.5 - 2.3) / 0.08 = 2.5.
    const room = { rootZone: { targetDepletion: 2.3 / 37.5 } };
    const { zone } = traced(room, { observed: rainOn(SATURDAY, 10) }, { timerStepMinutes: 15 });
    expect(byDay(zone, 'minutes-per-day')).toEqual([
      [THURSDAY, 90],
      [SUNDAY, 0],
    ]);
    expect(variantsOf(zone, 'minutes-per-day')).toEqual(['nearest', 'skipped']);
  });

  it('leaves Sunday with nothing asked where there is room for the day’s use', () => {
    const room = { rootZone: { targetDepletion: 2.6 / 37.5 } };
    const { zone } = traced(room, { observed: rainOn(SATURDAY, 10) }, { timerStepMinutes: 15 });
    expect(variantsOf(zone, 'minutes-per-day')).toEqual(['nearest', 'idle']);
  });
});

describe('a step of 75 min before a soil that holds 8 mm', () => {
  it('is rounded up where the nearest would not last until the next watering', () => {
    // 8 mm lasts to Sunday’s start from a depletion of 0.5 on Thursday; 7.5 - 75 x 0.08 = 1.5 does not.
    const thin = { rootZone: { allowedDepletion: 8 / 75 } };
    const { zone } = traced(thin, {}, { timerStepMinutes: 75 });
    const [first] = zone.filter(({ id }) => id === 'minutes-per-day');
    expect(first?.result.value).toBe(150);
    expect(variantsOf(zone, 'minutes-per-day')).toEqual(['up']);
    expect(first && inputsOf(first).by('lasts-from', 'name').get('Bed')).toBeCloseTo(0.5, 9);
  });
});

describe('8 mm forecast on Monday for Saturday', () => {
  const forecast = { issued: FIRST_DAY, days: new Map([[SATURDAY, { rainMm: 8 }]]) };
  const { bed } = traced({}, { observed: observed({ forecasts: [forecast] }) });

  it('is expected on Thursday, which asks for (7.5 + 10 - 8) / 0.16', () => {
    expect(byDay(bed, 'expected-rain')).toEqual([[THURSDAY, expect.closeTo(8, 9)]]);
    expect(byDay(bed, 'minutes-asked')).toEqual([[THURSDAY, expect.closeTo(59.375, 9)]]);
  });

  it('is told with its day of issue', () => {
    expect(stepOf(bed, 'expected-rain').source[0]).toEqual({ id: 'forecast', day: FIRST_DAY, cite: 'FAO-56 p. 170' });
  });
});

describe('a refill that may dry by 15 mm', () => {
  // Thursday has 7.5 mm and lasts: 7.5 + 7.5 is 15. On Sunday 15 mm pass it before Thursday: filled with 15 / 0.08 = 187.5.
  const rootZone = { allowedDepletion: 0.2 };
  const { zone, bed } = traced({ watering: 'refill', rootZone }, {});

  it('is due on Sunday, and filled', () => {
    expect(byDay(bed, 'refill-due')).toEqual([[SUNDAY, 'yes']]);
    expect(byDay(bed, 'refilled')).toEqual([[SUNDAY, 'yes']]);
    expect(byDay(bed, 'minutes-asked')).toEqual([
      [THURSDAY, 0],
      [SUNDAY, expect.closeTo(187.5, 9)],
    ]);
    expect(stepOf(bed, 'need').result.value).toBeCloseTo(15, 9);
    expect(byDay(zone, 'minutes-per-day')).toEqual([
      [THURSDAY, 0],
      [SUNDAY, 188],
    ]);
  });

  it('names the days of its shut-off on Thursday', () => {
    const shut = traced({ watering: 'refill', rootZone, hasShutOff: true }, {}).bed;
    expect(byDay(shut, 'refill-expected')).toEqual([[THURSDAY, [SUNDAY]]]);
    expect(byDay(shut, 'named-days')).toEqual([[THURSDAY, [SUNDAY]]]);
    expect(byDay(shut, 'refill-due')).toEqual([[SUNDAY, 'yes']]);
    expect(stepOf(shut, 'open-days').result.value).toBe(1);
  });
});

describe('a total of 12 mm', () => {
  const total = observed({ weeks: new Map([[FIRST_DAY, { rainMm: 12, rainThrough: SATURDAY }]]) });

  it('falls in the middle of its days, on one of them in a dry month', () => {
    const { bed } = traced({}, { observed: total });
    const { result, inputs } = stepOf(bed, 'rain-week-total');
    expect(result.value).toBe(12);
    expect(inputs.find(({ label }) => label.id === 'read-through')?.value).toBe(SATURDAY);
    expect(inputs.find(({ label }) => label.id === 'days-wet')?.value).toEqual([FIRST_DAY + 2]);
  });

  it('falls on as many days as usually have rain', () => {
    // 18 of May’s 31 days: 6 x 18 / 31 = 3.5.
    const { site } = plainGarden();
    const climate = { ...site.climate, rainMm: Array(12).fill(60), rainDays: Array(12).fill(18) };
    const { bed } = traced({}, { observed: total, site: { ...site, climate } });
    const { source, inputs } = stepOf(bed, 'rain-week-total');
    expect(inputs.find(({ label }) => label.id === 'days-wet')?.value).toEqual([1, 2, 3].map((day) => FIRST_DAY + day));
    expect(source).toEqual([{ id: 'observed' }, { id: 'choice-rain-days' }]);
  });
});

describe('the share of the normals that roots keep', () => {
  const { site } = plainGarden();
  const climate = { ...site.climate, rainMm: Array(12).fill(60) };
  const rain = { ...site.rain, method: 'balance' } as const;

  it('is of made years, by their source, where none are recorded', () => {
    const share = stepOf(traced({}, { site: { ...site, climate, rain } }).bed, 'rain-share');
    expect(share.source).toContainEqual({ id: 'years-made', cite: 'Geng, Penning de Vries and Supit (1986)' });
    expect(inputsOf(share).num('years')).toBe(60);
  });

  it('is of recorded years where the site has them', () => {
    // Every year 2 mm a day, of which all is kept: the bed uses 2.5.
    const days = 3 * 365 + 1;
    const even = {
      firstDay: FIRST_DAY - 4 * 365,
      rainMm: new Float64Array(days).fill(2),
      etoMm: new Float64Array(days).fill(5),
    };
    const years = { source: 'invented', stretches: [even] };
    const wet = { ...site.climate, rainMm: [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].map((all) => 2 * all) };
    const share = stepOf(traced({}, { site: { ...site, climate: wet, rain, years } }).bed, 'rain-share');
    expect(share.source).toContainEqual({ id: 'years-recorded', text: 'invented' });
    expect(share.result.value).toBeCloseTo(1, 3);
  });

  it('by TR-21 has the depth drawn between waterings as D', () => {
    // 2.5 mm on 7 days for 2 waterings: D = 8.75 mm, taken as 0.75 in. P = 60 mm, ETc = 31 x 2.5 mm.
    const { bed } = traced({}, { site: { ...site, climate } });
    const inputs = inputsOf(stepOf(bed, 'rain-share'));
    expect(inputs.num('mean-demand')).toBeCloseTo(2.5, 9);
    expect(inputs.num('week-watering-days')).toBe(2);
    const kept = 0.7223 * (1.2525 * 60 ** 0.82416 - 2.9352) * 10 ** (0.00095512 * 77.5);
    expect(stepOf(bed, 'rain-share').result.value).toBeCloseTo(kept / 60, 3);
  });
});

it('minutes logged by day stand as they were run', () => {
  const runs = new Map([[2, { minutes: 40 }]]);
  const { zone, bed } = traced({}, {}, { choices: new Map([[0, { runs }]]) });
  expect(variantsOf(zone, 'minutes-per-day')).toEqual(['run-by-day']);
  expect(stepOf(zone, 'minutes').result.value).toBe(40);
  expect(inputsOf(stepOf(bed, 'minutes-open')).by('day-minutes', 'day')).toEqual(new Map([[FIRST_DAY + 2, 40]]));
});

describe('a week with half the water', () => {
  const cuts = [{ from: FIRST_DAY, to: FIRST_DAY, share: 0.5 }];
  const { zone, bed } = traced({}, { supply: { sources: [], windowWeekdays: 127, windowHoursPerDay: 24, cuts } });

  it('says what the timer would run, and what the cut leaves: half of 109 minutes in whole ones', () => {
    expect(byDay(zone, 'minutes-per-day')).toEqual([[THURSDAY, 109]]);
    expect(byDay(zone, 'minutes-cut')).toEqual([[THURSDAY, 54]]);
    expect(variantsOf(zone, 'minutes')).toEqual(['by-day']);
    expect(stepOf(zone, 'minutes').result.value).toBe(108);
    expect(stepOf(bed, 'minutes-open').result.value).toBe(108);
  });
});

describe('a pot that is watered every day, 2 mm read on Tuesday', () => {
  // It uses 2.5 mm a day, 0.08 mm a minute come: 31.25 minutes. Full on Tuesday morning it lacks 0.5 mm in the evening.
  const container = { count: 10, volumeLitres: 10, openingM: 0.25, rainShare: 1 } as const;
  const { bed } = traced(
    { container, rootZone: { depthM: 0.05, availableWater: 0.3 }, rainFactor: 1 },
    { observed: rainOn(FIRST_DAY + 1, 2) },
    { wateringDays: 0b1111111, timerStepMinutes: 0.25 },
  );
  const asked = bed.filter(({ id }) => id === 'minutes-asked');

  it('asks in equal minutes until then, and from Wednesday on for each morning alone', () => {
    expect(asked.map((step) => [inputsOf(step).variant, step.result.value])).toEqual([
      ['bounds', expect.closeTo(31.25, 9)],
      ['alone', expect.closeTo(0.5 / 0.08, 9)],
      ...Array.from({ length: 4 }, () => ['alone', expect.closeTo(31.25, 9)]),
    ]);
  });

  it('says what the morning lacks: its depletion, the day’s change, and what is left after its last run', () => {
    expect(asked[1]?.inputs.map(({ label }) => label.id)).toEqual([
      'day-depletion-start',
      'day-change',
      'day-left',
      'day-net-rate',
    ]);
    expect(asked[1]?.inputs.map(({ value }) => value)).toEqual(
      [0.5, 2.5, 2.5, 4.8].map((value) => expect.closeTo(value, 9)),
    );
  });

  it('lost none of that rain', () => {
    expect(stepOf(bed, 'rain-drained').result.value).toBe(0);
  });
});
