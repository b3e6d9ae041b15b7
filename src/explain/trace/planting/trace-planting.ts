/** All steps of a planting's week, in the order in which the water takes them. */
import type { PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import { weekSpan } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { rainSteps } from '../weather/rain-steps.ts';
import { referenceEtSteps } from '../weather/reference-et-steps.ts';
import { askedMinutesStep } from './asked-minutes-step.ts';
import { balanceSteps } from './balance-steps.ts';
import { closingSteps } from './closing-steps.ts';
import { coefficientSteps } from './coefficient-steps.ts';
import { lineSteps } from './line-steps.ts';
import { litresSteps } from './litres-steps.ts';
import { needSteps } from './need-steps.ts';
import { openDaysStep } from './open-days-step.ts';
import { plantingCell } from './planting-cell.ts';
import { rainCreditSteps } from './rain-credit-steps.ts';
import { receivedSteps } from './received-steps.ts';
import { soilSteps } from './soil-steps.ts';
import { offStep, plantingStateStep } from './state-step.ts';

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
    ...rainSteps(season, cell.ground),
    ...rainCreditSteps(cell),
    ...soilSteps(cell),
    ...needSteps(cell),
    ...lineSteps(cell),
    askedMinutesStep(cell),
    openDaysStep(cell),
    ...receivedSteps(cell),
    ...balanceSteps(cell),
    ...closingSteps(cell),
    ...litresSteps(cell),
    plantingStateStep(cell),
  ];
}
