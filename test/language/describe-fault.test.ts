import { describe, expect, it } from 'vitest';
import { fromSi } from '../../src/engine/units.ts';
import { describeFault } from '../../src/language/describe-fault.ts';
import { saidLeast, saidMost } from '../../src/language/format/bounds.ts';
import { readerFor } from '../../src/language/reader.ts';
import { checkPlan } from '../../src/plan/reading/check-plan.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import { boundsOf, type PlanQuantity } from '../../src/plan/schema/quantity.ts';
import { FAULTY_FIELDS, FAULTY_RELATIONS } from '../support/faulty-plans.ts';
import { oneBed, tomatoes, zone } from '../support/small-plans.ts';

/** `where | value | expected` of every fault. */
function said(result: ReturnType<typeof checkPlan>, locale = 'en-US'): string[] {
  if (result.ok) return [];
  return result.faults.map((fault) =>
    Object.values(describeFault(fault, readerFor(locale, 'us')))
      .join(' | ')
      .replaceAll('\u00a0', ' '),
  );
}

describe('a value that its field does not take, in words', () => {
  it.each<[keyof typeof FAULTY_FIELDS, string]>([
    ['a wrong type', 'Season: weeks | “thirty” | a whole number from 1 to 104 weeks'],
    ['a negative area', 'Zone “Beds”, planting “Tomatoes”: area | -120 | a number from 0.1 to 1,000,000 sq ft'],
    [
      'an unknown class',
      'Zone “Beds”, planting “Shrubs”: water-use class | “thirsty” | very-low, low, moderate, or high',
    ],
    ['not a number', 'Zone “Beds”: timer step | not a number | a number from 0.1 to 120 minutes'],
    ['a day that the calendar does not have', 'Season: first day | “2027-02-30” | a day that the calendar has'],
    [
      'a day of another age',
      'Season: first day | “0227-04-05” | a day as year-month-day, such as 2027-04-05, in the years 1900 to 2199',
    ],
    ['a month of the climate', 'Climate: rain in December | -1 | a number from 0 to 78 in'],
    ['a line of a planting', 'Zone “Beds”, planting “Tomatoes”, line 2: flow | 0 | a number from 0.01 to 130 gph'],
    [
      'a kind of layout that is none',
      'Zone “Beds”, planting “Shrubs”, line 1: kind of layout | “spiral” | length, rows, or loops',
    ],
    [
      'a weekday that is none',
      'Zone “Beds”: watering days | mon, someday | a whole number from 1 to 7, or a list of weekdays',
    ],
    [
      'a name without a letter',
      'Zone 1: name | “” | a name of 1 to 120 characters in one line, without tabs, with something that shows',
    ],
    [
      'a name with a tab',
      'Zone “Beds⇥=1+1”: name | “Beds⇥=1+1” | a name of 1 to 120 characters in one line, without tabs, with something that shows',
    ],
    [
      'an id that is none',
      'Zone “Beds”: id | “Raised beds” | an id of lower-case letters, digits and hyphens, such as raised-beds',
    ],
    [
      'the id that every object has',
      'Zone “Beds”: id | “constructor” | an id of lower-case letters, digits and hyphens, such as raised-beds',
    ],
    ['a rain day more than a month has', 'Climate: rain days in January | 32 | a number from 0 to 31 days'],
    ['a rain day of no rain', 'Climate: least rain of a rain day | 0 | a number from 0.001 to 1 in'],
    ['starts that are no number', 'Zone “Beds”: starts a day | 0 | a whole number from 1 to 24 starts a day'],
    [
      'minutes of a week that it does not have',
      'Zone “Beds”, week of June 7, 2027: minutes run | 10,081 | a number from 0 to 10,080 minutes a week',
    ],
    [
      'a run that is neither minutes nor days',
      'Zone “Beds”, week of June 7, 2027: minutes run | “all” | the minutes of the week, a number from 0 to 10,080, or a group of days',
    ],
    [
      'minutes of a day that it does not have',
      'Zone “Beds”, run of June 8, 2027: minutes | 1,441 | a number from 0 to 1,440 minutes',
    ],
    [
      'a run of a day without minutes',
      'Zone “Beds”, run of June 8, 2027: minutes | nothing | a number from 0 to 1,440 minutes',
    ],
    [
      'a field that no run has',
      'Zone “Beds”, run of June 8, 2027: litres | 3 | no field of this name; known are minutes, open',
    ],
    [
      'a forecast of less than no rain',
      'Forecast of June 8, 2027 for June 9, 2027: rain | -1 | a number from 0 to 78 in',
    ],
    ['an empty text of days', 'Real seasons, stretch 1: rain | “” | a text of 1 to 153,720 characters'],
    ['a field that no plan has', 'Season: colour | “red” | no field of this name; known are firstDay, weeks'],
  ])('%s', (name, words) => {
    expect(said(checkPlan(FAULTY_FIELDS[name]))).toEqual([words]);
  });
});

describe('parts that do not agree, in words', () => {
  it.each<[keyof typeof FAULTY_RELATIONS, string]>([
    [
      'a rule that names a planting of elsewhere',
      'Zone “Beds”: planting of the rule | “pots” | a planting of this zone',
    ],
    [
      'choices for a zone that is not there',
      'Zone with the id “cellar”: choices by week | “cellar” | a zone of this plan',
    ],
    [
      'minutes run in a zone that is not there',
      'Zone with the id “cellar”: minutes run | “cellar” | a zone of this plan',
    ],
    [
      'open days of an unknown planting',
      'Zone “Beds”, week of June 7, 2027: open days of planting with the id “roses” | 2 | a planting of this zone',
    ],
    [
      'a choice before the season',
      'Zone “Beds”, week of June 6, 2027 | “2027-06-06” | a day of the season, June 7, 2027 to July 4, 2027',
    ],
    [
      'a run after the season',
      'Zone “Beds”, week of July 5, 2027: minutes run | “2027-07-05” | a day of the season, June 7, 2027 to July 4, 2027',
    ],
    [
      'two choices of one week',
      'Zone “Beds”, week of June 13, 2027 | “2027-06-13” | one entry a week: June 7, 2027 lies in the same week',
    ],
    [
      'two totals of one week',
      'Weather of the week of June 1, 2027 | “2027-06-01” | one entry a week: May 31, 2027 lies in the same week',
    ],
    [
      'a total read through a day of another week',
      'Weather of the week of June 7, 2027: day that the rain was read through | “2027-06-14” | a day of its week, June 7, 2027 to June 13, 2027',
    ],
    [
      'a day read through without a total',
      'Weather of the week of June 7, 2027: day that the rain was read through | “2027-06-09” | no day where there is no rain total',
    ],
    [
      'a run of a day in another week',
      'Zone “Beds”, run of June 14, 2027 | “2027-06-14” | a day of its week, June 7, 2027 to June 13, 2027',
    ],
    [
      'an open shut-off of an unknown planting',
      'Zone “Beds”, run of June 8, 2027: open shut-offs, 2 | “roses” | a planting of this zone',
    ],
    [
      'two forecasts of one day',
      'Forecast of June 8, 2027: day of issue | “2027-06-08” | one forecast a day of issue: forecast 1 has it too',
    ],
    [
      'a forecast of a day before it',
      'Forecast of June 8, 2027 for June 7, 2027 | “2027-06-07” | a day not before the forecast, June 8, 2027',
    ],
    [
      'more rain days than February has',
      'Climate: rain days in February | 30 | at most the days of its month, 29 days',
    ],
    [
      'a figure of a day that is none',
      'Real seasons, stretch 1: rain | “3.5” | whole numbers with one space between, or - for a missing day; this is number 2',
    ],
    [
      'two spaces between days',
      'Real seasons, stretch 1: rain | “” | whole numbers with one space between, or - for a missing day; this is number 2',
    ],
    [
      'less than no rain on a day',
      'Real seasons, stretch 1: rain | “-10” | whole numbers with one space between, or - for a missing day; this is number 2',
    ],
    [
      'more ETo than a day can have',
      'Real seasons, stretch 1: reference ET | 17,000 | at most 11,811, which is 1.18 in; this is number 2',
    ],
    [
      'more rain than a day can have',
      'Real seasons, stretch 1: rain | 787,402 | at most 787,401, which is 78.74 in; this is number 1',
    ],
    ['fewer days of ETo than of rain', 'Real seasons, stretch 1: reference ET | 2 | as many days as rain has: 3 days'],
    [
      'two stretches with one day',
      'Real seasons, stretch 1: first day | “2012-01-03” | a day after those of stretch 2',
    ],
    ['more than sixty years', 'Real seasons: stretches of days | a list of 61 | at most 60 years of days'],
    ['two zones with one id', 'Zone “Other beds”: id | “beds” | an id of its own: “Beds” has it too'],
    [
      'two plantings with one id, in two zones',
      'Zone “Beds”, planting “Cherry tomatoes”: id | “tomatoes” | an id of its own: “Tomatoes” has it too',
    ],
    [
      'days in the ground that run backwards',
      'Zone “Beds”, planting “Shrubs”: last day in the ground | “2027-06-10” | a day not before the first day, June 20, 2027',
    ],
    [
      'a crop that is pulled before it is planted',
      'Zone “Beds”, planting “Tomatoes”: last day in the ground | “2027-05-01” | a day not before the planting day, May 10, 2027',
    ],
    [
      'a line that ends before it is laid',
      'Zone “Beds”, planting “Tomatoes”, line 1: last day | “2027-06-10” | a day not before the first day, June 20, 2027',
    ],
    [
      'a pressure and a height of water',
      'Supply, source “Barrel”: height of the water | 3 | no height of water where the pressure is given: one of the two',
    ],
    [
      'a restriction that runs backwards',
      'Supply: watering restrictions, last day, 1 | “2027-06-10” | a day not before the first day, June 20, 2027',
    ],
    [
      'a cut of no amount',
      'Supply: cuts, share that is cut, 1 | nothing | a share that is taken away, or the water that is left for a week: one of the two',
    ],
    [
      'a cut of two amounts',
      'Supply: cuts, share that is cut, 1 | 0.2 | a share that is taken away, or the water that is left for a week: one of the two',
    ],
    [
      'two sources from one day',
      'Supply, source “Main”: first day | “2027-06-08” | a day of its own: source 1 serves from that day too',
    ],
    ['more in the tank than it holds', 'Tank: level at the start | 60 | at most what the tank holds, 50 gal'],
    [
      'a climate without reference ET or temperatures',
      'Climate: reference ET | nothing | reference ET by month, or else both the lowest and the highest temperature by month',
    ],
    [
      'a lowest temperature above the highest of its month',
      'Climate: lowest temperature in July | 30 | at most the highest of its month, 20 °C',
    ],
    [
      'a day colder at its warmest than at its coldest',
      'Weather of June 8, 2027: lowest temperature | 70 | at most the highest of the day, 60 °F',
    ],
  ])('%s', (name, words) => {
    expect(said(checkPlan(FAULTY_RELATIONS[name]))).toEqual([words]);
  });
});

describe('the text of a file, in words', () => {
  it.each([
    [
      'a comma too many',
      '{"a": 1,}',
      'The file, line 1, column 9 | “}” | no comma before a closing bracket: take it out',
    ],
    [
      'a line break in a text',
      '{"a": "b\nc"}',
      'The file, line 1, column 9 | a line break | a closing quote (") on the same line',
    ],
    [
      'a file cut short',
      '{"a": [1, 2',
      'The file, line 1, column 12 | the end of the file | the rest of the plan: the file was not saved or copied whole',
    ],
    ['an empty file', ' ', 'The file | an empty file | a plan'],
    ['a list', '[1, 2]', 'The plan | 1, 2 | a plan: one group of fields'],
  ])('%s', (_name, text, words) => {
    expect(said(readPlan(text))).toEqual([words]);
  });

  it('another program’s file: what belongs there is named', () => {
    const site =
      'place, latitude, longitude, timeZone, elevation, windHeight, setting, missingWeather, soil, availableWater, slopePercent, exposure, climate, years, departures, rain';
    expect(said(readPlan('{"name": "x"}'))).toEqual([
      'The plan: format | nothing | runnel-plan',
      'The plan: version | nothing | 2',
      'The plan: unit system | nothing | us or metric',
      'Season | nothing | a group of fields: firstDay, weeks',
      `Site | nothing | a group of fields: ${site}`,
      'The plan: zones | nothing | a list',
    ]);
  });

  it('a newer version', () => {
    expect(said(readPlan('{"format": "runnel-plan", "version": 3}'))).toEqual([
      'The plan: version | 3 | version 2 or older: a newer edition of this kit wrote this file, and can open it',
    ]);
  });
});

it('days, numbers and lists stand as the reader’s locale writes them', () => {
  expect(said(checkPlan(FAULTY_RELATIONS['a choice before the season']), 'en-GB')).toEqual([
    'Zone “Beds”, week of 6 June 2027 | “2027-06-06” | a day of the season, 7 June 2027 to 4 July 2027',
  ]);
  expect(said(checkPlan(FAULTY_FIELDS['an unknown class']), 'en-GB')[0]).toContain('very-low, low, moderate or high');
});

describe('the bounds of a quantity, as they are said', () => {
  const kinds: readonly PlanQuantity[] = [
    ...(['area', 'length', 'spacing', 'diameter', 'rootDepth', 'bore', 'elevation', 'height'] as const),
    ...(['emitterFlow', 'supplyFlow', 'volume', 'pressure', 'depth', 'temperature', 'windSpeed'] as const),
  ];
  const cases = kinds.flatMap((kind) => (['us', 'metric'] as const).map((units) => [kind, units] as const));

  it.each(cases)('%s in %s units: what is offered is accepted, and it is nearly all there is', (kind, units) => {
    const [least, most] = boundsOf(kind, units);
    expect(saidMost(most)).toBeLessThanOrEqual(most * (1 + 1e-9));
    expect(Math.abs(saidMost(most) - most)).toBeLessThanOrEqual(0.08 * Math.abs(most));
    expect(Math.abs(saidLeast(least, -1e9) - least)).toBeLessThanOrEqual(0.25 * Math.abs(least));
    // Who types what was offered and is refused for a hair is told the bound itself.
    const offered = saidLeast(least, -1e9);
    if (offered < least * (1 - 1e-9)) expect(saidLeast(least, offered)).toBeGreaterThanOrEqual(least);
    expect(saidLeast(least, offered)).toBeGreaterThanOrEqual(least - Math.abs(least) * 1e-9);
  });

  it('are round: 0.01 and 100,000 square meters are 0.1 and 1,000,000 square feet', () => {
    const area = (value: number) =>
      said(checkPlan(oneBed({ zones: [zone({ plantings: [tomatoes({ extent: { kind: 'area', area: value } })] })] })));
    expect(area(-120)[0]).toMatch(/a number from 0\.1 to 1,000,000 sq ft$/);
    expect(area(0.1)[0]).toMatch(/a number from 0\.108 to 1,000,000 sq ft$/);
    expect(fromSi(0.01, 'area', 'us')).toBeCloseTo(0.1076, 4);
  });
});
