/** What is wrong with a plan, its file or an edit: where it is, what stands there, and what was expected. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { JsonToken } from '../../plan/reading/json-tokens.ts';
import type { CountUnit } from '../../plan/schema/quantity.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import { isoDay, isoWeekOf } from '../format/iso-day.ts';

const DAYS = { one: 'day', other: 'days' };
const CHARACTERS = { one: 'character', other: 'characters' };

export const faults = {
  /** Names in a place: by name, by number in the list, by an id that nothing has. */
  zone: {
    name: (name: string) => `Zone “${name}”`,
    number: numbered('Zone'),
    id: (id: string) => `Zone with the id “${id}”`,
  },
  planting: {
    name: (name: string) => `planting “${name}”`,
    number: numbered('planting'),
    id: (id: string) => `planting with the id “${id}”`,
  },
  source: {
    name: (name: string) => `source “${name}”`,
    number: numbered('source'),
    id: (id: string) => `source “${id}”`,
  },
  place: {
    plan: 'The plan',
    season: 'Season',
    site: 'Site',
    climate: 'Climate',
    years: 'Real seasons',
    stretch: ({ number }: Format, stretch: number) => `Real seasons, stretch ${number(stretch)}`,
    supply: 'Supply',
    source: (source: string) => `Supply, ${source}`,
    window: 'Watering window',
    tank: 'Tank',
    planting: (zone: string, planting: string) => `${zone}, ${planting}`,
    line: ({ number }: Format, zone: string, planting: string, line: number) =>
      `${zone}, ${planting}, line ${number(line)}`,
    allChoices: 'Choices by zone',
    zoneChoices: (zone: string) => `${zone}: choices by week`,
    /** `day`: ISO, or as it is written. */
    choice: (format: Format, zone: string, day: string) => `${zone}, ${isoWeekOf(format, day)}`,
    openDays: (format: Format, zone: string, day: string, planting: string) =>
      `${zone}, ${isoWeekOf(format, day)}: open days of ${planting}`,
    log: 'Log',
    zoneRuns: (zone: string) => `${zone}: minutes run`,
    run: (format: Format, zone: string, day: string) => `${zone}, ${isoWeekOf(format, day)}: minutes run`,
    dayRun: (format: Format, zone: string, day: string) => `${zone}, run of ${isoDay(format, day)}`,
    dayWeather: (format: Format, day: string) => `Weather of ${isoDay(format, day)}`,
    weekWeather: (format: Format, day: string) => `Weather of the ${isoWeekOf(format, day)}`,
    /** `issued`: ISO, or as it is written. */
    forecast: (format: Format, issued: string) => `Forecast of ${isoDay(format, issued)}`,
    forecastDay: (format: Format, issued: string, day: string) =>
      `Forecast of ${isoDay(format, issued)} for ${isoDay(format, day)}`,
    file: 'The file',
    fileAt: ({ number }: Format, line: number, column: number) =>
      `The file, line ${number(line)}, column ${number(column)}`,
  },
  /** Fields inside a part of the plan. */
  inside: (part: string, fields: string) => `${part}: ${fields}`,
  /** One of a list, from 1. */
  item: ({ number }: Format, place: string, item: number) => `${place}, ${number(item)}`,
  ofMonth: (field: string, month: string) => `${field} in ${month}`,

  found: {
    nothing: 'nothing',
    text: (text: string) => `“${text}”`,
    notANumber: 'not a number',
    true: 'true',
    false: 'false',
    null: 'null',
    emptyList: 'an empty list',
    list: ({ number }: Format, length: number) => `a list of ${number(length)}`,
    fields: 'a group of fields',
    type: (type: string) => `a ${type}`,
    emptyFile: 'an empty file',
    characters: ({ count }: Format, characters: number) => count(characters, CHARACTERS),
    endOfFile: 'the end of the file',
    lineBreak: 'a line break',
    controlCharacter: 'a control character',
    moreFaults: ({ count }: Format, more: number) => count(more, { one: 'more fault', other: 'more faults' }),
    noPlan: 'none is open',
    readOnly: 'can only be looked at',
    noSeason: 'no season',
    noPlanHere: 'none here',
  },

  expected: {
    /** Bounds as a person says them, the second with its unit. */
    number: (least: string, most: string) => `a number from ${least} to ${most}`,
    wholeNumber: (least: string, most: string) => `a whole number from ${least} to ${most}`,
    above: (bound: string) => `a number greater than ${bound}`,
    text: ({ count }: Format, most: number) => `a text of at most ${count(most, CHARACTERS)}`,
    textNotEmpty: ({ count }: Format, most: number) => `a text of 1 to ${count(most, CHARACTERS)}`,
    name: ({ count }: Format, most: number) =>
      `a name of 1 to ${count(most, CHARACTERS)} in one line, without tabs, with something that shows`,
    id: 'an id of lower-case letters, digits and hyphens, such as raised-beds',
    day: (firstYear: number, lastYear: number) =>
      `a day as year-month-day, such as 2027-04-05, in the years ${firstYear} to ${lastYear}`,
    calendarDay: 'a day that the calendar has',
    timeOfDay: 'a time on the 24-hour clock, such as 05:00',
    choice: ({ either }: Format, options: readonly string[]) => either(options),
    numberOrWeekdays: ({ number }: Format, least: number, most: number) =>
      `a whole number from ${number(least)} to ${number(most)}, or a list of weekdays`,
    minutesOrDays: ({ number }: Format, least: number, most: number) =>
      `the minutes of the week, a number from ${number(least)} to ${number(most)}, or a group of days`,
    list: 'a list',
    listTooLong: ({ number }: Format, most: number) => `at most ${number(most)} in the list`,
    listTooShort: ({ number }: Format, least: number) => `at least ${number(least)} in the list`,
    listOfMonths: 'twelve numbers, January first',
    fields: (known: readonly string[]) => `a group of fields: ${known.join(', ')}`,
    kinds: ({ either }: Format, kinds: readonly string[]) => `a group of fields of the kind ${either(kinds)}`,
    entriesByDay: 'entries by day, such as 2027-04-05',
    entriesByMonth: 'entries by month, 1 to 12',
    entriesById: 'entries by id',
    monthNumber: 'the number of a month, 1 to 12',
    unknownField: (known: readonly string[]) => `no field of this name; known are ${known.join(', ')}`,

    greaterThan: {
      'month-highest': (most: string) => `at most the highest of its month, ${most}`,
      'month-length': (most: string) => `at most the days of its month, ${most}`,
      'day-highest': (most: string) => `at most the highest of the day, ${most}`,
      capacity: (most: string) => `at most what the tank holds, ${most}`,
    },
    climateWithoutEto: 'reference ET by month, or else both the lowest and the highest temperature by month',
    dailyFigures: ({ number }: Format, place: number) =>
      `whole numbers with one space between, or - for a missing day; this is number ${number(place)}`,
    dailyFigureTooGreat: ({ number, quantity }: Format, place: number, most: number, mostMm: number) =>
      `at most ${number(most)}, which is ${quantity(mostMm, 'depth')}; this is number ${number(place)}`,
    unequalDays: ({ count }: Format, rain: number) => `as many days as rain has: ${count(rain, DAYS)}`,
    tooManyYears: ({ count }: Format, most: number) =>
      `at most ${count(most, { one: 'year', other: 'years' })} of days`,
    stretchOverlaps: ({ number }: Format, other: number) => `a day after those of stretch ${number(other)}`,
    sourceSameDay: ({ number }: Format, other: number, isFirst: boolean) =>
      `a day of its own: source ${number(other)} serves from ${isFirst ? 'the first day' : 'that day'} too`,
    pressureTwice: 'no height of water where the pressure is given: one of the two',
    cutAmount: 'a share that is taken away, or the water that is left for a week: one of the two',
    idTaken: (other: string) => `an id of its own: “${other}” has it too`,
    /** `other`: ISO. */
    weekTwice: (format: Format, other: string) => `one entry a week: ${isoDay(format, other)} lies in the same week`,
    outsideWeek: ({ day }: Format, first: DayNumber, last: DayNumber) =>
      `a day of its week, ${day(first, 'full')} to ${day(last, 'full')}`,
    throughWithoutRain: 'no day where there is no rain total',
    issuedTwice: ({ number }: Format, other: number) =>
      `one forecast a day of issue: forecast ${number(other)} has it too`,
    beforeIssue: ({ day }: Format, issued: DayNumber) => `a day not before the forecast, ${day(issued, 'full')}`,
    outsideSeason: ({ day }: Format, first: DayNumber, last: DayNumber) =>
      `a day of the season, ${day(first, 'full')} to ${day(last, 'full')}`,
    zoneUnknown: 'a zone of this plan',
    plantingUnknown: 'a planting of this zone',
    endsBeforeStart: {
      'planting-day': ({ day }: Format, start: DayNumber) => `a day not before the planting day, ${day(start, 'full')}`,
      'first-day': ({ day }: Format, start: DayNumber) => `a day not before the first day, ${day(start, 'full')}`,
    },

    notAPlan: 'a plan: one group of fields',
    tooDeep: ({ number }: Format, most: number) => `fields at most ${number(most)} levels deep`,
    reservedName: 'another name',
    newerVersion: ({ number }: Format, newest: number) =>
      `version ${number(newest)} or older: a newer edition of this kit wrote this file, and can open it`,
    olderVersion: ({ number }: Format, oldest: number) => `version ${number(oldest)}, the oldest there is`,
    damagedVersion: ({ number }: Format, version: number) => `a plan of version ${number(version)} that is whole`,
    moreFaults: 'the faults above fixed first',

    tooLong: ({ count }: Format, most: number) => `at most ${count(most, CHARACTERS)}`,
    emptyFile: 'a plan',
    json: {
      value: 'a value: a number, a text in "double quotes", a list or a group',
      'field-name': 'the name of a field in "double quotes"',
      colon: 'a colon (:) between a field’s name and its value',
      'comma-or-brace': 'a comma (,) before the next field, or a closing }',
      'comma-or-bracket': 'a comma (,) before the next entry, or a closing ]',
      'nothing-more': 'nothing after the last bracket of the plan',
      rest: 'the rest of the plan: the file was not saved or copied whole',
      'plain-quotes': 'plain double quotes (") around a text',
      'no-comment': 'no comment: take it out',
      'no-comma': 'no comma before a closing bracket: take it out',
      'plan-file': 'a plan file: this looks like a web page',
      'closing-quote': 'a closing quote (")',
      'closing-quote-on-line': 'a closing quote (") on the same line',
      escape: 'one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000 after a backslash',
      'no-leading-zero': 'a number that does not begin with 0',
      digit: 'a digit',
      'digit-after-point': 'a digit after the decimal point',
      'digit-after-e': 'a digit after the e',
    } satisfies Record<JsonToken, string>,
    fileUnreachable: 'a file that can be reached: check the address and the connection, then load the page again',
    fileUnreadable: 'a file that can be read: choose it again',
    fileRefused: (status: number) => `a file that the server gives out; it answered ${status}`,

    lineUnknown: ({ number }: Format, lines: number) => `one of its lines, 1 to ${number(lines)}`,
    noLines: 'a planting that has lines',
    editUnknown: 'an edit of a known kind',
    editIncomplete: (field: string) => `an edit that says its “${field}”`,
    noPlan: 'an open plan',
    readOnly: 'a plan that can be edited',
    notComputed: 'a plan whose season can be computed',
    unanswered: 'a plan around this view',
  },

  /** Behind a number, and behind the greater bound of a range. */
  units: {
    degrees: { one: 'degree', other: 'degrees' },
    seconds: { one: 'second', other: 'seconds' },
    minutes: { one: 'minute', other: 'minutes' },
    minutesPerWeek: { one: 'minute a week', other: 'minutes a week' },
    hours: { one: 'hour', other: 'hours' },
    hoursPerDay: { one: 'hour a day', other: 'hours a day' },
    days: { one: 'day', other: 'days' },
    startsPerDay: { one: 'start a day', other: 'starts a day' },
    daysPerWeek: { one: 'day a week', other: 'days a week' },
    weeks: { one: 'week', other: 'weeks' },
    rows: { one: 'row', other: 'rows' },
    loops: { one: 'loop', other: 'loops' },
    emitters: { one: 'emitter', other: 'emitters' },
    microSprays: { one: 'micro-spray', other: 'micro-sprays' },
    plants: { one: 'plant', other: 'plants' },
    'MJ/m²': { other: 'MJ/m²' },
  } satisfies Record<Exclude<CountUnit, 'percent'>, { readonly one?: string; readonly other: string }>,
};

function numbered(word: string) {
  return ({ number }: Format, position: number) => `${word} ${number(position)}`;
}

export const faultsWords = area('faults', faults);
