/** Every figure that a table of the season can have of a zone's or a planting's week. */
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, SUPPLY_FIELDS, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneState } from '../../engine/season/zone-week.ts';
import { WEEK_MEASURES, type WeekMeasureFacts } from '../../engine/week-measures.ts';

export const SEASON_FIGURES = {
  ...WEEK_MEASURES,
  /** What the plants would use if never short. */
  demand: volumeOf('demandLitres'),
  /** Net irrigation that would have brought every planting to its goal. */
  needed: volumeOf('neededLitres'),
  /** Irrigation that stayed in the root zone. */
  received: volumeOf('irrigationStayedLitres'),
  /** Rain and irrigation that went below the roots. */
  drained: volumeOf('drainedLitres'),
} as const satisfies Readonly<Record<string, WeekMeasureFacts>>;

export type SeasonFigure = keyof typeof SEASON_FIGURES;

export const ALL_FIGURES = Object.keys(SEASON_FIGURES) as readonly SeasonFigure[];

function volumeOf(field: keyof typeof SUPPLY_FIELDS): WeekMeasureFacts {
  return {
    quantity: 'volume',
    ofZone: (zone, week) => zoneFigure(zone, field, week),
    ofPlanting: (planting, week) => plantingFigure(planting, field, week),
  };
}

/** Undefined where there is nothing in the ground, so that nothing can be told: that is not 0. */
export function zoneValue(zone: ZoneSeason, figure: SeasonFigure, week: number): number | undefined {
  const value = SEASON_FIGURES[figure].ofZone(zone, week);
  return value === 0 && zoneState(zone, week) === 'off' ? undefined : value;
}

/** The same of a planting. */
export function plantingValue(
  planting: PlantingSeason,
  figure: SeasonFigure,
  week: number,
  zone: ZoneSeason,
): number | undefined {
  if (plantingState(planting, week) === 'off') return undefined;
  return SEASON_FIGURES[figure].ofPlanting(planting, week, zone);
}
