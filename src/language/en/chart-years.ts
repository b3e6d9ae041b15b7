/** What the chart and the notices say of dry, middle and wet years. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const chartYears = {
  compare: 'Show dry and wet years',
  busy: 'Running the season over every year…',
  /** The shaded band: least and most by the season's end, L. */
  band: ({ quantity }: Format, least: number, most: number) =>
    `Shaded: irrigation by the meter in 8 years of 10 (${quantity(least, 'volume')} to ${quantity(most, 'volume')}). Dashed: the middle year. The line is what the sheet shows.`,
  made: 'The plan has no real years, so these are made from its monthly normals.',
  show: 'Show the sheet in',
  own: 'the plan’s own weather',
  kinds: { dry: 'a dry year', middle: 'a middle year', wet: 'a wet year' },
  kindOf: (kind: string, calendarYear: number) => `${kind}: ${calendarYear}`,
  tankLasts: ({ number }: Format, years: number) => `In ${number(years)} years of 10 the tank lasts the season.`,
  tankLastsTo: ({ number, day }: Format, years: number, last: DayNumber) =>
    `In ${number(years)} years of 10 the tank lasts to ${day(last)}.`,
  allowanceHolds: ({ number }: Format, years: number) => `In ${number(years)} years of 10 the allowance is enough.`,
  between: ({ number, quantity }: Format, years: number, least: number, most: number) =>
    `In ${number(years)} years of 10 it takes ${quantity(least, 'volume')} to ${quantity(most, 'volume')}.`,
};

export const chartYearsWords = area('chartYears', chartYears);
