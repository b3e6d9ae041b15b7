/** All that this week says: what to run today, the rain, the week day by day. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Refill } from '../../engine/season/planting-week.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const ZONES = { one: 'zone', other: 'zones' };

export const week = {
  /** Above the day. */
  place: ({ number }: Format, garden: string, weekNumber: number, weeks: number) =>
    `${garden}, week ${number(weekNumber)} of ${number(weeks)}`,
  /** Another week than today's. */
  another: 'This is not the week of today.',
  before: ({ day }: Format, firstDay: DayNumber) => `The season starts on ${day(firstDay)}.`,
  after: ({ day }: Format, lastDay: DayNumber) => `The season ended on ${day(lastDay)}.`,
  steps: 'Choose a week',
  previous: 'Week before',
  next: 'Week after',
  thisWeek: 'Back to this week',

  today: {
    title: 'Run today',
    why: 'Why?',
    whyOf: (zone: string) => `Why? ${zone}`,
    ends: ({ time, quantity }: Format, endMinute: number, litres: number) =>
      `ends ${time(endMinute)}, ${quantity(litres, 'volume')}`,
    nothing: 'Nothing to run today.',
    /** The next day of the week on which something runs. */
    nextRun: ({ weekday, count }: Format, day: DayNumber, zones: number) =>
      `Next: ${weekday(day)}, ${count(zones, ZONES)}.`,
    everyDay: 'every day',
    also: ({ weekdays }: Format, weekStart: DayNumber, mask: number) => `also ${weekdays(weekStart, mask)}`,
    /** Of cycles: `2 × 12 min`. */
    cycles: ({ number, minutes }: Format, cycles: number, cycleMinutes: number) =>
      `${number(cycles)}\u00a0×\u00a0${minutes(cycleMinutes)}`,
    starts: ({ list, time }: Format, startMinutes: readonly number[]) => list(startMinutes.map((each) => time(each))),
    pause: ({ duration }: Format, pauseMinutes: number) => `${duration(pauseMinutes)} pause.`,
    ran: ({ minutes }: Format, ran: number, planned: number) => `ran ${minutes(ran)}, planned ${minutes(planned)}`,
    done: (zone: string) => `Done: ${zone}`,
    allDone: 'All done as planned',
    late: ({ duration }: Format, over: number) =>
      `The runs end ${duration(over)} after the watering window. Check the window, or attention.`,
    usualStart: ({ time }: Format, minute: number) =>
      `Start times count from ${time(minute)}. Set when your window opens in Garden, Water supply.`,
    setByHand: 'set by hand',
    /** Of minutes by hand between what the timer can be set to; `amount`: what to set on each day. */
    between: ({ minutes }: Format, stepMinutes: number, amount: string) =>
      `set by hand between the timer’s steps of ${minutes(stepMinutes)}: set ${amount}`,
  },
  shutOff: {
    /** Of one planting; today first. `openMask`: other days of the week on which it is open. */
    openAll: 'open every time',
    shutAll: 'shut all week',
    openToday: ({ weekdays }: Format, weekStart: DayNumber, shutMask: number) =>
      `open today, shut ${weekdays(weekStart, shutMask)}`,
    openTodayOnly: 'open today',
    shutToday: ({ weekdays }: Format, weekStart: DayNumber, openMask: number) =>
      `shut today, open ${weekdays(weekStart, openMask)}`,
    openOn: ({ weekdays }: Format, weekStart: DayNumber, mask: number) => `open ${weekdays(weekStart, mask)}`,
    /** A shut-off is turned the evening before. */
    tonight: 'Turn tonight, for tomorrow',
    open: ({ list }: Format, names: readonly string[]) => `Open ${list(names)}.`,
    shut: ({ list }: Format, names: readonly string[]) => `Shut ${list(names)}.`,
  },
  held: {
    title: 'Hold at the timer today',
    why: 'The soil still has enough, so no run is needed.',
    runAnywayOf: (zone: string) => `Run anyway: ${zone}`,
  },

  rain: {
    title: 'Rain this week',
    none: 'not read yet',
    enter: 'Enter rain',
    done: 'Done',
    lastDays: 'Rain of the last seven days',
    onlyTotal: 'Only a total',
    byDay: 'Day by day',
    /** Over the tubes; `in`. */
    each: (unit: string) => `Each day (${unit})`,
    total: 'Rain in the gauge this week',
    through: 'read through',
    of: (day: string) => `Rain on ${day}`,
    more: (day: string) => `More rain on ${day}`,
    less: (day: string) => `Less rain on ${day}`,
    /** A whole number of inches that no day brings. */
    readAs: (text: string) => `Read as ${text}.`,
    usual: ({ count }: Format, days: number, month: string) =>
      `Rain usually falls on ${count(days, { one: 'day', other: 'days' })} in a week of ${month}.`,
  },
  forecast: {
    title: 'Enter a forecast',
    says: ({ list }: Format, days: readonly string[]) => `Forecast: ${list(days)}.`,
    onDay: ({ weekday, quantity }: Format, day: DayNumber, rainMm: number) =>
      `${quantity(rainMm, 'depth')} on ${weekday(day)}`,
    counts: 'Coming mornings expect it. Read rain counts in its place.',
    about: ({ day }: Format, today: DayNumber) =>
      `Mornings from ${day(today)} on expect it. What is read later counts in its place.`,
    day: 'Day',
    rainHead: 'Rain',
    etoHead: 'Reference ET',
    rain: (weekday: string) => `Rain forecast for ${weekday}`,
    eto: (weekday: string) => `Reference ET forecast for ${weekday}`,
  },

  table: {
    title: 'The whole week',
    sum: ({ days, quantity }: Format, start: DayNumber, litres: number) =>
      `${days(start, start + 6)}, ${quantity(litres, 'volume')}`,
    zone: 'Zone',
    /** Of one day's box, said aloud. */
    box: {
      none: (day: string) => `${day}: no run`,
      'to-run': (day: string, amount: string) => `${day}: to run, ${amount}`,
      done: (day: string, amount: string) => `${day}: done, ${amount}`,
      changed: (day: string, amount: string) => `${day}: ran ${amount}, not as planned`,
      skipped: (day: string) => `${day}: skipped, not needed`,
    },
    key: { 'to-run': 'to run', done: 'done', changed: 'minutes really run', skipped: 'skipped, not needed' },
    off: 'Nothing is in the ground.',
    closed: 'Closed: do not water.',
    nothing: 'No run: rain and the soil carry it.',
    unknown: 'Not known: the climate of this week is not filled in.',
    differs: ({ minutes, weekdays }: Format, start: DayNumber, parts: readonly { mask: number; minutes: number }[]) =>
      parts.map((part) => `${weekdays(start, part.mask)} ${minutes(part.minutes)}`).join(', '),
    closedWeek: 'This week is closed.',
    assumed: 'Not closed: taken as run as planned.',
    states: { dry: 'The soil ends the week dry', short: 'Short of water' },
  },
  /** Of a planting that is watered deep and seldom, in a week in which it was due. */
  refill: {
    filled: 'filled this week',
    'partly-filled': 'left partly filled, still due',
    due: 'due for a refill, not filled this week',
  } satisfies Readonly<Record<Refill, string>>,

  close: 'Close the week',
  closeFrom: ({ weekday }: Format, day: DayNumber) => `from ${weekday(day)}`,
  closeLast: ({ days }: Format, start: DayNumber) => `Close last week, ${days(start, start + 6)}`,
  print: 'Print for the shed door',
  printSays: 'preview first',
};

export const weekWords = area('week', week);
