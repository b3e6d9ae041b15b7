import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { MOST_FAULTS } from '../../../src/plan/reading/issue.ts';
import { boundsOf, type PlanQuantity } from '../../../src/plan/schema/quantity.ts';
import { FAULTY_FIELDS, FAULTY_RELATIONS, spoiled } from '../../support/faulty-plans.ts';
import { oneBed, zone } from '../../support/small-plans.ts';

/** The one fault of a plan: its path, its code and the values of that code alone. */
function faultOf(plan: unknown): unknown[] {
  const result = checkPlan(plan);
  return result.ok
    ? []
    : result.faults.map(({ path, code, values: { place: _place, found: _found, ...own } }) => [path, code, own]);
}

describe('a fault is named by its place and its kind', () => {
  const bounds = (quantity: PlanQuantity) => {
    const [least, most] = boundsOf(quantity, 'us');
    return { least, most, isWhole: false, quantity, units: 'us' };
  };

  it.each<[keyof typeof FAULTY_FIELDS, unknown[]]>([
    ['a wrong type', ['season.weeks', 'range', { least: 1, most: 104, isWhole: true, unit: 'weeks' }]],
    ['a negative area', ['zones.0.plantings.0.extent.area', 'range', bounds('area')]],
    [
      'an unknown class',
      ['zones.0.plantings.0.need.class', 'choice', { options: ['very-low', 'low', 'moderate', 'high'] }],
    ],
    ['not a number', ['zones.0.timerStepMinutes', 'range', { least: 0.1, most: 120, isWhole: false, unit: 'minutes' }]],
    ['a day that the calendar does not have', ['season.firstDay', 'calendar-day', {}]],
    ['a day of another age', ['season.firstDay', 'day', { firstYear: 1900, lastYear: 2199 }]],
    ['a month of the climate', ['site.climate.rain.11', 'range', bounds('depth')]],
    ['a line of a planting', ['zones.0.plantings.0.lines.1.flow', 'range', bounds('emitterFlow')]],
    [
      'a kind of layout that is none',
      ['zones.0.plantings.1.lines.0.layout.kind', 'choice', { options: ['length', 'rows', 'loops'] }],
    ],
    ['a weekday that is none', ['zones.0.wateringDays', 'number-or-weekdays', { least: 1, most: 7 }]],
    ['a name without a letter', ['zones.0.name', 'name', { most: 120 }]],
    ['an id that is none', ['zones.0.id', 'id', {}]],
    ['the id that every object has', ['zones.0.id', 'id', {}]],
    [
      'a rain day more than a month has',
      ['site.climate.rainDays.0', 'range', { least: 0, most: 31, isWhole: false, unit: 'days' }],
    ],
    [
      'a rain day of no rain',
      [
        'site.climate.rainDayThreshold',
        'range',
        { least: 0.001, most: 1, isWhole: false, quantity: 'depth', units: 'us' },
      ],
    ],
    [
      'starts that are no number',
      ['zones.0.startsADay', 'range', { least: 1, most: 24, isWhole: true, unit: 'startsPerDay' }],
    ],
    [
      'minutes of a week that it does not have',
      ['log.runs.beds.2027-06-07', 'range', { least: 0, most: 10080, isWhole: false, unit: 'minutesPerWeek' }],
    ],
    [
      'a run that is neither minutes nor days',
      ['log.runs.beds.2027-06-07', 'minutes-or-days', { least: 0, most: 10080 }],
    ],
    [
      'minutes of a day that it does not have',
      [
        'log.runs.beds.2027-06-07.days.2027-06-08.minutes',
        'range',
        { least: 0, most: 1440, isWhole: false, unit: 'minutes' },
      ],
    ],
    [
      'a run of a day without minutes',
      [
        'log.runs.beds.2027-06-07.days.2027-06-08.minutes',
        'range',
        { least: 0, most: 1440, isWhole: false, unit: 'minutes' },
      ],
    ],
    [
      'a field that no run has',
      ['log.runs.beds.2027-06-07.days.2027-06-08.litres', 'unknown-field', { known: ['minutes', 'open'] }],
    ],
    ['a forecast of less than no rain', ['log.forecasts.0.days.2027-06-09.rain', 'range', bounds('depth')]],
    ['an empty text of days', ['site.years.stretches.0.rain', 'text', { least: 1, most: 153720 }]],
    ['a field that no plan has', ['season.colour', 'unknown-field', { known: ['firstDay', 'weeks'] }]],
  ])('%s', (name, fault) => {
    expect(faultOf(FAULTY_FIELDS[name])).toEqual([fault]);
  });
});

describe('parts that do not agree', () => {
  it.each<[keyof typeof FAULTY_RELATIONS, unknown[]]>([
    ['a rule that names a planting of elsewhere', ['zones.0.rule.planting', 'planting-unknown', {}]],
    ['choices for a zone that is not there', ['choices.cellar', 'zone-unknown', {}]],
    ['minutes run in a zone that is not there', ['log.runs.cellar', 'zone-unknown', {}]],
    ['open days of an unknown planting', ['choices.beds.2027-06-07.openDays.roses', 'planting-unknown', {}]],
    [
      'a choice before the season',
      ['choices.beds.2027-06-06', 'outside-season', { first: dayNumber('2027-06-07'), last: dayNumber('2027-07-04') }],
    ],
    [
      'a run after the season',
      ['log.runs.beds.2027-07-05', 'outside-season', { first: dayNumber('2027-06-07'), last: dayNumber('2027-07-04') }],
    ],
    ['two choices of one week', ['choices.beds.2027-06-13', 'week-twice', { other: '2027-06-07' }]],
    ['two totals of one week', ['log.weeks.2027-06-01', 'week-twice', { other: '2027-05-31' }]],
    [
      'a total read through a day of another week',
      [
        'log.weeks.2027-06-07.rainThrough',
        'outside-week',
        { first: dayNumber('2027-06-07'), last: dayNumber('2027-06-13') },
      ],
    ],
    ['a day read through without a total', ['log.weeks.2027-06-07.rainThrough', 'through-without-rain', {}]],
    [
      'a run of a day in another week',
      [
        'log.runs.beds.2027-06-07.days.2027-06-14',
        'outside-week',
        { first: dayNumber('2027-06-07'), last: dayNumber('2027-06-13') },
      ],
    ],
    [
      'an open shut-off of an unknown planting',
      ['log.runs.beds.2027-06-07.days.2027-06-08.open.1', 'planting-unknown', {}],
    ],
    ['two forecasts of one day', ['log.forecasts.1.issued', 'issued-twice', { other: 1 }]],
    [
      'a forecast of a day before it',
      ['log.forecasts.0.days.2027-06-07', 'before-issue', { issued: dayNumber('2027-06-08') }],
    ],
    [
      'more rain days than February has',
      ['site.climate.rainDays.1', 'greater-than', { most: 29, of: 'month-length', unit: 'days' }],
    ],
    ['a figure of a day that is none', ['site.years.stretches.0.rain', 'daily-figures', { number: 2 }]],
    ['two spaces between days', ['site.years.stretches.0.rain', 'daily-figures', { number: 2 }]],
    ['less than no rain on a day', ['site.years.stretches.0.rain', 'daily-figures', { number: 2 }]],
    [
      'more ETo than a day can have',
      ['site.years.stretches.0.eto', 'daily-figure-too-great', { number: 2, most: 11811, mostMm: 30 }],
    ],
    [
      'more rain than a day can have',
      ['site.years.stretches.0.rain', 'daily-figure-too-great', { number: 1, most: 787401, mostMm: 2000 }],
    ],
    ['fewer days of ETo than of rain', ['site.years.stretches.0.eto', 'unequal-days', { rain: 3 }]],
    ['two stretches with one day', ['site.years.stretches.0.from', 'stretch-overlaps', { other: 2 }]],
    ['more than sixty years', ['site.years.stretches', 'too-many-years', { most: 60 }]],
    ['two zones with one id', ['zones.1.id', 'id-taken', { other: 'Beds' }]],
    ['two plantings with one id, in two zones', ['zones.1.plantings.0.id', 'id-taken', { other: 'Tomatoes' }]],
    [
      'days in the ground that run backwards',
      ['zones.0.plantings.0.inGround.to', 'ends-before-start', { start: dayNumber('2027-06-20'), of: 'first-day' }],
    ],
    [
      'a crop that is pulled before it is planted',
      ['zones.0.plantings.0.inGround.to', 'ends-before-start', { start: dayNumber('2027-05-10'), of: 'planting-day' }],
    ],
    [
      'a line that ends before it is laid',
      ['zones.0.plantings.0.lines.0.to', 'ends-before-start', { start: dayNumber('2027-06-20'), of: 'first-day' }],
    ],
    ['a pressure and a height of water', ['supply.sources.0.waterHeight', 'pressure-twice', {}]],
    [
      'a restriction that runs backwards',
      ['supply.restrictions.0.to', 'ends-before-start', { start: dayNumber('2027-06-20'), of: 'first-day' }],
    ],
    ['a cut of no amount', ['supply.cuts.0.share', 'cut-amount', {}]],
    ['a cut of two amounts', ['supply.cuts.0.share', 'cut-amount', {}]],
    ['two sources from one day', ['supply.sources.1.from', 'source-same-day', { other: 1, isFirst: false }]],
    [
      'more in the tank than it holds',
      ['supply.tank.start', 'greater-than', { most: 50, of: 'capacity', quantity: 'volume', units: 'us' }],
    ],
    ['a climate without reference ET or temperatures', ['site.climate.eto', 'climate-without-eto', {}]],
    [
      'a lowest temperature above the highest of its month',
      [
        'site.climate.minTemperature.6',
        'greater-than',
        { most: 20, of: 'month-highest', quantity: 'temperature', units: 'metric' },
      ],
    ],
    [
      'a day colder at its warmest than at its coldest',
      [
        'log.days.2027-06-08.minTemperature',
        'greater-than',
        { most: 60, of: 'day-highest', quantity: 'temperature', units: 'us' },
      ],
    ],
  ])('%s', (name, fault) => {
    expect(faultOf(FAULTY_RELATIONS[name])).toEqual([fault]);
  });

  it('weather outside the season is no fault: it was observed', () => {
    const log = { days: { '2026-01-01': { rain: 1 } }, weeks: { '2028-01-01': { rain: 1 } } };
    expect(checkPlan(oneBed({ log }))).toMatchObject({ ok: true });
  });

  it.each([1e9, -1e9, 0, 105])('a season of %i weeks ends on no day: nothing is outside it', (weeks) => {
    const season = { firstDay: '2027-06-07', weeks };
    const choices = { beds: { '2027-06-06': { minutes: 3 }, '2028-06-07': { minutes: 3 } } };
    const result = checkPlan(oneBed({ season, choices }));
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual(['season.weeks']);
  });

  it('a choice may name any day of its week', () => {
    expect(checkPlan(oneBed({ choices: { beds: { '2027-06-13': { minutes: 3 } } } }))).toMatchObject({ ok: true });
  });
});

describe('ten faults at once', () => {
  const broken = spoiled((plan) => {
    Object.assign(plan.season, { weeks: 'thirty' });
    Object.assign(plan.site, { latitude: 99, soil: 'mud' });
    Object.assign(plan.site.climate, { eto: [1, 2, 3] });
    Object.assign(plan.supply ?? {}, { tank: { capacity: 50, start: 60 } });
    Object.assign(plan.zones[0] ?? {}, { rule: { kind: 'planting', planting: 'onions' }, colour: 'red', size: 3 });
    Object.assign(plan.zones[0]?.plantings[0]?.extent ?? {}, { area: -1 });
    Object.assign(plan.zones[1] ?? {}, { wateringDays: 8 });
  });

  it('are all listed, in the order in which a plan is read', () => {
    const result = checkPlan(broken);
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual([
      'season.weeks',
      'site.latitude',
      'site.soil',
      'site.climate.eto',
      'supply.tank.start',
      'zones.0.plantings.0.extent.area',
      'zones.0.colour',
      'zones.0.size',
      'zones.0.rule.planting',
      'zones.1.wateringDays',
    ]);
  });

  it('a unit system that is none does not hide the others', () => {
    const result = checkPlan({ ...(broken as object), units: 'imperial' });
    const paths = result.ok ? [] : result.faults.map(({ path }) => path);
    expect(paths).toHaveLength(11);
    expect(paths).toContain('units');
  });

  it('a thousand are counted, and the first are listed', () => {
    const zones = Array.from({ length: 1000 }, (_, index) => zone({ id: `zone-${index}`, name: '', plantings: [] }));
    const result = checkPlan(oneBed({ zones }));
    const faults = result.ok ? [] : result.faults;
    expect(faults).toHaveLength(MOST_FAULTS + 1);
    expect(faults.at(-1)).toMatchObject({ path: '', code: 'more-faults', values: { count: 800 } });
  });

  it('those of many thousand fields are counted without a look at each', () => {
    const unknown = Object.fromEntries(Array.from({ length: 5000 }, (_, index) => [`k${index}`, 1]));
    const days = Object.fromEntries(Array.from({ length: 3000 }, (_, index) => [`no day ${index}`, {}]));
    const result = checkPlan({ ...oneBed(), ...unknown, log: { days } });
    expect(result.ok ? [] : result.faults.at(-1)).toMatchObject({
      code: 'more-faults',
      values: { count: 8000 - MOST_FAULTS },
    });
  });
});

describe('what is far larger than any plan is refused by its size alone', () => {
  const many = (count: number) => Object.fromEntries(Array.from({ length: count }, (_, index) => [`k${index}`, 1]));

  it.each<[string, object, string, string, object]>([
    ['zones', { zones: Array.from({ length: 100_000 }, () => ({})) }, 'zones', 'list-too-long', { most: 5000 }],
    ['zones with holes', { zones: new Array(1e9) }, 'zones', 'list-too-long', { most: 5000 }],
    ['forecasts', { log: { forecasts: new Array(1e5) } }, 'log.forecasts', 'list-too-long', { most: 800 }],
    ['weeks', { log: { weeks: many(120_000) } }, 'log.weeks', 'entries', { by: 'day' }],
    ['fields that are unknown', { more: many(120_000) }, 'more', 'not-a-plan', {}],
  ])('%s', (_, change, ...expected) => {
    expect(faultOf({ ...oneBed(), ...change })).toEqual([expected]);
  });
});

describe('a value that no file can hold', () => {
  it('a plan that contains itself', () => {
    const plan = structuredClone(oneBed()) as unknown as Record<string, unknown>;
    plan['zones'] = [plan];
    expect(faultOf(plan)).toEqual([[expect.stringMatching(/^zones\.0\.zones/), 'too-deep', { most: 10 }]]);
  });

  it.each([
    ['a function', () => 1],
    ['a date', new Date(0)],
    ['a big number', 10n],
    ['a symbol', Symbol('name')],
  ])('%s in place of a name', (_name, name) => {
    expect(faultOf({ ...oneBed(), name })).toEqual([['name', 'name', { most: 120 }]]);
  });
});

it('names the list that has a thirteenth month of rain days, and a list with holes', () => {
  const { site } = oneBed();
  const rainDays = Array.from({ length: 13 }, () => 5);
  expect(faultOf({ ...oneBed(), site: { ...site, climate: { ...site.climate, rainDays } } })).toMatchObject([
    ['site.climate.rainDays', 'list-of-months', {}],
  ]);
  const log = { runs: { nowhere: { '2027-06-07': 5 } } };
  expect(checkPlan({ ...oneBed({ log }), zones: new Array(1) })).toMatchObject({ faults: [{ path: 'zones.0' }, {}] });
});
