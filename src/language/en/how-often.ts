/** How often a zone should be watered: days a week that fit, beside those of the plan. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' };
const MONTHS = { one: 'month', other: 'months' };
const RUNS = { one: 'run', other: 'runs' };

export const howOften = {
  enough: 'How often: the plan’s days are enough',
  /** Months in which they are fewer than fit, 0 = January. */
  more: ({ count, month }: Format, months: readonly number[]) =>
    `How often: more days fit in ${months.length === 1 ? months.map(month).join() : count(months.length, MONTHS)}`,
  help: 'Days a week that fit. Water at hand is what roots may use before the plants go short; the planting whose water lasts least counts.',
  /** `runs` a day: more than one where one filling does not last a day. */
  month: ({ count, month }: Format, of: number, days: number, runs: number) =>
    `${month(of)}: ${count(days, DAYS)} a week${runs > 1 ? `, ${count(runs, RUNS)} a day` : ''}`,
  planned: ({ count }: Format, days: number) => `; the plan has ${count(days, DAYS)}`,
  why: ({ quantity }: Format, planting: string, atHandMm: number, useMm: number) =>
    `${planting}: ${quantity(atHandMm, 'depth')} at hand, ${quantity(useMm, 'depth')} used a day. `,
  bounded: ({ count }: Format, days: number) => `Water may run on ${count(days, DAYS)} only.`,
  effect: (
    { count, duration, quantity }: Format,
    of: {
      readonly shortDaysBefore: number;
      readonly shortDaysAfter: number;
      readonly litresMore: number;
      readonly minutesMore: number;
    },
  ) => {
    const change = (amount: number, text: string) => `${text} ${amount < 0 ? 'less' : 'more'}`;
    const water = change(of.litresMore, quantity(Math.abs(of.litresMore), 'volume'));
    const time = change(of.minutesMore, duration(Math.abs(of.minutesMore)));
    const short =
      of.shortDaysBefore === of.shortDaysAfter
        ? `plants are as often short of water as now (${count(of.shortDaysBefore, DAYS)})`
        : `short of water on ${count(of.shortDaysAfter, DAYS)} instead of ${count(of.shortDaysBefore, DAYS)}`;
    return `With the days that fit: ${short}. Over the season: ${water}, ${time}.`;
  },
  apply: 'Water on these days',
};

export const howOftenWords = area('howOften', howOften);
