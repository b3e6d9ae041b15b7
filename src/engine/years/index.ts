/** The season over many years: what each needs, a dry, a middle and a wet one, and whether the supply holds. */
export { type SupplyHold, suppliesThatHold } from './supply-hold.ts';
export { BAND, type YearBand, yearBand } from './year-band.ts';
export { gardenInYear, type YearOutcome, type YearOutcomes, yearSeasons } from './year-seasons.ts';
