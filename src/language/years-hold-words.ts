/** What many years say of a season's supply, in a sentence or two. */
import type { Season } from '../engine/season/season.ts';
import type { YearBand } from '../engine/years/year-band.ts';
import { chartYearsWords } from './en/chart-years.ts';
import { formatFor } from './format/format.ts';
import type { Reader } from './reader.ts';

/** Years of ten that a statement about most of them is made for. */
const MOST_OF_TEN = 8;

/** How many years of ten the tank and the allowance last; where nothing bounds the supply, what most years need. */
export function yearsHoldWords(band: YearBand, { weather }: Season, reader: Reader): string {
  const say = chartYearsWords(reader.language);
  const format = formatFor(reader);
  const { years, tankYears, allowanceYears, tankLastsDays, leastLitres, mostLitres } = band;
  const ofTen = (held: number) => Math.floor((10 * held) / years);
  const sentences: string[] = [];
  if (tankYears !== undefined) {
    const held = ofTen(tankYears);
    sentences.push(
      held >= MOST_OF_TEN || tankLastsDays === undefined || tankLastsDays >= weather.days
        ? say.tankLasts(format, held)
        : say.tankLastsTo(format, MOST_OF_TEN, weather.firstDay + tankLastsDays),
    );
  }
  if (allowanceYears !== undefined) sentences.push(say.allowanceHolds(format, ofTen(allowanceYears)));
  if (sentences.length > 0) return sentences.join(' ');
  return say.between(format, MOST_OF_TEN, leastLitres.at(-1) ?? 0, mostLitres.at(-1) ?? 0);
}
