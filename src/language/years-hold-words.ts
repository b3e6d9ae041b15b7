/** What many years say of a season's supply, in a sentence or two. */
import type { Season } from '../engine/season/season.ts';
import type { YearBand } from '../engine/years/year-band.ts';
import { chartYearsWords } from './en/chart-years.ts';
import { formatFor } from './format/format.ts';
import type { Reader } from './reader.ts';

/** Of fewer years none stands where one of ten does, and all of them are told of. */
const FEWEST = 9;

/** A statement about most years is made for so great a part of them. */
const MOST = 0.8;

/** How many years the band of a wet and a dry one holds, and of how many. */
export const yearsInBand = (years: number): readonly [held: number, of: number] =>
  years < FEWEST ? [years, years] : [8, 10];

/** How many years the tank and the allowance last, of ten; where nothing bounds the supply, what most years need. */
export function yearsHoldWords(band: YearBand, { weather }: Season, reader: Reader): string {
  const say = chartYearsWords(reader.language);
  const format = formatFor(reader);
  const { years, tankYears, allowanceYears, tankLastsDays, leastLitres, mostLitres } = band;
  const [held, of] = yearsInBand(years);
  const share = (some: number) => Math.floor((of * some) / years);
  const most = Math.floor(MOST * of);
  const sentences: string[] = [];
  if (tankYears !== undefined) {
    const lasting = share(tankYears);
    sentences.push(
      lasting >= most || tankLastsDays === undefined || tankLastsDays >= weather.days
        ? say.tankLasts(format, lasting, of)
        : say.tankLastsTo(format, most, of, weather.firstDay + tankLastsDays),
    );
  }
  if (allowanceYears !== undefined) sentences.push(say.allowanceHolds(format, share(allowanceYears), of));
  if (sentences.length > 0) return sentences.join(' ');
  return say.between(format, held, of, leastLitres.at(-1) ?? 0, mostLitres.at(-1) ?? 0);
}
