/** Plans with one fault each, by what is wrong with them. */
import type { PlanSite, PlanYears } from '../../src/plan/schema/plan-schema.ts';
import { metricGarden, mixedGarden, oneBed, shrubs, tomatoes, zone } from './small-plans.ts';

export type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } & Record<string, unknown> : T;

/** A mixed garden, spoiled. */
export function spoiled(spoil: (plan: Writable<ReturnType<typeof mixedGarden>>) => void): unknown {
  const plan = structuredClone(mixedGarden()) as Writable<ReturnType<typeof mixedGarden>>;
  spoil(plan);
  return plan;
}

/** The site of one bed, with real seasons. */
export function withYears(stretches: PlanYears['stretches']): PlanSite {
  return { ...oneBed().site, years: { source: 'invented', stretches } };
}

/** A value that its field does not take. */
export const FAULTY_FIELDS = {
  'a wrong type': mixedGarden({ season: { firstDay: '2027-04-05', weeks: 'thirty' as unknown as number } }),
  'a negative area': oneBed({ zones: [zone({ plantings: [tomatoes({ extent: { kind: 'area', area: -120 } })] })] }),
  'an unknown class': oneBed({
    zones: [zone({ plantings: [shrubs({ need: { kind: 'class', class: 'thirsty' as 'low' } })] })],
  }),
  'not a number': oneBed({ zones: [zone({ timerStepMinutes: Number.NaN })] }),
  'a day that the calendar does not have': oneBed({ season: { firstDay: '2027-02-30', weeks: 4 } }),
  'a day of another age': oneBed({ season: { firstDay: '0227-04-05', weeks: 4 } }),
  'a month of the climate': oneBed({
    site: { ...oneBed().site, climate: { source: '', eto: Array(12).fill(1), rain: [...Array(11).fill(0), -1] } },
  }),
  'a line of a planting': oneBed({
    zones: [
      zone({
        plantings: [tomatoes({ lines: [{ kind: 'solid' }, { kind: 'point', from: '2027-06-09', flow: 0, count: 2 }] })],
      }),
    ],
  }),
  'a kind of layout that is none': spoiled((plan) =>
    Object.assign(plan.zones[0]?.plantings[1]?.lines[0] ?? {}, { layout: { kind: 'spiral' } }),
  ),
  'a weekday that is none': oneBed({ zones: [zone({ wateringDays: ['mon', 'someday' as 'tue'] })] }),
  'a name without a letter': oneBed({ zones: [zone({ name: '' })] }),
  'a name with a tab': oneBed({ zones: [zone({ name: 'Beds\t=1+1' })] }),
  'an id that is none': oneBed({ zones: [zone({ id: 'Raised beds' })] }),
  'the id that every object has': oneBed({ zones: [zone({ id: 'constructor' })] }),
  'a rain day more than a month has': oneBed({
    site: { ...oneBed().site, climate: { ...oneBed().site.climate, rainDays: [32, ...Array(11).fill(8)] } },
  }),
  'a rain day of no rain': oneBed({
    site: { ...oneBed().site, climate: { ...oneBed().site.climate, rainDayThreshold: 0 } },
  }),
  'starts that are no number': oneBed({ zones: [zone({ startsADay: 0 })] }),
  'minutes of a week that it does not have': oneBed({ log: { runs: { beds: { '2027-06-07': 10_081 } } } }),
  'a run that is neither minutes nor days': oneBed({
    log: { runs: { beds: { '2027-06-07': 'all' as unknown as number } } },
  }),
  'minutes of a day that it does not have': oneBed({
    log: { runs: { beds: { '2027-06-07': { days: { '2027-06-08': { minutes: 1441 } } } } } },
  }),
  'a run of a day without minutes': oneBed({
    log: { runs: { beds: { '2027-06-07': { days: { '2027-06-08': {} as { minutes: number } } } } } },
  }),
  'a field that no run has': oneBed({
    log: { runs: { beds: { '2027-06-07': { days: { '2027-06-08': { minutes: 5, litres: 3 } } } } } } as object,
  }),
  'a forecast of less than no rain': oneBed({
    log: { forecasts: [{ issued: '2027-06-08', days: { '2027-06-09': { rain: -1 } } }] },
  }),
  'an empty text of days': oneBed({ site: withYears([{ from: '2012-01-01', rain: '', eto: '0' }]) }),
  'a field that no plan has': spoiled((plan) => Object.assign(plan.season, { colour: 'red' })),
};

/** Parts that do not agree. */
export const FAULTY_RELATIONS = {
  'a rule that names a planting of elsewhere': mixedGarden({
    zones: [zone({ rule: { kind: 'planting', planting: 'pots' } }), ...mixedGarden().zones.slice(1)],
    choices: {},
  }),
  'choices for a zone that is not there': oneBed({ choices: { cellar: { '2027-06-07': { minutes: 3 } } } }),
  'minutes run in a zone that is not there': oneBed({ log: { runs: { cellar: { '2027-06-07': 3 } } } }),
  'open days of an unknown planting': oneBed({ choices: { beds: { '2027-06-07': { openDays: { roses: 2 } } } } }),
  'a choice before the season': oneBed({ choices: { beds: { '2027-06-06': { minutes: 3 } } } }),
  'a run after the season': oneBed({ log: { runs: { beds: { '2027-07-05': 30 } } } }),
  'two choices of one week': oneBed({
    choices: { beds: { '2027-06-07': { minutes: 3 }, '2027-06-13': { minutes: 4 } } },
  }),
  'two totals of one week': oneBed({ log: { weeks: { '2027-05-31': { rain: 1 }, '2027-06-01': { rain: 2 } } } }),
  'a total read through a day of another week': oneBed({
    log: { weeks: { '2027-06-07': { rain: 1, rainThrough: '2027-06-14' } } },
  }),
  'a day read through without a total': oneBed({
    log: { weeks: { '2027-06-07': { eto: 1, rainThrough: '2027-06-09' } } },
  }),
  'a run of a day in another week': oneBed({
    log: { runs: { beds: { '2027-06-07': { days: { '2027-06-14': { minutes: 5 } } } } } },
  }),
  'an open shut-off of an unknown planting': oneBed({
    log: { runs: { beds: { '2027-06-07': { days: { '2027-06-08': { minutes: 5, open: ['tomatoes', 'roses'] } } } } } },
  }),
  'two forecasts of one day': oneBed({
    log: {
      forecasts: [
        { issued: '2027-06-08', days: {} },
        { issued: '2027-06-08', days: {} },
      ],
    },
  }),
  'a forecast of a day before it': oneBed({
    log: { forecasts: [{ issued: '2027-06-08', days: { '2027-06-07': { rain: 1 } } }] },
  }),
  'more rain days than February has': oneBed({
    site: { ...oneBed().site, climate: { ...oneBed().site.climate, rainDays: [31, 30, ...Array(10).fill(8)] } },
  }),
  'a figure of a day that is none': oneBed({
    site: withYears([{ from: '2012-01-01', rain: '0 3.5 10', eto: '1 2 3' }]),
  }),
  'two spaces between days': oneBed({ site: withYears([{ from: '2012-01-01', rain: '0  10', eto: '1 2 3' }]) }),
  'less than no rain on a day': oneBed({ site: withYears([{ from: '2012-01-01', rain: '0 -10', eto: '1 2' }]) }),
  'more ETo than a day can have': oneBed({ site: withYears([{ from: '2012-01-01', rain: '0 0', eto: '1700 17000' }]) }),
  'more rain than a day can have': oneBed({ site: withYears([{ from: '2012-01-01', rain: '787402 0', eto: '0 0' }]) }),
  'fewer days of ETo than of rain': oneBed({ site: withYears([{ from: '2012-01-01', rain: '0 0 0', eto: '1 2' }]) }),
  'two stretches with one day': oneBed({
    site: withYears([
      { from: '2012-01-03', rain: '0', eto: '0' },
      { from: '2012-01-01', rain: '0 0 0', eto: '1 2 3' },
    ]),
  }),
  'more than sixty years': oneBed({
    site: withYears(
      Array.from({ length: 61 }, (_, year) => ({
        from: `${1950 + year}-01-01`,
        rain: Array(year < 60 ? 365 : 61)
          .fill('0')
          .join(' '),
        eto: Array(year < 60 ? 365 : 61)
          .fill('0')
          .join(' '),
      })),
    ),
  }),
  'two zones with one id': oneBed({ zones: [zone(), zone({ name: 'Other beds', plantings: [] })] }),
  'two plantings with one id, in two zones': oneBed({
    zones: [zone(), zone({ id: 'more', plantings: [tomatoes({ name: 'Cherry tomatoes' })] })],
  }),
  'days in the ground that run backwards': oneBed({
    zones: [zone({ plantings: [shrubs({ inGround: { from: '2027-06-20', to: '2027-06-10' } })] })],
  }),
  'a crop that is pulled before it is planted': oneBed({
    zones: [zone({ plantings: [tomatoes({ inGround: { to: '2027-05-01' } })] })],
  }),
  'a line that ends before it is laid': oneBed({
    zones: [zone({ plantings: [tomatoes({ lines: [{ kind: 'solid', from: '2027-06-20', to: '2027-06-10' }] })] })],
  }),
  'a pressure and a height of water': oneBed({
    supply: { sources: [{ name: 'Barrel', pressure: 2, waterHeight: 3 }] },
  }),
  'a restriction that runs backwards': oneBed({
    supply: { sources: [], restrictions: [{ from: '2027-06-20', to: '2027-06-10', weekdays: ['mon'] }] },
  }),
  'a cut of no amount': oneBed({
    supply: { sources: [], cuts: [{ from: '2027-06-07', to: '2027-06-20' }] },
  }),
  'a cut of two amounts': oneBed({
    supply: { sources: [], cuts: [{ from: '2027-06-07', to: '2027-06-20', share: 0.2, perWeek: 50 }] },
  }),
  'two sources from one day': oneBed({
    supply: {
      sources: [
        { name: 'Hose', from: '2027-06-08' },
        { name: 'Main', from: '2027-06-08' },
      ],
    },
  }),
  'more in the tank than it holds': oneBed({ supply: { sources: [], tank: { capacity: 50, start: 60 } } }),
  'a climate without reference ET or temperatures': oneBed({
    site: {
      ...oneBed().site,
      climate: { source: '', rain: Array(12).fill(1), minTemperature: Array(12).fill(40) },
    },
  }),
  'a lowest temperature above the highest of its month': metricGarden({
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
  'a day colder at its warmest than at its coldest': oneBed({
    log: { days: { '2027-06-08': { minTemperature: 70, maxTemperature: 60 } } },
  }),
};
