/**
 * What a season came to. Figures of a zone and its plantings lie side by side in flat arrays, so that a thousand zones stay quick and
 * an unchanged week is shared; `zone-week.ts` and `planting-week.ts` read them as objects.
 */
import type { Garden, GardenZone } from '../garden.ts';
import type { Weather } from '../weather.ts';
import type { PlantingSeason } from './planting-season.ts';
import type { WeekFigures } from './week-figures.ts';

export interface Season {
  readonly garden: Garden;
  readonly weather: Weather;
  /** In the garden's order. */
  readonly zones: readonly ZoneSeason[];
  readonly totals: SeasonTotals;
  /** Left out where no week of the season is cut. */
  readonly cuts?: SeasonCuts | undefined;
}

/** What cuts come to, by week, L: 0 in a week without one. */
export interface SeasonCuts {
  /** Gross irrigation to be taken off, as the week looks on its first day. */
  readonly askedLitres: Float64Array;
  /** What of it no zone could give up: exempt ones keep theirs, and so do weeks that a person set, ran or closed. */
  readonly untakenLitres: Float64Array;
}

/** One zone's weeks; after its own fields come those of its plantings. */
export interface ZoneSeason {
  readonly zone: GardenZone;
  readonly weeks: number;
  readonly figures: WeekFigures;
  /** In the zone's order. */
  readonly plantings: readonly PlantingSeason[];
}

/** The whole garden's weeks in litres: the `SUPPLY_FIELDS` of all zones added up, laid out like a zone's. */
export interface SeasonTotals {
  readonly weeks: number;
  readonly figures: WeekFigures;
}

/**
 * Volumes of a week in litres, the same for a planting, a zone and the whole garden, so that a chart can show any.
 * rain + litres = used + drained + lost + storage change.
 */
export const SUPPLY_FIELDS = {
  /** Gross irrigation, as the meter would show it. */
  litres: 9,
  /** Rain that fell on the plantings' ground. */
  rainLitres: 1,
  /** What the plants would use if never short (ETc). */
  demandLitres: 2,
  /** What they used (ETc adjusted for stress). */
  usedLitres: 3,
  /** Rain that stayed in the root zone. */
  rainStayedLitres: 4,
  /** Irrigation that stayed in the root zone. */
  irrigationStayedLitres: 5,
  /** Rain and irrigation that went below the roots. */
  drainedLitres: 6,
  /** Rain that never soaked in, and irrigation lost to uneven or inefficient application. */
  lostLitres: 7,
  /** Change of the water stored in the root zones. */
  storageLitres: 8,
  /** Net irrigation that would have brought every planting to its goal. */
  neededLitres: 0,
} as const;

/** What every view of a cell reads stands side by side, litres too: so it is there sooner. */
export const ZONE_FIELDS = {
  ...SUPPLY_FIELDS,
  /** Minutes of the week, all days together. */
  minutes: 10,
  /** Minutes of the day that runs longest. */
  minutesPerDay: 14,
  /** Cycles in which that day's minutes are run; 1 = in one go, 0 = not run. */
  cycles: 18,
  /** Effective rain credited, mm over the ground of the plantings. */
  rainCreditMm: 13,
  /** Gross irrigation that the credited rain stood in for. */
  rainCreditLitres: 11,
  rainCreditMinutes: 15,
  /** Flow while every line that is open this week runs, L/min. */
  flowLpm: 16,
  /** Minutes that the week's first watering morning asked for, before rounding to the timer's step and before a hand-set number. */
  minutesWanted: 17,
  /** Index into STATES. */
  state: 12,
  /** Index into MINUTES_ORIGINS. */
  origin: 19,
  /** Watering days without a run, because too little was asked for; bit 0 = the week's first day. */
  skippedMask: 20,
  /** Watering days whose minutes were decided anew, from what was known that morning. */
  decidedMask: 21,
  /** Minutes of each day of the week. */
  minutesDay0: 22,
  minutesDay1: 23,
  minutesDay2: 24,
  minutesDay3: 25,
  minutesDay4: 26,
  minutesDay5: 27,
  minutesDay6: 28,
  /** Share of a computed week's minutes that a cut takes off, 0 to 1. */
  cutShare: 29,
  /** Gross irrigation that a cut took off. */
  cutLitres: 30,
  /** Times a day that it is run so that its containers last: its cycles are so many equal groups. 0 = not run. */
  runsADay: 31,
} as const;

export { PLANTING_FIELD_COUNT, PLANTING_FIELDS, type PlantingSeason } from './planting-season.ts';

export const ZONE_FIELD_COUNT = Object.keys(ZONE_FIELDS).length;
export const SUPPLY_FIELD_COUNT = Object.keys(SUPPLY_FIELDS).length;

/**
 * From the root-zone balance, worst first:
 * dry: beyond the allowed depletion at the week's end; short: on some day beyond it after what came, or not watered back to its target, or due for a
 * refill and not filled; over: more irrigation that was not asked for drained than steps of the timer explain; met: none of these;
 * closed: shut for the week by hand; off: nothing in the ground.
 */
export const STATES = ['dry', 'short', 'over', 'met', 'closed', 'off'] as const;
export type State = (typeof STATES)[number];

/** Where a week's minutes come from. */
export const MINUTES_ORIGINS = ['computed', 'hand-set', 'run', 'closed'] as const;
export type MinutesOrigin = (typeof MINUTES_ORIGINS)[number];
