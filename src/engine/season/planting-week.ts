/** A planting's week as an object, read out of the season's flat arrays. */
import { PLANTING_FIELDS, type PlantingSeason, STATES, type State } from './season.ts';
import { readWeek } from './zone-week.ts';

type NumericField = Exclude<keyof typeof PLANTING_FIELDS, 'state'>;

export type PlantingWeek = { readonly [Field in NumericField]: number } & {
  readonly week: number;
  readonly state: State;
};

/** Throws a RangeError for a week outside the season. */
export function plantingWeek(season: PlantingSeason, week: number): PlantingWeek {
  const figures = readWeek(season, PLANTING_FIELDS, week) as Record<NumericField, number>;
  return { ...figures, week, state: plantingState(season, week) };
}

/** One figure without making an object. */
export function plantingFigure(season: PlantingSeason, field: keyof typeof PLANTING_FIELDS, week: number): number {
  return season.figures[PLANTING_FIELDS[field] * season.weeks + week] as number;
}

export function plantingState(season: PlantingSeason, week: number): State {
  return STATES[plantingFigure(season, 'state', week)] as State;
}
