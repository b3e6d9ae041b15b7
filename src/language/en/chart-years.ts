/** What the chart and the notices say of dry, middle and wet years. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const ofYears = ({ number }: Format, years: number, of: number): string => `${number(years)} years of ${number(of)}`;

const volumes = ({ quantity }: Format, least: number, most: number): string =>
  `${quantity(least, 'volume')} to ${quantity(most, 'volume')}`;

export const chartYears = {
  compare: 'Show dry and wet years',
  busy: 'Running the season over every year…',
  /** The shaded band: least and most by the season's end, L. */
  band: (format: Format, years: number, of: number, least: number, most: number) =>
    `Shaded: irrigation by the meter in ${ofYears(format, years, of)} (${volumes(format, least, most)}). Dashed: the middle year. The line is what the sheet shows.`,
  made: 'The plan has no real years: these are made from its normals.',
  show: 'Show the sheet in',
  own: 'the plan’s own weather',
  kinds: { dry: 'a dry year', middle: 'a middle year', wet: 'a wet year' },
  kindOf: (kind: string, calendarYear: number) => `${kind}: ${calendarYear}`,
  tankLasts: (format: Format, years: number, of: number) =>
    `In ${ofYears(format, years, of)} the tank lasts the season.`,
  tankLastsTo: (format: Format, years: number, of: number, last: DayNumber) =>
    `In ${ofYears(format, years, of)} the tank lasts to ${format.day(last)}.`,
  allowanceHolds: (format: Format, years: number, of: number) =>
    `In ${ofYears(format, years, of)} the allowance is enough.`,
  between: (format: Format, years: number, of: number, least: number, most: number) =>
    `In ${ofYears(format, years, of)} it takes ${volumes(format, least, most)}.`,
};

export const chartYearsWords = area('chartYears', chartYears);
