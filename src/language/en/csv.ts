/** Tables of other programs: headings that are written and read, and what is wrong with a row. */
import type { MinutesOrigin } from '../../engine/season/season.ts';
import type { WeekMeasure } from '../../engine/week-measures.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const csv = {
  headings: { zone: 'Zone', planting: 'Planting', measure: 'Measure', unit: 'Unit', season: 'Season' },
  measures: { volume: 'Water to apply', minutes: 'Minutes to run', rain: 'Rain counted' } satisfies Readonly<
    Record<WeekMeasure, string>
  >,
  /** What a table of everything has beside them. */
  more: {
    rainFell: 'Rain',
    eto: 'Reference ET',
    rainFrom: 'Where the rain comes from',
    etoFrom: 'Where the reference ET comes from',
    demand: 'Water that the plants use',
    needed: 'Needed at the roots',
    received: 'Irrigation kept',
    drained: 'Drained past the roots',
    wateringDays: 'Watering days',
    flow: 'Flow while it runs',
    /** 0 to 1, of a zone's water. */
    cutShare: 'Share that a cut takes',
    cutAsked: 'Water that a cut asks for',
    cutUntaken: 'Water that a cut could not take',
    state: 'State',
    mark: 'Where the run comes from',
    note: 'Note',
    mulch: 'Mulch',
    /** 0 to 1, of a planting's ground. */
    wettedShare: 'Wetted share',
    wettedWidth: 'Width that an emitter wets',
    rootDepth: 'Root depth',
    wettedDepth: 'Depth that a run wets',
    potVolume: 'Volume of one container',
    leaching: 'Leaching fraction',
    rest: 'Why no water is asked for',
  },
  /** Of the rain or the reference ET of a day. */
  origins: {
    typed: 'typed',
    'observed-week': 'total of the week',
    file: 'file',
    service: 'weather service',
    estimate: 'estimate over a gap',
    temperatures: 'low and high',
    forecast: 'forecast',
    normals: 'usual weather',
  },
  originDays: ({ count }: Format, origin: string, days: number) =>
    `${origin}: ${count(days, { one: 'day', other: 'days' })}`,
  /** `cover`: share of the ground, 0 to 1. */
  mulches: { organic: ({ percent }: Format, cover: number) => `organic, ${percent(cover)}`, plastic: 'plastic' },
  rests: { leafless: 'no leaves', frozen: 'frozen ground', 'dry-down': 'left to dry before harvest' },
  marks: {
    computed: 'computed',
    'hand-set': 'set by hand',
    run: 'really run',
    closed: 'closed',
    /** Of a past week of which nothing is logged. */
    assumed: 'assumed as computed',
    skipped: ({ weekdays }: Format, weekStart: number, mask: number) => `skipped on ${weekdays(weekStart, mask)}`,
  } satisfies Readonly<Record<MinutesOrigin, string>> & Readonly<Record<string, unknown>>,
  /**
   * What heads a column of daily weather, without the unit that it may end with. Case, accents, spaces and marks do not count; of two columns the
   * one whose word stands first here is read. English words are read beside those of every other language.
   */
  weather: {
    date: ['date', 'day'],
    rain: [
      'rain',
      'rainfall',
      'rain total',
      'total rain',
      'precipitation',
      'total precipitation',
      'precipitation total',
      'prcp',
      'precip',
      'total precip',
      'precip total',
    ],
    min: [
      'temp min',
      'tmin',
      'min temp',
      'min temperature',
      'temperature min',
      'lowest temperature',
      'low',
      'lowest',
      'min',
    ],
    max: [
      'temp max',
      'tmax',
      'max temp',
      'max temperature',
      'temperature max',
      'highest temperature',
      'high',
      'highest',
      'max',
    ],
  },
  /** `found`: what stands there, empty for nothing. `fault`: one of those below. */
  rowFault: ({ number }: Format, line: number, found: string, fault: string) =>
    found === '' ? `Line ${number(line)}, empty: ${fault}` : `Line ${number(line)}, “${found}”: ${fault}`,
  faults: {
    /** `weekStart`: year-month-day. */
    minutesHeadings: (weekStart: string) =>
      `use the heading Zone, and the first day of each week as a heading, such as ${weekStart}.`,
    weatherHeadings: 'use the heading Date, and at least one of Rain, Low and High.',
    columnTwice: 'another column is of the same. Delete one of the two.',
    headingUnit: {
      rain: 'this is no unit of rain. Use mm or in.',
      temperature: 'this is no unit of a temperature. Use °C or °F.',
    },
    tooManyCells: ({ count }: Format, cells: number, headings: number) =>
      `the row has ${count(cells, { one: 'cell', other: 'cells' })} for ${count(headings, { one: 'heading', other: 'headings' })}. Where commas part the cells, use a decimal point.`,
    hourly: 'the file has several times of a day. Add them up to days first.',
    weekTwice: 'use each week of the season once.',
    weekOutside: 'this is not a week of the season.',
    zoneUnknown: 'no zone of the plan has this name.',
    zoneShared: ({ count }: Format, zones: number) =>
      `${count(zones, { one: 'zone has', other: 'zones have' })} this name. Rename all but one.`,
    zoneTwice: ({ number }: Format, line: number) => `line ${number(line)} has this zone already.`,
    minutes: ({ number }: Format, most: number) => `use minutes of a week, from 0 to ${number(most)}.`,
    weekClosed: ({ weekOf }: Format, firstDay: number) => `the zone is closed in the ${weekOf(firstDay)}.`,
    weekRun: ({ weekOf }: Format, firstDay: number) =>
      `the plan has the minutes really run in the ${weekOf(firstDay)}.`,
    readByDay: ({ weekOf }: Format, firstDay: number) =>
      `the plan has a reading of each day in the ${weekOf(firstDay)}. Change those.`,
    noteLong: ({ number }: Format, most: number) => `use at most ${number(most)} letters.`,
    date: (example: string) => `this is no day. Write days alike, best as year-month-day, such as ${example}.`,
    dateTwice: ({ number }: Format, line: number) => `line ${number(line)} has this day already.`,
    rain: ({ number }: Format, low: number, high: number, unit: string) =>
      `use rain from ${number(low)} to ${number(high)} ${unit}.`,
    eto: ({ number }: Format, low: number, high: number, unit: string) =>
      `use a reference ET from ${number(low)} to ${number(high)} ${unit}.`,
    temperature: ({ number }: Format, low: number, high: number, unit: string) =>
      `use a temperature from ${number(low)} to ${number(high)} ${unit}.`,
    highBelowLow: 'the highest temperature is below the lowest.',
    highBelowLowOfDay: 'the highest temperature is below the lowest, together with what the plan has for that day.',
  },
};

export type Csv = typeof csv;

export const csvWords = area('csv', csv);
