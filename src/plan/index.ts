/** The plan: its document, its defaults, reading, edits and history, and the way to the engine. */

export { addDays, dayNumber, type IsoDate, isIsoDate, isoDate, weekdayOf } from '../engine/calendar.ts';
export { ROOF_SURFACES, type RoofSurface } from '../engine/supply/roof-surfaces.data.ts';
export { fromSi, QUANTITIES, type Quantity, toSi, type Unit, type UnitSystem, unitOf } from '../engine/units.ts';
export { computeSeason } from './compute-season.ts';
export { DEFAULTS } from './defaults.ts';
export { applyEdit, type EditResult, tryEdit } from './edits/apply-edit.ts';
export type {
  BatchAction,
  Change,
  DayRunEdit,
  Edit,
  GardenEdit,
  LineEdit,
  PlantingEdit,
  TogetherEdit,
  WeatherEdit,
  WeekEdit,
  ZoneEdit,
} from './edits/edit.ts';
export { EditRefused } from './edits/edit-refused.ts';
export { type EmptyPlanOptions, emptyPlan } from './empty-plan.ts';
export { gardenOf } from './garden-of.ts';
export {
  canRedo,
  canUndo,
  type History,
  MOST_STEPS,
  record,
  redo,
  type Step,
  startHistory,
  undo,
} from './history/history.ts';
export { newPlantingId, newZoneId } from './ids.ts';
export { learnedOf, withLearned, type ZoneLearned } from './next-year/learned.ts';
export {
  type NewPlanting,
  type NextYearChoice,
  nextName,
  nextSeason,
  nextYear,
  type PlantingFate,
} from './next-year/next-year.ts';
export { canBeYear, daysRead } from './next-year/season-as-year.ts';
export { packedStretch } from './packed-stretch.ts';
export { packedYears, type YearsToPack } from './packed-years.ts';
export { checkPlan, type PlanMigration, type ReadResult } from './reading/check-plan.ts';
export type { Fault } from './reading/fault.ts';
export { readPlan } from './reading/read-plan.ts';
export { writePlan } from './reading/write-plan.ts';
export { planSchema } from './schema/either-units.ts';
export {
  PLAN_FORMAT,
  PLAN_VERSION,
  type Plan,
  type PlanChoice,
  type PlanChoices,
  type PlanClimate,
  type PlanDay,
  type PlanDayRun,
  type PlanForecast,
  type PlanLine,
  type PlanLog,
  type PlanNeed,
  type PlanPlanting,
  type PlanRuns,
  type PlanSeason,
  type PlanSite,
  type PlanStretch,
  type PlanSupply,
  type PlanWeek,
  type PlanWeekRun,
  type PlanWhatIf,
  type PlanYears,
  type PlanZone,
  type Weekday,
} from './schema/plan-schema.ts';
export { boundsOf, type PlanQuantity } from './schema/quantity.ts';
export { weekFirstDay, weekOf } from './season-weeks.ts';
export type { VersionChange, VersionChangeCode, VersionChangeValues } from './versions/version-change.ts';
