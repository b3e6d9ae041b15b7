/** All that the files' element says. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const files = {
  title: 'Files and paper',
  planTitle: 'The plan',
  planSays: 'One file holds the garden, its season and all that was set by hand.',
  open: 'Open a plan…',
  save: 'Save the plan',
  workbook: {
    title: 'A workbook for the treasurer',
    says: 'A spreadsheet (.xlsx) that computes on: change rain, minutes, areas or the price of water, and see what follows.',
    save: 'Save the workbook',
    writing: 'Writing the workbook…',
  },
  saveTitle: 'The season as a table',
  saveSays:
    'A CSV file for any spreadsheet: a row for each zone and figure, a column for each week. Change its minutes there, and import it again below.',
  extent: 'What to write',
  extents: {
    shown: 'What the sheet shows',
    all: 'Everything: weather, states, notes',
    volume: { us: 'Gallons by zone', metric: 'Liters by zone' },
    minutes: 'Minutes by zone',
    rain: 'Rain by zone',
  },
  saveTable: 'Save as CSV',
  /** Name of the file; `plan`: that of the plan's own. */
  seasonFile: (plan: string) => `${plan}-season.csv`,
  importTitle: 'Import a table',
  importSays:
    'A CSV file or workbook (.xlsx): a season saved here, with its minutes, rain, reference ET and notes, or one of these. You see what would change before anything does.',
  /** What can be imported. */
  kinds: { minutes: 'Minutes set by hand', season: 'The season', rain: 'Rain log', weather: 'Daily weather' },
  /** What each has to look like. */
  layouts: {
    /** `weekStart`: year-month-day. */
    minutes: (weekStart: string) =>
      `a column Zone, and one for each week with its first day as heading, such as ${weekStart}`,
    rain: 'the columns Date and Rain',
    weather: 'the columns Date, Low and High, and Rain if you read it',
  },
  layout:
    'Days as year-month-day and a decimal point are sure to be read. Others are told from the whole table. A heading may name its unit, as in Rain (mm).',
  choose: 'Choose a file…',
  drop: 'or drop it here',
  pasteInstead: 'Paste it instead',
  pasted: 'The table, with its headings',
  read: 'Read the table',
  reading: 'Reading the file…',
  named: (file: string) => `“${file}”`,
  pastedTable: 'The pasted table',
  /** How a table is written. */
  form: {
    readAs: (parts: readonly string[]) => `Read with ${parts.join(', ')}.`,
    separators: {
      ',': 'commas between columns',
      ';': 'semicolons between columns',
      '\t': 'tabs between columns',
      '|': 'bars between columns',
    },
    decimals: { '.': 'a decimal point', ',': 'a decimal comma' },
    day: 'It has',
    days: {
      'year-month-day': 'days as year-month-day',
      'day-month-year': 'days as day-month-year',
      'month-day-year': 'days as month-day-year',
    },
    decimal: 'Its figures have',
    choose: 'Choose…',
  },
  twoReadings: (table: string) =>
    `${table} can be read in two ways. Choose below how it is written. Nothing has changed yet.`,
  /** Once a table is read. `kind`: one of those above; `table`: its name. */
  summary: ({ count }: Format, kind: string, table: string, rowCount: number, changeCount: number) =>
    `${kind}. ${table}: ${count(rowCount, rows)}, ${count(changeCount, changes)}.`,
  outside: ({ count }: Format, days: number) =>
    `${count(days, { one: 'day outside the season was', other: 'days outside the season were' })} left out.`,
  /** Of minutes between what a timer can be set to. */
  rounded: ({ count }: Format, figures: number) =>
    `${count(figures, { one: 'figure lies', other: 'figures lie' })} between the timer’s steps: what is taken is listed.`,
  notYet: 'Nothing has changed yet.',
  nothing: 'Nothing would change: the plan has these figures already, or the table has none for it.',
  unitsAsked: 'The figures are in',
  converted: (from: string, to: string) => `The figures are in ${from} and are converted to the plan’s ${to}.`,
  faultsTitle: ({ count }: Format, entries: number) =>
    `${count(entries, { one: 'entry cannot be read', other: 'entries cannot be read' })}`,
  more: ({ number }: Format, entries: number) => `And ${number(entries)} more.`,
  changesTitle: 'What would change',
  what: 'What',
  week: 'Week from',
  day: 'Day',
  now: 'Now',
  after: 'Then',
  computed: (minutes: string) => `${minutes}, computed`,
  byHand: (minutes: string) => `${minutes}, set by hand`,
  /** `written`: minutes of a week, as the table has them. */
  roundedFrom: ({ minutes, count }: Format, written: string, { stepMinutes, days, cycles }: SettableOn) =>
    `${written} in the table; the timer runs in steps of ${minutes(stepMinutes)}${cycles > 1 ? ` in each of ${count(cycles, CYCLES)}` : ''} on each of ${count(days, DAYS)}`,
  notObserved: 'not observed',
  closedThen: 'closed',
  wholeGarden: 'Weather',
  readings: {
    minutes: 'Minutes',
    minutesRun: 'Minutes really run',
    closed: 'Zone',
    note: 'Note',
    weekRain: 'Rain of the week',
    weekEto: 'Reference ET of the week',
    rain: 'Rain',
    minTemperature: 'Lowest temperature',
    maxTemperature: 'Highest temperature',
  },
  apply: 'Import these',
  applyRest: 'Import the readable rows',
  cancel: 'Cancel',
  close: 'Close',
  applied: ({ count }: Format, changeCount: number, table: string) =>
    `${table}: ${count(changeCount, { one: 'change imported', other: 'changes imported' })}.`,
  undone: ({ count }: Format, changeCount: number) =>
    `${count(changeCount, { one: 'change undone', other: 'changes undone' })}.`,
  undo: 'Undo',
  notImported: 'Nothing was imported. The plan is as it was.',
  /** Why a file was not read. `table`: its name. */
  refused: {
    empty: (table: string) => `${table} is empty. Choose a table with headings, as described above.`,
    large: (table: string) => `${table} is larger than 50 MB. Choose the table of one season.`,
    workbook: (table: string) =>
      `${table} is a workbook that cannot be read here. Save it as .xlsx or CSV in the spreadsheet, without a password, then choose that file.`,
    plan: (table: string) => `${table} is not a table. It looks like a plan: open it with the button further up.`,
    other: (table: string) => `${table} is not a table. Choose a CSV file or workbook, as described above.`,
    unreadable: (table: string) => `${table} could not be read. Choose it again.`,
  },
  unknown: ({ list }: Format, table: string, headings: readonly string[]) =>
    `${table} has the headings ${list(headings.map((heading) => `“${heading}”`))}. Use Zone and the first days of weeks, or Date and Rain, or Date, Low and High.`,
  noHeadings: (table: string) =>
    `${table} has no headings. Use Zone and the first days of weeks, or Date and Rain, or Date, Low and High.`,
  notFetched: 'The part that reads and writes tables could not be loaded. Check the connection, then try again.',
  review: {
    title: 'The season in review',
    says: 'At the end of a season: water planned, run and needed at the meter in each zone, rain, days short, and why the worst weeks were so. One page.',
    open: 'See and print the review…',
  },
  nextYear: {
    title: 'Next year’s plan',
    says: 'The same garden, a year on: say what stays, moves or ends. This year’s plan stays as it is.',
    open: 'Begin next year’s plan…',
  },
  paperTitle: 'On paper',
  paperSays:
    'This week for the shed door, four weeks, the season, one zone or the attention list, with cautions. You see the pages before you print. Your browser’s own print gives the view on screen.',
  print: 'Choose and preview…',
};

/** Steps of a timer, in equal cycles, on so many watering days. */
export interface SettableOn {
  readonly stepMinutes: number;
  readonly days: number;
  /** Of each day. */
  readonly cycles: number;
}

const DAYS = { one: 'day', other: 'days' };
const CYCLES = { one: 'cycle', other: 'cycles' };
const rows = { one: 'row', other: 'rows' };
const changes = { one: 'change', other: 'changes' };

export const filesWords = area('files', files, { extents: { volume: { metric: 'Litres by zone' } } });
