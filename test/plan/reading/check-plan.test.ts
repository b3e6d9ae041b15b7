import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { MOST_FAULTS } from '../../../src/plan/reading/finding.ts';
import { metricGarden, mixedGarden, oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

/** `path | where | value | expected` of every fault. */
function faultsOf(value: unknown): string[] {
  const result = checkPlan(value);
  return result.ok ? [] : result.faults.map((fault) => Object.values(fault).join(' | '));
}

type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } & Record<string, unknown> : T;

/** A mixed garden, spoiled. */
function spoiled(spoil: (plan: Writable<ReturnType<typeof mixedGarden>>) => void): unknown {
  const plan = structuredClone(mixedGarden()) as Writable<ReturnType<typeof mixedGarden>>;
  spoil(plan);
  return plan;
}

describe('a fault is named by its place, in a gardener’s words', () => {
  it.each<[string, unknown, string]>([
    [
      'a wrong type',
      mixedGarden({ season: { firstDay: '2027-04-05', weeks: 'thirty' as unknown as number } }),
      'season.weeks | Season: weeks | “thirty” | a whole number from 1 to 104 weeks',
    ],
    [
      'a negative area',
      oneBed({ zones: [zone({ plantings: [tomatoes({ extent: { kind: 'area', area: -120 } })] })] }),
      'zones.0.plantings.0.extent.area | Zone “Beds”, planting “Tomatoes”: area | -120 | a number from 0.108 to 1070000 ft²',
    ],
    [
      'an unknown class',
      oneBed({ zones: [zone({ plantings: [shrubs({ need: { kind: 'class', class: 'thirsty' as 'low' } })] })] }),
      'zones.0.plantings.0.need.class | Zone “Beds”, planting “Shrubs”: water-use class | “thirsty” | a water-use class: very-low, low, moderate, high',
    ],
    [
      'not a number',
      oneBed({ zones: [zone({ timerStepMinutes: Number.NaN })] }),
      'zones.0.timerStepMinutes | Zone “Beds”: timer step | NaN | a number from 0.1 to 120 minutes',
    ],
    [
      'a day that the calendar does not have',
      oneBed({ season: { firstDay: '2027-02-30', weeks: 4 } }),
      'season.firstDay | Season: first day | “2027-02-30” | a day that the calendar has',
    ],
    [
      'a day of another age',
      oneBed({ season: { firstDay: '0227-04-05', weeks: 4 } }),
      'season.firstDay | Season: first day | “0227-04-05” | a day as year-month-day, such as 2027-04-05, in the years 1900 to 2199',
    ],
    [
      'a month of the climate',
      oneBed({
        site: { ...oneBed().site, climate: { source: '', eto: Array(12).fill(1), rain: [...Array(11).fill(0), -1] } },
      }),
      'site.climate.rain.11 | Climate: rain in December | -1 | a number from 0 to 78.7 in',
    ],
    [
      'a line of a planting',
      oneBed({
        zones: [
          zone({
            plantings: [
              tomatoes({ lines: [{ kind: 'solid' }, { kind: 'point', from: '2027-06-09', flow: 0, count: 2 }] }),
            ],
          }),
        ],
      }),
      'zones.0.plantings.0.lines.1.flow | Zone “Beds”, planting “Tomatoes”, line 2: flow | 0 | a number from 0.0133 to 132 gph',
    ],
    [
      'a kind of layout that is none',
      spoiled((plan) => Object.assign(plan.zones[0]?.plantings[1]?.lines[0] ?? {}, { layout: { kind: 'spiral' } })),
      'zones.0.plantings.1.lines.0.layout.kind | Zone “Beds”, planting “Shrubs”, line 1: kind of layout | “spiral” | a layout: length, rows or loops',
    ],
    [
      'a weekday that is none',
      oneBed({ zones: [zone({ wateringDays: ['mon', 'someday' as 'tue'] })] }),
      'zones.0.wateringDays | Zone “Beds”: watering days | mon, someday | a whole number from 1 to 7, or a list of weekdays',
    ],
    [
      'a name without a letter',
      oneBed({ zones: [zone({ name: '' })] }),
      'zones.0.name | Zone 1: name | “” | a name that is not empty',
    ],
    [
      'an id that is none',
      oneBed({ zones: [zone({ id: 'Raised beds' })] }),
      'zones.0.id | Zone “Beds”: id | “Raised beds” | an id of lower-case letters, digits and hyphens, such as raised-beds',
    ],
    [
      'the id that every object has',
      oneBed({ zones: [zone({ id: 'constructor' })] }),
      'zones.0.id | Zone “Beds”: id | “constructor” | an id of lower-case letters, digits and hyphens, such as raised-beds',
    ],
    [
      'a field that no plan has',
      spoiled((plan) => Object.assign(plan.season, { colour: 'red' })),
      'season.colour | Season: colour | “red” | nothing under this name; known are firstDay, weeks',
    ],
  ])('%s', (_name, plan, fault) => {
    expect(faultsOf(plan)).toEqual([fault]);
  });
});

describe('parts that do not agree', () => {
  it.each<[string, unknown, string]>([
    [
      'a rule that names a planting of elsewhere',
      mixedGarden({
        zones: [zone({ rule: { kind: 'planting', planting: 'pots' } }), ...mixedGarden().zones.slice(1)],
        choices: {},
      }),
      'zones.0.rule.planting | Zone “Beds”: planting of the rule | “pots” | the id of a planting of this zone',
    ],
    [
      'choices for a zone that is not there',
      oneBed({ choices: { cellar: { '2027-06-07': { minutes: 3 } } } }),
      'choices.cellar | Zone with the id “cellar”: choices by week | “cellar” | the id of a zone of this plan',
    ],
    [
      'minutes run in a zone that is not there',
      oneBed({ log: { runs: { cellar: { '2027-06-07': 3 } } } }),
      'log.runs.cellar | Zone with the id “cellar”: minutes run | “cellar” | the id of a zone of this plan',
    ],
    [
      'open days of an unknown planting',
      oneBed({ choices: { beds: { '2027-06-07': { openDays: { roses: 2 } } } } }),
      'choices.beds.2027-06-07.openDays.roses | Zone “Beds”, week of 7 June 2027: open days of the planting with the id “roses” | 2 | a planting of this zone',
    ],
    [
      'a choice before the season',
      oneBed({ choices: { beds: { '2027-06-06': { minutes: 3 } } } }),
      'choices.beds.2027-06-06 | Zone “Beds”, week of 6 June 2027 | “2027-06-06” | a day of the season, 7 June 2027 to 4 July 2027',
    ],
    [
      'a run after the season',
      oneBed({ log: { runs: { beds: { '2027-07-05': 30 } } } }),
      'log.runs.beds.2027-07-05 | Zone “Beds”, week of 5 July 2027: minutes run | “2027-07-05” | a day of the season, 7 June 2027 to 4 July 2027',
    ],
    [
      'two choices of one week',
      oneBed({ choices: { beds: { '2027-06-07': { minutes: 3 }, '2027-06-13': { minutes: 4 } } } }),
      'choices.beds.2027-06-13 | Zone “Beds”, week of 13 June 2027 | “2027-06-13” | one entry a week: 2027-06-07 lies in the same week',
    ],
    [
      'two totals of one week',
      oneBed({ log: { weeks: { '2027-05-31': { rain: 1 }, '2027-06-01': { rain: 2 } } } }),
      'log.weeks.2027-06-01 | Weather of the week of 1 June 2027 | “2027-06-01” | one entry a week: 2027-05-31 lies in the same week',
    ],
    [
      'two zones with one id',
      oneBed({ zones: [zone(), zone({ name: 'Other beds', plantings: [] })] }),
      'zones.1.id | Zone “Other beds”: id | “beds” | an id of its own: “Beds” has it too',
    ],
    [
      'two plantings with one id, in two zones',
      oneBed({ zones: [zone(), zone({ id: 'more', plantings: [tomatoes({ name: 'Cherry tomatoes' })] })] }),
      'zones.1.plantings.0.id | Zone “Beds”, planting “Cherry tomatoes”: id | “tomatoes” | an id of its own: “Tomatoes” has it too',
    ],
    [
      'days in the ground that run backwards',
      oneBed({ zones: [zone({ plantings: [shrubs({ inGround: { from: '2027-06-20', to: '2027-06-10' } })] })] }),
      'zones.0.plantings.0.inGround.to | Zone “Beds”, planting “Shrubs”: last day in the ground | “2027-06-10” | a day not before the first day, 20 June 2027',
    ],
    [
      'a crop that is pulled before it is planted',
      oneBed({ zones: [zone({ plantings: [tomatoes({ inGround: { to: '2027-05-01' } })] })] }),
      'zones.0.plantings.0.inGround.to | Zone “Beds”, planting “Tomatoes”: last day in the ground | “2027-05-01” | a day not before the planting day, 10 May 2027',
    ],
    [
      'two lines from one day',
      oneBed({ zones: [zone({ plantings: [tomatoes({ lines: [{ kind: 'solid' }, { kind: 'solid' }] })] })] }),
      'zones.0.plantings.0.lines.1.from | Zone “Beds”, planting “Tomatoes”, line 2: first day | nothing | a day of its own: line 1 lies from the first day too',
    ],
    [
      'two sources from one day',
      oneBed({
        supply: {
          sources: [
            { name: 'Hose', from: '2027-06-08' },
            { name: 'Main', from: '2027-06-08' },
          ],
        },
      }),
      'supply.sources.1.from | Supply, source “Main”: first day | “2027-06-08” | a day of its own: source 1 serves from that day too',
    ],
    [
      'more in the tank than it holds',
      oneBed({ supply: { sources: [], tank: { capacity: 50, start: 60 } } }),
      'supply.tank.start | Tank: level at the start | 60 | at most what the tank holds, 50',
    ],
    [
      'a climate without reference ET or temperatures',
      oneBed({
        site: {
          ...oneBed().site,
          climate: { source: '', rain: Array(12).fill(1), minTemperature: Array(12).fill(40) },
        },
      }),
      'site.climate.eto | Climate: reference ET | nothing | reference ET by month, or else both the lowest and the highest temperature by month',
    ],
    [
      'a lowest temperature above the highest of its month',
      metricGarden({
        site: {
          ...metricGarden().site,
          climate: {
            source: '',
            rain: Array(12).fill(1),
            minTemperature: [...Array(6).fill(4), 30, ...Array(5).fill(4)],
            maxTemperature: Array(12).fill(20),
          },
        },
      }),
      'site.climate.minTemperature.6 | Climate: lowest temperature in July | 30 | at most the highest of its month, 20',
    ],
    [
      'a day colder at its warmest than at its coldest',
      oneBed({ log: { days: { '2027-06-08': { minTemperature: 70, maxTemperature: 60 } } } }),
      'log.days.2027-06-08.minTemperature | Weather of 8 June 2027: lowest temperature | 70 | at most the highest of the day, 60',
    ],
  ])('%s', (_name, plan, fault) => {
    expect(faultsOf(plan)).toEqual([fault]);
  });

  it('weather outside the season is no fault: it was observed', () => {
    const log = { days: { '2026-01-01': { rain: 1 } }, weeks: { '2028-01-01': { rain: 1 } } };
    expect(checkPlan(oneBed({ log }))).toMatchObject({ ok: true });
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
    const zones = Array.from({ length: 1000 }, (_, place) => zone({ id: `zone-${place}`, name: '', plantings: [] }));
    const result = checkPlan(oneBed({ zones }));
    const faults = result.ok ? [] : result.faults;
    expect(faults).toHaveLength(MOST_FAULTS + 1);
    expect(faults.at(-1)).toEqual({
      path: '',
      where: 'The plan',
      value: '800 more faults',
      expected: 'the faults above put right first',
    });
  });
});

describe('a value that no file can hold', () => {
  it('a plan that contains itself', () => {
    const plan = structuredClone(oneBed()) as unknown as Record<string, unknown>;
    plan['zones'] = [plan];
    expect(faultsOf(plan)).toHaveLength(1);
    expect(faultsOf(plan)[0]).toContain('fields at most 10 levels deep');
  });

  it.each([
    ['a function', () => 1],
    ['a date', new Date(0)],
    ['a big number', 10n],
    ['a symbol', Symbol('name')],
  ])('%s in place of a name', (_name, name) => {
    expect(faultsOf({ ...oneBed(), name })).toHaveLength(1);
  });
});
