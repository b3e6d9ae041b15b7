/** All steps of a planting's week, in the order in which the water takes them. */
import type { PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import { weekSpan } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { rainSteps } from '../weather/rain.ts';
import { referenceEtSteps } from '../weather/reference-et.ts';
import { balanceSteps } from './balance.ts';
import { coefficientSteps } from './coefficients.ts';
import { effectiveRainSteps } from './effective-rain.ts';
import { expectedSteps, wettedDemandSteps } from './expected.ts';
import { goalSteps } from './goal.ts';
import { irrigationSteps } from './irrigation.ts';
import { lineFeedSteps } from './line-feed.ts';
import { lineSteps } from './lines.ts';
import { minutesAskedStep } from './minutes-asked.ts';
import { needStep } from './need.ts';
import { openDaysSteps } from './open-days.ts';
import { type PlantingCell, plantingCell } from './planting-cell.ts';
import { rainThereSteps } from './rain-there.ts';
import { refillSteps } from './refill.ts';
import { restSteps } from './rest.ts';
import { soilSteps } from './soil.ts';
import { offStep, stateSteps } from './state.ts';
import { volumeSteps } from './volumes.ts';
import { askedRateSteps, wettedSteps } from './wetted.ts';

export function tracePlanting(
  season: Season,
  zoneSeason: ZoneSeason,
  own: PlantingSeason,
  week: number,
): readonly TraceStep[] {
  const cell = plantingCell(season, zoneSeason, own, week);
  if (cell.daily.length === 0) {
    return [...referenceEtSteps(season, weekSpan(week)), ...rainSteps(season, weekSpan(week)), offStep()];
  }
  return [
    ...referenceEtSteps(season, cell.ground),
    ...coefficientSteps(cell),
    ...restSteps(cell),
    ...rainSteps(season, cell.ground),
    ...rainThereSteps(cell),
    ...effectiveRainSteps(cell),
    ...soilSteps(cell),
    ...wettedSteps(cell),
    ...lineFeedSteps(cell),
    ...lineSteps(cell),
    ...askedRateSteps(cell),
    ...refillSteps(cell),
    ...morningSteps(cell),
    ...openDaysSteps(cell),
    needStep(cell),
    ...irrigationSteps(cell),
    ...balanceSteps(cell),
    ...volumeSteps(cell),
    ...stateSteps(cell),
  ];
}

/** What it expects and asks for, on each morning on which it asks anew. */
function morningSteps(cell: PlantingCell): readonly TraceStep[] {
  return cell.mornings
    .filter(({ isAsked }) => isAsked)
    .flatMap((morning, index, all) => [
      ...expectedSteps(cell, morning, all[index - 1]),
      ...(cell.keeper.isRefill ? [] : wettedDemandSteps(cell, morning)),
      ...goalSteps(cell, morning, all[index - 1]),
      minutesAskedStep(cell, morning),
    ]);
}
