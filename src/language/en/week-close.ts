/** Closing a week: rain, what was run, the meter, a note, and what changes next. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

/** A change of one zone's next week. */
export interface NextWords {
  readonly zone: string;
  readonly minutes: { readonly before: number; readonly after: number };
  readonly days: { readonly before: number; readonly after: number };
}

const DAYS = { one: 'day', other: 'days' };

const runsOtherwise = ({ minutes, count }: Format, { zone, minutes: min, days }: NextWords): string => {
  if (days.after === 0) return `${zone} does not run`;
  if (days.before === 0) return `${zone} runs ${minutes(min.after)} on ${count(days.after, DAYS)}, not at all before`;
  if (min.before !== min.after) return `${zone} runs ${minutes(min.after)}, not ${minutes(min.before)}`;
  return `${zone} runs on ${count(days.after, DAYS)}, not ${count(days.before, DAYS)}`;
};

export const weekClose = {
  title: 'Close the week',
  back: 'Back',
  where: ({ days, number }: Format, start: DayNumber, week: number, weeks: number) =>
    `${days(start, start + 6)}, week ${number(week)} of ${number(weeks)}`,
  run: 'What was run',
  asPlanned: 'as planned',
  notYet: ({ count }: Format, runs: number) => `${count(runs, { one: 'run', other: 'runs' })} not ticked yet`,
  changed: ({ count }: Format, runs: number) => `as planned, ${count(runs, { one: 'run', other: 'runs' })} changed`,
  allAsPlanned: 'All as planned',
  /** One zone's day. */
  planned: ({ minutes }: Format, planned: number) => `planned ${minutes(planned)}`,
  notRun: 'Did not run',
  asPlannedAgain: 'As planned',
  days: (zone: string) => `Day of ${zone}`,
  minutes: (zone: string, day: string) => `Minutes run on ${day}: ${zone}`,
  fewer: 'Fewer minutes',
  more: 'More minutes',
  shutOff: (planting: string) => `Shut-off of ${planting}`,
  open: 'Open',
  shut: 'Shut',
  edit: (zone: string) => `Change what ran: ${zone}`,

  meter: 'Water meter',
  meterReading: ({ day }: Format, today: DayNumber) => `Reading on ${day(today)}`,
  meterFirst:
    'If you have a meter, enter what it shows. From the next reading on it is compared with what was expected.',
  meterSince: ({ quantity, day }: Format, used: number, since: DayNumber, expected: number) =>
    `${quantity(used, 'volume')} since ${day(since)}; ${quantity(expected, 'volume')} were expected.`,
  meterMeans: {
    same: 'That agrees.',
    more: ({ percent }: Format, share: number) =>
      `That is ${percent(share)} more. Check for a leak, a valve that stays open, or other water used on this meter.`,
    less: ({ percent }: Format, share: number) =>
      `That is ${percent(share)} less. Check for a clogged filter, low pressure, a valve that stays shut, or runs that did not happen.`,
    back: 'That is less than the reading before. Check the digits.',
  },
  note: 'Note',
  notePlaceholder: 'What should be remembered of this week?',

  next: {
    same: 'Next week stays as planned.',
    last: 'It is the last week of the season.',
    one: (format: Format, change: NextWords) => `Next week ${runsOtherwise(format, change)}; nothing else changes.`,
    two: (format: Format, one: NextWords, other: NextWords) =>
      `Next week ${runsOtherwise(format, one)}, and ${runsOtherwise(format, other)}; nothing else changes.`,
    more: (format: Format, change: NextWords, others: number) =>
      `Next week ${runsOtherwise(format, change)}, and ${format.number(others)} more zones change.`,
  },
  closeNow: 'Close the week',
  early: ({ weekday }: Format, last: DayNumber) =>
    `The week runs until ${weekday(last)}. Days to come are then logged as planned.`,
  done: 'The week is closed.',
  undo: 'Undo',
};

export const weekCloseWords = area('weekClose', weekClose);
