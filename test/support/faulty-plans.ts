/** Plans with one fault each, by what is wrong with them. */
import { metricGarden, mixedGarden, oneBed, shrubs, tomatoes, zone } from './small-plans.ts';

export type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } & Record<string, unknown> : T;

/** A mixed garden, spoiled. */
export function spoiled(spoil: (plan: Writable<ReturnType<typeof mixedGarden>>) => void): unknown {
  const plan = structuredClone(mixedGarden()) as Writable<ReturnType<typeof mixedGarden>>;
  spoil(plan);
  return plan;
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
  'an id that is none': oneBed({ zones: [zone({ id: 'Raised beds' })] }),
  'the id that every object has': oneBed({ zones: [zone({ id: 'constructor' })] }),
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
  'two lines from one day': oneBed({
    zones: [zone({ plantings: [tomatoes({ lines: [{ kind: 'solid' }, { kind: 'solid' }] })] })],
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
