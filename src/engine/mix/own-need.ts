/** What a planting would be given if it had a zone to itself. */
import type { ZoneContext } from '../season/planting-days.ts';
import { plantingFigure } from '../season/planting-week.ts';
import type { PlantingSeason } from '../season/season.ts';
import { type SeasonBuffers, seasonBuffers, zoneSeason } from '../season/zone-season.ts';

/** So fine a timer that rounding up gives nothing away, minutes. */
const FINE_STEP_MINUTES = 1e-3;

/**
 * Net irrigation of each week, mm over the planting's ground, if it were alone in its zone with an endlessly fine timer
 * and nothing set by hand: the measure that shared water is held against. A deficit is counted once, in the week in
 * which it would have been filled. 0 throughout where no line brings it water. `known`: the planting in its zone's season,
 * of the same weather.
 */
export function ownNeedMm(
  { zone, site, weather }: ZoneContext,
  known: PlantingSeason,
  buffers: SeasonBuffers = seasonBuffers(),
): Float64Array {
  const plantings = [{ ...known.planting, hasShutOff: false }];
  const alone = {
    ...zone,
    plantings,
    rule: { kind: 'thirstiest' } as const,
    timerStepMinutes: FINE_STEP_MINUTES,
    longestCycleMinutes: Number.POSITIVE_INFINITY,
    choices: new Map(),
  };
  const season = zoneSeason({ zone: alone, site, weather }, buffers, [known]).plantings[0] as PlantingSeason;
  const weeks = weather.days / 7;
  return Float64Array.from({ length: weeks }, (_, week) => plantingFigure(season, 'irrigationNetMm', week));
}
