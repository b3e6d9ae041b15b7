import type { GardenPlanting } from '../garden.ts';
import type { PlantingDemand } from './planting-demand.ts';
import type { WeekFigures } from './week-figures.ts';

/** Depths are mm over the planting's ground; `planting-week.ts` makes the litres of SUPPLY_FIELDS of them. */
export const PLANTING_FIELDS = {
  demandMm: 0,
  usedMm: 1,
  rainMm: 2,
  rainSoakedMm: 3,
  rainDrainedMm: 4,
  irrigationNetMm: 5,
  irrigationGrossMm: 6,
  irrigationDrainedMm: 7,
  depletionStartMm: 8,
  depletionEndMm: 9,
  neededMm: 10,
  /** Minutes a watering day that it asked for on its first watering morning of the week, with every watering day open. */
  minutesWanted: 11,
  /** Days on which its line was open and the zone ran. */
  openDays: 12,
  /** Seven-bit mask of the days on which its line is open, bit 0 = the week's first day; 0 where the zone does not run that week. */
  openMask: 13,
  /** Days on which it was short of water (Ks below 1). */
  shortDays: 14,
  /** Days in the ground. */
  groundDays: 15,
  /** Flow of its line, open, on its last day in the ground, L/min. */
  flowLpm: 16,
  /** Index into STATES. */
  state: 17,
  /** Watering mornings on which a refill was due, bit 0 = the week's first day. */
  dueMask: 18,
  /** Depletion at which a refill that is still due at the week's end became due, over the ground that its lines wet; 0 = not due. */
  fillingMm: 19,
  /** Depletion above its goal that the week's last watering was expected to leave; 0 for a refill. */
  missedMm: 20,
  /** Depletion at the week's end of the ground that its lines wet, and of the rest, mm over each; all of it wetted: both the same. */
  wettedEndMm: 21,
  dryEndMm: 22,
  /** Depletion of the soil that roots grew into. */
  rootedMm: 23,
  /** Irrigation beyond the minutes that it asked for, day by day: none on days that are no watering mornings of its own. */
  unaskedMm: 24,
} as const;

export const PLANTING_FIELD_COUNT = Object.keys(PLANTING_FIELDS).length;

/** One planting's weeks, which lie behind its zone's in the same arrays. */
export class PlantingSeason {
  readonly planting: GardenPlanting;
  readonly demand: PlantingDemand;
  /** For each month of the season, the share of its normal rain that counts, 0 to 1. */
  readonly rainShares: readonly number[];
  /** Its zone's. */
  readonly figures: WeekFigures;
  /** Where its own begin in each week of them. */
  readonly start: number;

  constructor(
    planting: GardenPlanting,
    { demand, rainShares }: Pick<PlantingSeason, 'demand' | 'rainShares'>,
    figures: WeekFigures,
    start: number,
  ) {
    this.planting = planting;
    this.demand = demand;
    this.rainShares = rainShares;
    this.figures = figures;
    this.start = start;
  }

  get weeks(): number {
    return this.figures.weeks;
  }

  /** One figure, by its index into `PLANTING_FIELDS`. */
  at(field: number, week: number): number {
    return this.figures.at(this.start + field, week);
  }
}
