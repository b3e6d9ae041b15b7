/** Rain of many years as the plantings of a site have it, on open ground. */
import { dailyRainCountedMm } from '../rain/daily-threshold.ts';
import type { SeasonYears } from '../rain/season-years.ts';
import type { SeasonMonths } from '../weather.ts';

export interface YearsOfRain {
  readonly years: SeasonYears;
  readonly months: SeasonMonths;
  /** By day of the season, mm: what the normals say; and of what kept rain is a share, all years together. */
  readonly normalMm: Float64Array;
  readonly allMm: Float64Array;
  /** Rain that enters the soil, mm, in the years' order. */
  readonly soakedMm: Float64Array;
}

/**
 * Kept rain is a share of the normals' rain by recorded years, by made years of what fell. `etoMm`: what the normals say of each day of the
 * season.
 */
export function rainOfYears(
  of: Pick<YearsOfRain, 'years' | 'months' | 'normalMm'>,
  etoMm: Float64Array,
  runoffFraction: number,
): YearsOfRain {
  const { years, normalMm } = of;
  const allMm = new Float64Array(years.days);
  const soakedMm = years.rainMm.map((rainMm, at) => {
    const day = Math.floor(at / years.years);
    (allMm[day] as number) += years.basis === 'record' ? (normalMm[day] as number) : rainMm;
    return (1 - runoffFraction) * dailyRainCountedMm(rainMm, (etoMm[day] as number) * (years.etoShare[at] as number));
  });
  return { ...of, allMm, soakedMm };
}
