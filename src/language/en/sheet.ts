/** What the cells of the sheet show, and what is said of them. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Refill } from '../../engine/season/planting-week.ts';
import type { MinutesOrigin, State } from '../../engine/season/season.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' };
const WATERING_DAYS = { one: 'watering day', other: 'watering days' };

export const sheet = {
  rows: { eto: 'ETo', rain: 'Rain', total: 'All zones' },
  /** Headings over names, over the season's totals, and over this week. */
  headings: {
    month: 'Month',
    zone: 'Zone',
    season: 'Season',
    thisWeek: 'This week',
    /** Of a cell's figures: the small ones, then the large one above them. */
    units: {
      /** Of rain counted, beneath the volume. */
      rain: (unit: string) => `rain\u00a0(${unit})`,
      all: (volume: string, rain: string, minutes: string) => `${volume}; ${rain}, ${minutes}`,
    },
  },
  states: {
    dry: 'Dry',
    short: 'Short',
    over: 'Overwatered',
    met: 'Met',
    closed: 'Closed',
    off: 'Off',
  } satisfies Readonly<Record<State, string>>,

  cell: {
    /** In place of minutes. */
    closed: 'closed',
    skipped: 'skipped',
    /** What became of a refill that was due, with the part of it that arrived. */
    refill: {
      filled: () => 'filled',
      'partly-filled': (share: string) => `${share}, due`,
      due: () => 'due',
    } satisfies Readonly<Record<Refill, (share: string) => string>>,
    /** Days on which a shut-off is open, of the zone's watering days. */
    openDays: ({ number }: Format, open: number, of: number) => `${number(open)} of ${number(of)}`,
    /** Water against the need, beyond what is worth telling apart. */
    shareBeyond: ({ percent }: Format, share: number) => `>${percent(share)}`,
  },

  /** Under the name of a row. */
  detail: {
    daysAWeek: ({ count, number }: Format, fewest: number, most: number) =>
      `${fewest === most ? '' : `${number(fewest)} to `}${count(most, DAYS)} a\u00a0week`,
    withShutOff: (kind: string) => `${kind}, shut-off`,
    /** Behind a name: `Rain (in)`. */
    unit: (unit: string) => `(${unit})`,
    savedByRain: (unit: string) => `(${unit} saved by rain)`,
  },
  /** A row's name with its detail in one text. */
  nameWithDetail: (name: string, detail: string) => `${name}, ${detail}`,
  nameWithUnit: (name: string, unit: string) => `${name} ${unit}`,

  /** A cell's description: what it is of, a colon, clauses of what it shows, a note. */
  description: {
    whole: (of: string, clauses: readonly string[]) => `${of}: ${clauses.join('; ')}.`,
    withNote: (description: string, note: string) => `${description} Note: ${note}`,
    /** `when`: the week's name, or the whole season. */
    row: (name: string, when: string) => `${name}, ${when}`,
    planting: (name: string, zone: string, when: string) => `${name} in ${zone}, ${when}`,
    wholeSeason: 'whole season',
    run: {
      computed: ({ spelled, spelledMinutes }: Format, litres: number, minutes: number) =>
        `${spelled(litres, 'volume')}, ${spelledMinutes(minutes)}`,
      closed: ({ spelled, spelledMinutes }: Format, litres: number, minutes: number) =>
        `${spelled(litres, 'volume')}, ${spelledMinutes(minutes)}`,
      'hand-set': ({ spelled, spelledMinutes }: Format, litres: number, minutes: number) =>
        `${spelled(litres, 'volume')}, ${spelledMinutes(minutes)} set by hand`,
      run: ({ spelled, spelledMinutes }: Format, litres: number, minutes: number) =>
        `${spelled(litres, 'volume')}, ${spelledMinutes(minutes)} logged as run`,
    } satisfies Readonly<Record<MinutesOrigin, unknown>>,
    /** Of minutes by hand between what the timer can be set to; `setMinutes`: of a day. */
    between: ({ spelledMinutes }: Format, stepMinutes: number, setMinutes: number) =>
      `between the timer’s steps of ${spelledMinutes(stepMinutes)}: set ${spelledMinutes(setMinutes)} a day`,
    /** Where the days of a week differ. */
    runOn: ({ spelledMinutes, weekdays }: Format, minutes: number, weekStart: DayNumber, mask: number) =>
      `${spelledMinutes(minutes)} on ${weekdays(weekStart, mask)}`,
    skippedOn: ({ weekdays }: Format, weekStart: DayNumber, mask: number) =>
      `skipped on ${weekdays(weekStart, mask)}: less than half a step of the timer is needed`,
    rainCounted: ({ spelled }: Format, mm: number) => `${spelled(mm, 'depth')} of rain counted`,
    states: {
      dry: 'dry: past the allowed depletion by the end of the week',
      short: 'short of water on some days',
      over: 'overwatered: some drains past the roots',
      met: 'need met',
      closed: 'closed for the week',
      off: 'nothing in the ground',
    } satisfies Readonly<Record<State, string>>,
    received: ({ spelled }: Format, litres: number) => `received ${spelled(litres, 'volume')}`,
    needsNone: 'needed no water',
    /** `share`: the part that arrived, as it is written. */
    shareOfNeed: ({ spelled }: Format, share: string, neededLitres: number) =>
      `${share} of the ${spelled(neededLitres, 'volume')} needed at its roots`,
    shareOfSeason: (share: string) => `${share} of its need`,
    /** `days`: those on which it is open, named; empty for none. */
    shutOffOpen: ({ number, count }: Format, open: number, of: number, days: string) =>
      `shut-off open on ${number(open)} of ${count(of, WATERING_DAYS)}${days === '' ? '' : `: ${days}`}`,
    shutOffByHand: ({ number, count }: Format, open: number, of: number, days: string) =>
      `shut-off open on ${number(open)} of ${count(of, WATERING_DAYS)}, set by hand${days === '' ? '' : `: ${days}`}`,
    refill: {
      filled: 'filled this week',
      'partly-filled': 'left partly filled: a refill is still due',
      due: 'a refill is still due',
    } satisfies Readonly<Record<Refill, string>>,
    depth: ({ spelled }: Format, mm: number) => spelled(mm, 'depth'),
    fromNormals: 'from the normals',
    weekTotal: 'the week’s total set by hand',
    weekTotalThrough: ({ weekday }: Format, day: DayNumber) =>
      `the week’s total set by hand, read through ${weekday(day)}`,
    everyDayRead: 'from readings of every day',
    someDaysRead: ({ number, count }: Format, days: number, of: number) =>
      `from readings of ${number(days)} of ${count(of, DAYS)}, the rest from the normals`,
    volume: ({ spelled }: Format, litres: number) => `${spelled(litres, 'volume')} at the meter`,
    runTime: ({ spelledMinutes }: Format, minutes: number) => `${spelledMinutes(minutes)} of run time, zone after zone`,
    savedByRain: ({ spelled }: Format, litres: number) => `rain saved ${spelled(litres, 'volume')}`,
  },
  /** Of the field that a cell opens: what is typed there, and the cell's name. */
  entryLabel: {
    eto: (cell: string) => `Reference ET of the week: ${cell}`,
    rain: (cell: string) => `Rain of the week: ${cell}`,
    openDays: (cell: string) => `Days on which the shut-off is open: ${cell}`,
    volume: (cell: string) => `Volume of the week: ${cell}`,
    minutes: (cell: string) => `Minutes of the week: ${cell}`,
  },
  /** Beside a field while one types: what it would set. */
  hint: {
    /** `last`: the day through which the rain was read; undefined where it is all of the week's. */
    rain: ({ quantity, day }: Format, cell: string, mm: number, last: DayNumber | undefined) =>
      last === undefined
        ? `${cell}: ${quantity(mm, 'depth')} in the whole week.`
        : `${cell}: ${quantity(mm, 'depth')} through ${day(last, 'weekdayAndDay')}. The days after it stay usual.`,
    minutes: ({ minutes, count }: Format, cell: string, total: number, days: number) =>
      `${cell}: ${minutes(total)} in the week, ${count(days, WATERING_DAYS)} of ${minutes(total / days)}.`,
    openDays: ({ number, count }: Format, cell: string, open: number, of: number) =>
      `${cell}: shut-off open on ${number(open)} of ${count(of, WATERING_DAYS)}.`,
  },
  /** The same while it is on no cell. */
  entry: 'Entry',
  /** A week's heading where it is the one that today lies in. */
  thisWeek: (week: string) => `${week}, this week`,
  /** Of the button that folds a zone's plantings out. */
  plantingsOf: (zone: string) => `Plantings of ${zone}`,
};

export type SheetWords = typeof sheet;

export const sheetWords = area('sheet', sheet);
