/** Sheets of paper: what each is called and says, and the choice of one. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { ShortCause } from '../../explain/review/season-review.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const paper = {
  title: 'Print',
  what: 'What to print',
  kinds: {
    shed: 'One week, for the shed door',
    weeks: 'Four weeks',
    season: 'The season',
    zone: 'One zone',
    review: 'The season in review',
    attention: 'Attention',
  },
  week: 'Week',
  zone: 'Zone',
  size: 'Paper',
  sizes: { letter: 'Letter', a4: 'A4' },
  direction: 'Direction',
  directions: { upright: 'Upright', across: 'Across' },
  preview: 'Pages as they will be printed',
  pages: ({ count }: Format, pages: number) => count(pages, { one: 'page', other: 'pages' }),
  print: 'Print',
  close: 'Close',

  page: ({ number }: Format, page: number, pages: number) => `Page ${number(page)} of ${number(pages)}`,
  printed: ({ day }: Format, today: DayNumber) => `Printed ${day(today, 'full')}.`,
  tick: ['Tick when run.', 'Not as planned?', 'Write the minutes on the line.'],
  head: {
    zone: 'Zone',
    start: 'Start',
    run: 'Run',
    week: 'Week',
    amount: 'Water',
    rain: 'Rain counted',
    ran: 'Really run',
  },
  everyDay: 'every day',
  minuteUnit: 'min',
  cycles: ({ count, duration }: Format, cycles: number, pauseMinutes: number) =>
    `${count(cycles, { one: 'cycle', other: 'cycles' })}, ${duration(pauseMinutes)} pause`,
  /** Before the minutes of one of them. */
  times: ({ number }: Format, cycles: number) => `${number(cycles)} \u00d7 `,
  was: ({ minuteCount }: Format, minutes: number) => `was ${minuteCount(minutes)}`,
  wasInAll: ({ minuteCount }: Format, now: number, before: number) =>
    `${minuteCount(now)} in all, was ${minuteCount(before)}`,
  shutOff: (planting: string) => `${planting} shut-off`,
  open: 'open',
  shut: 'shut',
  held: 'hold',
  setByHand: 'set by hand',
  rest: 'no run',
  closed: 'closed',
  nothingPlanted: 'nothing planted',
  rainRead: 'Rain read',
  rainUnit: (unit: string) => `(${unit}) each morning`,
  /** Beside a row's name. */
  inUnit: (unit: string) => `(${unit})`,
  notes: 'Notes',
  garden: 'All zones',
  eto: 'Reference ET',
  rain: 'Rain',
  plantings: 'Plantings',
  wateringDays: ({ weekdays }: Format, firstDay: DayNumber, mask: number) => `Waters on ${weekdays(firstDay, mask)}.`,
  /** Watering days a week, where they differ by month or by a restriction. */
  wateringDaysVary: ({ count, number }: Format, fewest: number, most: number) =>
    `Waters on ${fewest === most ? '' : `${number(fewest)} to `}${count(most, { one: 'day', other: 'days' })} a week, as each week says.`,
  planting: ({ quantity }: Format, name: string, areaM2: number, shutOff: string) =>
    [name, quantity(areaM2, 'area'), ...(shutOff === '' ? [] : [shutOff])].join(', '),
  hasShutOff: 'with a shut-off',
  noTrouble: 'Nothing needs attention.',
  seasonOf: ({ days }: Format, first: DayNumber, last: DayNumber) => days(first, last, 'full'),
  /** `unit`: of volume. */
  seasonKey: (unit: string) =>
    `In each cell: minutes in the week, and below them the water (${unit}). A line under the minutes: set by hand. A dash: no run.`,
  /** The season in review. `unit`: of volume. */
  review: {
    title: 'The season in review',
    planned: (unit: string) => `Planned (${unit})`,
    run: (unit: string) => `Run (${unit})`,
    needed: (unit: string) => `Needed at the meter (${unit})`,
    rain: (unit: string) => `Rain counted (${unit})`,
    short: 'Days short',
    key: 'Planned: without what was logged. Run: as logged, and as planned where nothing was. Needed at the meter: what would have brought every planting to its goal, week by week; what one week lacked, the next needs again. Run by area: over the most ground planted in one week. Days short: at least one planting lacked water.',
    rainFell: ({ quantity }: Format, mm: number, usualMm: number) =>
      `Rain: ${quantity(mm, 'depth')}; usual for these weeks: ${quantity(usualMm, 'depth')}.`,
    shortDays: ({ count }: Format, days: number) =>
      days === 0 ? 'No day was short.' : `Short on ${count(days, DAYS)}.`,
    worstTitle: 'The worst weeks, and why',
    none: 'No planting lacked water.',
    worst: ({ count, quantity }: Format, { week, zone, days, unmetLitres, cause, since }: WorstWeekSaid) =>
      `${week}: the plants lacked ${quantity(unmetLitres, 'volume')}, most of all in ${zone} (${count(days, DAYS)}). ${since === undefined ? 'Why: ' : `The soil had dried since ${since}: `}${cause}`,
    causes: {
      closed: 'the zone was closed.',
      'ran-less': 'it ran less than planned.',
      'set-less': 'the minutes set by hand were too few.',
      cut: 'water was cut.',
      'no-water': 'no line gave these plants water.',
      dry: 'it was drier than usual.',
      shared: 'its minutes suit another planting of the zone better, or the runs were too small.',
    } satisfies Readonly<Record<ShortCause, string>>,
  },
};

const DAYS = { one: 'day', other: 'days' };

export interface WorstWeekSaid {
  readonly week: string;
  readonly zone: string;
  readonly days: number;
  readonly unmetLitres: number;
  /** One of those below. */
  readonly cause: string;
  /** The week of the cause, where it is an earlier one. */
  readonly since: string | undefined;
}

export const paperWords = area('paper', paper);
