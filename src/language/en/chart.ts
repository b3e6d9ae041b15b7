/** All that the chart says. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const chart = {
  names: {
    demand: 'Demand',
    short: 'Short',
    fromSoil: 'From the soil',
    irrigation: 'Irrigation at the roots',
    notKept: 'Irrigation not kept',
    rain: 'Rain counted',
    tank: 'In the tank',
    allowance: 'Allowance used',
    'weekly-allowance': 'Used in the week',
  },
  /** Irrigation by then, L: as the meter has it, what of it stayed at the roots, and what did not. */
  atRoots: ({ quantity }: Format, metered: number, kept: number, notKept: number) =>
    `The meter and the sheet show ${quantity(metered, 'volume')} of irrigation by then. The chart counts the ${quantity(kept, 'volume')} that stayed at the roots; ${quantity(notKept, 'volume')} spread unevenly or drained below them.`,
  about:
    'Running totals: rain and irrigation that stayed at the roots, against what the plants would use. Irrigation at the roots and irrigation not kept come to what the meter shows.',
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
  /** The chart's title: what it shows, said in words. */
  finding: {
    noClimate: 'Not known yet: the climate is not filled in',
    nothingGrows: 'Nothing needs water this season',
    metWithRain: ({ quantity }: Format, unmetLitres: number, rainLitres: number) =>
      `${met(quantity(unmetLitres, 'volume'), unmetLitres)}; ${quantity(rainLitres, 'volume')} of rain counted`,
    metWithIrrigation: ({ quantity }: Format, unmetLitres: number, irrigationLitres: number) =>
      `${met(quantity(unmetLitres, 'volume'), unmetLitres)}, with ${quantity(irrigationLitres, 'volume')} of irrigation at the roots`,
    shortFrom: ({ quantity, day }: Format, litres: number, first: DayNumber) =>
      `Short by ${quantity(litres, 'volume')} from ${day(first)}`,
    shortInWeek: ({ quantity, week }: Format, litres: number, firstDay: DayNumber) =>
      `Short by ${quantity(litres, 'volume')} in the week of ${week(firstDay)}`,
    shortBetween: ({ quantity, day }: Format, litres: number, first: DayNumber, last: DayNumber) =>
      `Short by ${quantity(litres, 'volume')} between ${day(first)} and ${day(last)}`,
  },
};

const met = (unmet: string, unmetLitres: number): string =>
  unmetLitres === 0 ? 'Demand is met all season' : `Demand is met but for ${unmet}`;

export const chartWords = area('chart', chart);
