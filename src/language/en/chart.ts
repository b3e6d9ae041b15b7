/** All that the chart says. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const chart = {
  names: {
    demand: 'What the plants need',
    short: 'Short',
    fromSoil: 'From the soil',
    kept: 'Irrigation kept',
    notKept: 'Not kept',
    rain: 'Rain counted',
    tank: 'In the tank',
    allowance: 'On the meter',
    'weekly-allowance': 'On the meter in the week',
    /** What the lines of these are held against. */
    bound: { tank: 'Tank holds', allowance: 'Allowance', 'weekly-allowance': 'Allowance a week' },
  },
  /** Irrigation by then, L: as the meter has it, what of it stayed at the roots, and what did not. */
  atRoots: ({ quantity }: Format, metered: number, kept: number, notKept: number) =>
    `The meter and the sheet show ${quantity(metered, 'volume')} of irrigation by then: ${quantity(kept, 'volume')} kept at the roots; ${quantity(notKept, 'volume')} spread unevenly or drained past them.`,
  about:
    'Running totals: rain counted and irrigation kept, against what the plants would use. Irrigation kept and not kept come to what the meter shows.',
  whose: 'Water of',
  wholeGarden: 'Whole garden',
  noZone: 'Selected zone',
  table: 'The same figures as a table',
  week: 'Week',
  tableCaption: (unit: string) => `Running totals at the end of each week, in ${unit}`,
  selectWeek: ({ week }: Format, firstDay: DayNumber) => `Select week ${week(firstDay)}`,
  readWeeks: 'Weeks of the season: arrow keys move from week to week',
  byWeek: ({ week }: Format, firstDay: DayNumber) => `By the end of ${week(firstDay)}`,
  bySeasonEnd: ({ day }: Format, lastDay: DayNumber) => `By the season’s end, ${day(lastDay)}`,
  /** Of the season's strip. */
  strip: 'The season at a glance',
  thisWeek: 'This week',
  /** The curves in words, L. */
  stripSays: ({ quantity }: Format, finding: string, demand: number, rain: number, metered: number) =>
    `${finding}. The plants need ${quantity(demand, 'volume')}; ${quantity(rain, 'volume')} of rain is counted, and the meter shows ${quantity(metered, 'volume')} of irrigation.`,
  frameLabel: 'What the sheet shows: arrow keys move it, T goes to this week, Enter goes into the sheet',
  frame: ({ list }: Format, days: string, zones: readonly string[]) => `${days}, ${list(zones)}`,
  frameOfAll: (days: string) => `${days}, all zones`,
  /** The chart's title: what it shows, said in words. */
  finding: {
    /** Behind an amount: `where` of the sentences below, empty where it is spread. */
    nearlyAllIn: (zone: string) => ` (nearly all in ${zone})`,
    noClimate: 'Not known yet: the climate is not filled in',
    nothingGrows: 'Nothing needs water this season',
    metWithRain: ({ quantity }: Format, unmetLitres: number, rainLitres: number, where = '') =>
      `${met(quantity(unmetLitres, 'volume'), unmetLitres, where)}; ${quantity(rainLitres, 'volume')} of rain counted`,
    metWithIrrigation: ({ quantity }: Format, unmetLitres: number, irrigationLitres: number, where = '') =>
      `${met(quantity(unmetLitres, 'volume'), unmetLitres, where)}, with ${quantity(irrigationLitres, 'volume')} of irrigation kept`,
    shortFrom: ({ quantity, day }: Format, litres: number, first: DayNumber, where = '') =>
      `Short by ${quantity(litres, 'volume')}${where} from ${day(first)}`,
    shortInWeek: ({ quantity, week }: Format, litres: number, firstDay: DayNumber, where = '') =>
      `Short by ${quantity(litres, 'volume')}${where} in the week of ${week(firstDay)}`,
    shortBetween: ({ quantity, day }: Format, litres: number, first: DayNumber, last: DayNumber, where = '') =>
      `Short by ${quantity(litres, 'volume')}${where} between ${day(first)} and ${day(last)}`,
  },
};

const met = (unmet: string, unmetLitres: number, where: string): string =>
  unmetLitres === 0 ? 'Enough for every planting' : `Enough but for ${unmet}${where}`;

export const chartWords = area('chart', chart);
