import type { YearOutcome, YearOutcomes } from './year-seasons.ts';

/** Of ten years so many need less: a wet year, a middle one, a dry one. */
export const BAND = { wet: 0.1, middle: 0.5, dry: 0.9 } as const;

export interface YearBand {
  readonly wet: YearOutcome;
  readonly middle: YearOutcome;
  readonly dry: YearOutcome;
  readonly years: number;
  /** Gross irrigation from the first week to the end of each that one year of ten stays below, and that nine do, L; week by week by the same rule. */
  readonly leastLitres: Float64Array;
  readonly mostLitres: Float64Array;
  /** Years in which each part of the supply holds; undefined for one that there is not. */
  readonly tankYears: number | undefined;
  readonly allowanceYears: number | undefined;
  /** Days of the season that the tank lasts in eight years of ten; undefined where there is none. */
  readonly tankLastsDays: number | undefined;
}

/**
 * A wet, a middle and a dry year of those that were run: real ones, none between two. Years are ranked by the net irrigation that the
 * garden needs; the year of rank r of n stands at r / (n + 1) (the plotting position of Weibull 1939, as hydrology uses it; from memory),
 * and the one that stands nearest to 0.1, 0.5 and 0.9 is taken, of two the drier. Undefined where there is no year.
 */
export function yearBand({ outcomes }: YearOutcomes): YearBand | undefined {
  const ranked = outcomes.toSorted((one, other) => one.neededLitres - other.neededLitres || one.year - other.year);
  const at = (share: number) => ranked[nearestTo(share, ranked.length)];
  const [wet, middle, dry] = [at(BAND.wet), at(BAND.middle), at(BAND.dry)];
  if (wet === undefined || middle === undefined || dry === undefined) return undefined;
  const holding = (part: 'tank' | 'allowance'): number | undefined =>
    wet.holds[part] === undefined ? undefined : outcomes.filter(({ holds }) => holds[part]).length;
  const ofAll = (figure: (year: YearOutcome) => number, share: number): number =>
    Float64Array.from(outcomes, figure).sort()[nearestTo(share, outcomes.length)] as number;
  const byWeek = (share: number) =>
    wet.irrigationLitres.map((_, week) => ofAll(({ irrigationLitres }) => irrigationLitres[week] as number, share));
  const tankYears = holding('tank');
  return {
    wet,
    middle,
    dry,
    years: outcomes.length,
    leastLitres: byWeek(BAND.wet),
    mostLitres: byWeek(BAND.dry),
    tankYears,
    allowanceYears: holding('allowance'),
    // Of ten years the tank fails earlier in two.
    tankLastsDays:
      tankYears === undefined ? undefined : ofAll(({ holds }) => holds.tankLastsDays ?? Number.POSITIVE_INFINITY, 0.2),
  };
}

/** The index of the one of `count` in rising order that stands nearest to a share; of two the later. */
function nearestTo(share: number, count: number): number {
  const distances = Array.from({ length: count }, (_, index) => Math.abs((index + 1) / (count + 1) - share));
  return distances.lastIndexOf(Math.min(...distances));
}
