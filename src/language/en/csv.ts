/** Tables of other programs: headings that are written and read, and what is wrong with a row. */
import type { WeekMeasure } from '../../engine/week-measures.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const csv = {
  headings: { zone: 'Zone', planting: 'Planting', measure: 'Measure', unit: 'Unit', season: 'Season' },
  measures: { volume: 'Water to apply', minutes: 'Minutes to run', rain: 'Rain counted' } satisfies Readonly<
    Record<WeekMeasure, string>
  >,
  /**
   * What heads a column of daily weather, without the unit that it may end with. Case, accents, spaces and marks do not count; of two columns the
   * one whose word stands first here is read. English words are read beside those of every other language.
   */
  weather: {
    date: ['date', 'day'],
    rain: ['rain', 'rainfall', 'rain total', 'total rain', 'precipitation', 'prcp', 'precip'],
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
    date: (example: string) => `this is no day. Write days alike, best as year-month-day, such as ${example}.`,
    dateTwice: ({ number }: Format, line: number) => `line ${number(line)} has this day already.`,
    rain: ({ number }: Format, low: number, high: number, unit: string) =>
      `use rain from ${number(low)} to ${number(high)} ${unit}.`,
    temperature: ({ number }: Format, low: number, high: number, unit: string) =>
      `use a temperature from ${number(low)} to ${number(high)} ${unit}.`,
    highBelowLow: 'the highest temperature is below the lowest.',
    highBelowLowOfDay: 'the highest temperature is below the lowest, together with what the plan has for that day.',
  },
};

export const csvWords = area('csv', csv);
