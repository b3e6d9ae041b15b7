/**
 * The calculation alone: a garden in SI units goes in, its season comes out. Pure, without page, clock or library.
 *
 * ```js
 * const season = runSeason(garden);
 * const { minutes, litres } = zoneWeek(season.zones[0], 12);
 * ```
 *
 * `gardenOf` of the plan entry makes a garden from a plan document. What is published as a formula, each with its source,
 * can be called by itself. How a mixed zone fares, what a line carries, what the supply bears and how deep a run wets are entries
 * of their own, `engine/mix`, `engine/line`, `engine/supply` and `engine/ground`, and why a number is so and what needs attention is
 * the entry `explain`: a program that only computes a season need not load them.
 */
export { applicationRateMmPerHour } from './application/application-rate.ts';
export { grossIrrigation, netMmPerMinute, runMinutes } from './application/run-time.ts';
export type { DayNumber } from './calendar.ts';
export { extraterrestrialRadiation } from './climate/extraterrestrial-radiation.ts';
export { hargreavesSamani } from './climate/hargreaves-samani.ts';
export { type PenmanMonteithInputs, penmanMonteith } from './climate/penman-monteith.ts';
export type * from './garden.ts';
export { type CropCoefficients, cropCoefficient } from './plants/crop-coefficient.ts';
export { type LandscapeFactors, landscapeCoefficient } from './plants/landscape-coefficient.ts';
export { monthlyEffectiveRainMm, RAIN_METHODS, type RainMethod, type RainMonth } from './rain/effective-rain.ts';
export { type PlantingWeek, plantingFigure, plantingState, plantingWeek } from './season/planting-week.ts';
export {
  type MinutesOrigin,
  PLANTING_FIELDS,
  type PlantingSeason,
  type Season,
  type SeasonTotals,
  type State,
  SUPPLY_FIELDS,
  ZONE_FIELDS,
  type ZoneSeason,
} from './season/season.ts';
export {
  minutesOnDay,
  runMask,
  type ZoneWeek,
  zoneFigure,
  zoneOrigin,
  zoneState,
  zoneWeek,
} from './season/zone-week.ts';
export { runSeason } from './season-of-garden.ts';
export { readilyAvailableWaterMm, totalAvailableWaterMm } from './soil/available-water.ts';
export { stressCoefficient } from './soil/root-zone-day.ts';
