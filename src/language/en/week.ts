/** All that the week's list says. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Refill } from '../../engine/season/planting-week.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const TOO_LITTLE =
  'less than half a step of the timer is needed, and no planting that it is timed for dries out before the next watering.';

export const week = {
  heading: ({ number }: Format, weekNumber: number, weeks: number) =>
    `Water in the garden: week ${number(weekNumber)} of ${number(weeks)}`,
  steps: 'Choose a week',
  previous: 'Week before',
  next: 'Week after',
  thisWeek: 'This week',
  total: ({ minutes, quantity }: Format, allMinutes: number, litres: number) =>
    `All zones: ${minutes(allMinutes)}, ${quantity(litres, 'volume')}`,
  /** What to do in a zone, first of all. */
  runDaily: ({ minutes }: Format, dayMinutes: number) => `${minutes(dayMinutes)} every day`,
  runOn: ({ minutes, weekdays }: Format, dayMinutes: number, weekStart: DayNumber, mask: number) =>
    `${minutes(dayMinutes)} on ${weekdays(weekStart, mask)}`,
  cycles: ({ count, minutes }: Format, cycles: number, cycleMinutes: number) =>
    `In ${count(cycles, { one: 'cycle', other: 'cycles' })} of ${minutes(cycleMinutes)}.`,
  soak: 'Let it soak in between.',
  /** What the zone gets, by where its minutes come from. */
  amounts: {
    computed: ({ quantity }: Format, litres: number) => quantity(litres, 'volume'),
    'hand-set': ({ quantity }: Format, litres: number) => `${quantity(litres, 'volume')}, set by hand`,
    run: ({ quantity }: Format, litres: number) => `${quantity(litres, 'volume')}, as run`,
  },
  nothing: 'No watering: rain and the soil’s store carry it.',
  /** Of watering days without a run. */
  skippedOn: ({ weekdays }: Format, weekStart: DayNumber, mask: number) =>
    `Skipped on ${weekdays(weekStart, mask)}: ${TOO_LITTLE}`,
  skipped: `Skipped all week: ${TOO_LITTLE}`,
  anew: ({ weekdays }: Format, weekStart: DayNumber, mask: number) =>
    `Decided anew on ${weekdays(weekStart, mask)}, from what was known by then.`,
  unknown: 'Not known: the climate of this week is not filled in.',
  closed: 'Closed this week: do not water.',
  off: 'Nothing is in the ground.',
  /** Of a shut-off. */
  shut: 'shut all week',
  openAll: 'open on every watering day',
  openOn: ({ weekdays }: Format, weekStart: DayNumber, mask: number) => `open on ${weekdays(weekStart, mask)} only`,
  /** Of a planting that is watered deep and seldom, in a week in which it was due. */
  refill: {
    filled: 'filled this week',
    'partly-filled': 'left partly filled, still due',
    due: 'due for a refill, not filled this week',
  } satisfies Readonly<Record<Refill, string>>,
  rain: ({ quantity }: Format, depthMm: number, litres: number) =>
    `Rain counted: ${quantity(depthMm, 'depth')}, which saves ${quantity(litres, 'volume')}`,
  noRain: 'No rain counted',
  /** The whole week's log. */
  logAll: 'Log the week as planned',
  /** Of a past week of which nothing is logged. */
  assumed: 'Assumed as planned: nothing is logged.',
  log: {
    title: 'Log day by day',
    minutes: (zone: string, weekday: string) => `Minutes run on ${weekday}: ${zone}`,
    open: (planting: string) => `${planting} open`,
    openOn: (planting: string, weekday: string) => `${planting} open on ${weekday}`,
  },
  rainEntry: {
    title: 'Rain in the gauge',
    through: 'read through',
  },
  forecast: {
    title: 'Forecast',
    about: ({ day }: Format, today: DayNumber) =>
      `Mornings from ${day(today)} on expect it. What is read later counts in its place.`,
    day: 'Day',
    rainHead: 'Rain',
    etoHead: 'Reference ET',
    rain: (weekday: string) => `Rain forecast for ${weekday}`,
    eto: (weekday: string) => `Reference ET forecast for ${weekday}`,
  },
  done: (zone: string) => `Done: ${zone} was run as planned`,
  doneShort: 'Done as planned',
  states: {
    dry: 'The soil ends the week dry',
    short: 'Short of water',
    over: 'Some drains past the roots',
  },
};

export const weekWords = area('week', week);
