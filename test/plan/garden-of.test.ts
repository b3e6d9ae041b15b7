import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../src/engine/calendar.ts';
import type { Garden } from '../../src/engine/garden.ts';
import { rainDaysAtLeast025Mm } from '../../src/engine/rain/rain-day-threshold.ts';
import { fromSi, toSi, type UnitSystem } from '../../src/engine/units.ts';
import { applyEdit } from '../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { PLAN_SCHEMAS, type Plan } from '../../src/plan/schema/plan-schema.ts';
import { mapQuantities, type SchemaNode } from '../../src/plan/schema/walk.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { expectClose } from '../support/expect-close.ts';
import { metricGarden, mixedGarden, oneBed, shrubs, tomatoes, zone } from '../support/small-plans.ts';

/** The plan in the other units to the last digit, unrounded. */
function inUnits(plan: Plan, units: UnitSystem): Plan {
  const schema = PLAN_SCHEMAS[plan.units] as unknown as SchemaNode;
  const convert = (value: number, quantity: Parameters<typeof toSi>[1]) =>
    fromSi(toSi(value, quantity, plan.units), quantity, units);
  return { ...mapQuantities(schema, plan, convert), units };
}

describe('one plan in both unit systems', () => {
  it('is the same garden to 1e-12', () => {
    fc.assert(
      fc.property(arbitraryPlan({ mostWeeks: 20 }), (plan) => {
        const [other, own] = [inUnits(plan, plan.units === 'us' ? 'metric' : 'us'), plan].map(gardenOf) as [
          Garden,
          Garden,
        ];
        expectClose(compared(other), compared(own), 1e-12);
        // Found step by step from the pressures of the lines: their last digits are those of the steps.
        expectClose(solvedFigures(other), solvedFigures(own), 1e-9);
        // Counted from another depth, by a distribution of rain depths: of a day that is rarely so deep few digits are left.
        const [otherDays, ownDays] = [other, own].map(({ site }) => site.climate.rainDays);
        expect(otherDays?.length).toBe(ownDays?.length);
        otherDays?.forEach((days, month) => {
          expect(days).toBeCloseTo(ownDays?.[month] as number, 6);
        });
      }),
      { numRuns: 100 },
    );
  });
});

/** What follows from the pressure along a line. */
const solvedFigures = ({ zones }: Garden) =>
  zones.map(({ efficiency, efficiencyBasis, plantings }) => ({
    efficiency: efficiencyBasis === 'computed-uniformity' ? efficiency : undefined,
    flows: plantings.map(({ flows }) => flows),
  }));

function compared(garden: Garden): unknown {
  const zones = garden.zones.map((zone) => ({
    ...zone,
    efficiency: zone.efficiencyBasis === 'computed-uniformity' ? 0 : zone.efficiency,
    plantings: zone.plantings.map((planting) => ({ ...planting, flows: [] })),
  }));
  // Years of days are texts of figures, which are rounded with their units.
  const { years: _years, climate: ofSite, ...site } = garden.site;
  const { rainDays: _rainDays, ...climate } = ofSite;
  return withoutColdDigits({ ...garden, site: { ...site, climate }, zones });
}

/** Temperatures rounded to a billionth of a degree: near zero they lose digits when their zero is shifted. */
function withoutColdDigits(part: unknown, key = ''): unknown {
  if (typeof part === 'number') return /Temperature|dewPoint/.test(key) ? Math.round(part * 1e9) / 1e9 + 0 : part;
  if (part instanceof Map) return new Map([...part].map(([day, value]) => [day, withoutColdDigits(value, key)]));
  if (Array.isArray(part)) return part.map((value) => withoutColdDigits(value, key));
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(Object.entries(part).map(([name, value]) => [name, withoutColdDigits(value, name)]));
}

describe('a garden made again keeps what did not change', () => {
  const before = mixedGarden();
  const garden = gardenOf(before);

  it('everything, where nothing did', () => {
    const again = gardenOf(before);
    expect(again.site).toBe(garden.site);
    expect(again.observed).toBe(garden.observed);
    expect(again.supply).toBe(garden.supply);
    again.zones.forEach((same, index) => {
      expect(same).toBe(garden.zones[index]);
    });
  });

  /** After an edit: which parts are other objects, and which zones. */
  function changedBy(edit: Edit, plan = before): string[] {
    const first = gardenOf(plan);
    const next = gardenOf(applyEdit(plan, edit));
    const parts = (['site', 'observed', 'supply'] as const).filter((part) => next[part] !== first[part]);
    return [...parts, ...next.zones.filter((after) => !first.zones.includes(after)).map(({ id }) => id)];
  }

  it.each<[string, Edit, string[]]>([
    ['minutes by hand', { type: 'set-minutes', zone: 'beds', week: '2027-08-02', minutes: 50 }, ['beds']],
    ['minutes run', { type: 'set-minutes-run', zone: 'containers', week: '2027-08-02', minutes: 50 }, ['containers']],
    ['a week’s rain', { type: 'set-week-rain', week: '2027-08-02', rain: 1 }, ['observed']],
    ['a day’s weather', { type: 'set-day-weather', day: '2027-08-02', weather: { rain: 1 } }, ['observed']],
    ['a zone’s name', { type: 'change-zone', zone: 'beds', change: { name: 'Raised beds' } }, ['beds']],
    ['a planting', { type: 'change-planting', zone: 'beds', planting: 'shrubs', change: { target: 0.5 } }, ['beds']],
    ['the latitude', { type: 'change-site', change: { latitude: 38 } }, ['site']],
    ['the climate', { type: 'set-climate', climate: { ...before.site.climate, source: 'Elsewhere' } }, ['site']],
    ['the way of crediting rain', { type: 'change-site', change: { rain: { method: 'fao' } } }, ['site']],
    ['the site’s soil', { type: 'change-site', change: { soil: 'clay' } }, ['beds', 'containers']],
    ['the site’s exposure in words', { type: 'change-site', change: { exposure: 'Sunny' } }, []],
    ['the allowance', { type: 'change-supply', change: { allowance: { perWeek: 5 } } }, ['supply']],
    [
      'the hours of the window',
      { type: 'change-supply', change: { window: { weekdays: ['mon', 'wed', 'fri', 'sun'], hoursPerDay: 1 } } },
      ['supply'],
    ],
    [
      'the days of the window',
      { type: 'change-supply', change: { window: { hoursPerDay: 4 } } },
      ['supply', 'beds', 'containers'],
    ],
    ['the plan’s name', { type: 'rename-plan', name: 'Another' }, []],
    ['the season', { type: 'set-season', season: { firstDay: '2027-04-05', weeks: 31 } }, ['beds', 'containers']],
    ['the order of zones', { type: 'move-zone', zone: 'beds', to: 1 }, []],
    ['another zone', { type: 'remove-zone', zone: 'containers' }, []],
  ])('but for %s', (_name, edit, changed) => {
    expect(changedBy(edit)).toEqual(changed);
  });

  it('a planting of a zone that changed elsewhere', () => {
    const first = gardenOf(before).zones[0];
    const next = gardenOf(applyEdit(before, { type: 'set-minutes', zone: 'beds', week: '2027-08-02', minutes: 50 }));
    expect(next.zones[0]?.plantings).toBe(first?.plantings);
    const renamed = gardenOf(applyEdit(before, { type: 'change-zone', zone: 'beds', change: { name: 'Raised beds' } }));
    expect(renamed.zones[0]?.plantings[0]).toBe(first?.plantings[0]);
  });

  it('two plans with the same zone do not get each other’s', () => {
    const beds = zone({ plantings: [shrubs()] });
    const clay = gardenOf(oneBed({ zones: [beds], site: { ...oneBed().site, soil: 'clay' } }));
    const loam = gardenOf(oneBed({ zones: [beds] }));
    expect([clay.zones[0]?.soil.texture, loam.zones[0]?.soil.texture]).toEqual(['clay', 'loam']);
  });

  it('in a plan without observations as well', () => {
    expect(gardenOf(oneBed()).observed).toBe(gardenOf(oneBed()).observed);
    const plan = oneBed({ log: { weeks: { '2027-06-07': { rain: 1 } } } });
    const other = oneBed({ log: { weeks: { '2027-06-14': { rain: 1 } } } });
    const { observed } = gardenOf(plan);
    gardenOf(other);
    expect(gardenOf(plan).observed).toBe(observed);
  });
});

describe('the parts of a garden', () => {
  it('season, site, supply and observations of a US plan in SI', () => {
    const { span, site, supply, observed } = gardenOf(mixedGarden());
    // 5 April 2027 is day 20,913 since 1970: 57 years with 14 leap days are 20,819, and 94 more.
    expect(span).toEqual({ firstDay: 20_913, weeks: 30 });
    expect(site.climate.etoMm?.[0]).toBeCloseTo(1.5 * 25.4, 12);
    expect(site).toMatchObject({
      latitudeDeg: 37.77,
      rain: { method: 'balance', fraction: 0.25, runoffFraction: 0 },
    });
    // A bucket of 5 gal in 60 s is 5 gpm, of which 80 % are planned on; 1 gal is 3.785411784 L exactly.
    expect(supply.sources[0]).toMatchObject({ from: 20_913, name: 'Hose bib' });
    expect(supply.sources[0]?.flowLpm).toBeCloseTo(0.8 * 5 * 3.785411784, 12);
    expect(supply.sources[1]?.flowLpm).toBeCloseTo(8 * 3.785411784, 12);
    expect(supply.sources[1]?.from).toBe(20_913 + 57);
    expect(supply.allowanceLitresPerWeek).toBeCloseTo(600 * 3.785411784, 9);
    // Monday, Wednesday, Friday, Sunday.
    expect(supply.windowWeekdays).toBe(0b1010101);
    expect(observed.days.get(20_913 + 16)).toEqual({ rainMm: 0.05 * 25.4, etoMm: 0.11 * 25.4 });
    expect(observed.weeks.get(20_913 + 28)?.rainMm).toBeCloseTo(0.3 * 25.4, 12);
  });

  it('what is known of the place and its gauges, and nothing of what is not', () => {
    const plan = mixedGarden();
    expect(Object.keys(gardenOf(plan).site).sort()).toEqual(['climate', 'latitudeDeg', 'rain']);
    const gauged = {
      ...plan.site,
      elevation: 100,
      windHeight: 30,
      setting: 'coastal',
      missingWeather: 'penman-monteith',
    } as const;
    // A foot is 0.3048 m exactly.
    expect(gardenOf({ ...plan, site: gauged }).site).toMatchObject({
      elevationM: expect.closeTo(30.48, 12),
      windHeightM: expect.closeTo(9.144, 12),
      setting: 'coastal',
      whenIncomplete: 'penman-monteith',
    });
  });

  it('temperatures of a metric plan as they are', () => {
    const { climate } = gardenOf(metricGarden()).site;
    expect(climate.minTemperatureC).toEqual(metricGarden().site.climate.minTemperature);
    expect(climate).not.toHaveProperty('etoMm');
  });

  it('a plan without a supply has no limit', () => {
    expect(gardenOf(oneBed()).supply).toEqual({ sources: [], windowWeekdays: 127, windowHoursPerDay: 24 });
  });

  it('choices lie in the week that holds their day, whatever weekday the season begins on', () => {
    const plan = oneBed({
      season: { firstDay: '2027-06-09', weeks: 4 },
      choices: { beds: { '2027-06-15': { minutes: 10 }, '2027-06-16': { minutes: 20, openDays: { tomatoes: 2 } } } },
      log: { runs: { beds: { '2027-07-06': 30, '2027-06-22': 40 } } },
    });
    expect(gardenOf(plan).zones[0]?.choices).toEqual(
      new Map<number, unknown>([
        [0, { minutes: 10 }],
        [1, { minutes: 20, openDays: new Map([['tomatoes', 2]]), minutesRun: 40 }],
        [3, { minutesRun: 30 }],
      ]),
    );
  });

  it('what ran by day lies on the day of its week, with its sum', () => {
    const plan = oneBed({
      season: { firstDay: '2027-06-09', weeks: 4 },
      zones: [zone({ plantings: [tomatoes(), shrubs()] })],
      log: {
        runs: {
          beds: {
            '2027-06-20': {
              days: { '2027-06-22': { minutes: 12.5 }, '2027-06-16': { minutes: 30, open: ['shrubs', 'tomatoes'] } },
            },
            '2027-06-30': { days: {} },
          },
        },
      },
    });
    expect(gardenOf(plan).zones[0]?.choices).toEqual(
      new Map<number, unknown>([
        [
          1,
          {
            minutesRun: 42.5,
            runs: new Map<number, unknown>([
              [0, { minutes: 30, open: new Set(['shrubs', 'tomatoes']) }],
              [6, { minutes: 12.5 }],
            ]),
          },
        ],
        [3, { minutesRun: 0, runs: new Map() }],
      ]),
    );
  });

  it('a total says the day that it was read through, where the plan does', () => {
    const log = { weeks: { '2027-06-07': { rain: 1, rainThrough: '2027-06-09' }, '2027-06-14': { rain: 2 } } };
    expect(gardenOf(oneBed({ log })).observed.weeks).toEqual(
      new Map([
        [dayNumber('2027-06-07'), { rainMm: 25.4, rainThrough: dayNumber('2027-06-09') }],
        [dayNumber('2027-06-14'), { rainMm: 50.8 }],
      ]),
    );
  });

  it('forecasts are in order of issue', () => {
    const log = {
      forecasts: [
        { issued: '2027-06-09', days: { '2027-06-09': { rain: 1 } } },
        { issued: '2027-06-08', days: { '2027-06-08': { eto: 0.1 }, '2027-06-10': { rain: 0, eto: 0.2 } } },
      ],
    };
    expect(gardenOf(oneBed({ log })).observed.forecasts).toEqual([
      {
        issued: dayNumber('2027-06-08'),
        days: new Map([
          [dayNumber('2027-06-08'), { etoMm: 2.54 }],
          [dayNumber('2027-06-10'), { rainMm: 0, etoMm: 5.08 }],
        ]),
      },
      { issued: dayNumber('2027-06-09'), days: new Map([[dayNumber('2027-06-09'), { rainMm: 25.4 }]]) },
    ]);
    expect(gardenOf(oneBed()).observed).not.toHaveProperty('forecasts');
  });

  it('real seasons are days in a row, in order, and rain days as they are', () => {
    const { site } = oneBed();
    const rainDays = [10, 9, 9, 6, 3, 1, 0.3, 0.5, 1, 4, 8, 10];
    const years = {
      source: 'invented',
      stretches: [
        { from: '2013-01-01', rain: '0 - 10000', eto: '500 1000 -' },
        { from: '2012-06-01', rain: '0', eto: '1000' },
      ],
    };
    const garden = gardenOf(oneBed({ site: { ...site, climate: { ...site.climate, rainDays }, years } }));
    expect(garden.site.climate.rainDays).toEqual(rainDays);
    expect(garden.site.years).toEqual({
      source: 'invented',
      stretches: [
        { firstDay: dayNumber('2012-06-01'), rainMm: Float64Array.of(0), etoMm: Float64Array.of(2.54) },
        {
          firstDay: dayNumber('2013-01-01'),
          rainMm: Float64Array.of(0, Number.NaN, 25.4),
          etoMm: Float64Array.of(1.27, 2.54, Number.NaN),
        },
      ],
    });
    expect(gardenOf(oneBed()).site).not.toHaveProperty('years');
  });

  it('rain days from 1 mm on become those from 0.25 mm on', () => {
    const { site, ...plan } = metricGarden();
    const rainDays = [15, 13, 14, 12, 8, 6, 3, 4, 6, 12, 16, 16];
    const daysAt = (rainDayThreshold: number) => {
      const climate = { ...site.climate, rainDays, rainDayThreshold };
      return gardenOf({ ...plan, site: { ...site, climate } }).site.climate.rainDays;
    };
    expect(daysAt(0.25)).toEqual(rainDays);
    expect(daysAt(1)).toEqual(
      rainDays.map((days, month) =>
        rainDaysAtLeast025Mm(
          days,
          1,
          site.climate.rain[month] ?? 0,
          [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month] ?? 0,
        ),
      ),
    );
    expect(daysAt(1)?.every((days, month) => days > (rainDays[month] ?? 0))).toBe(true);
  });
});
