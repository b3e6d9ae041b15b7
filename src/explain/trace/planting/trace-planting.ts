/** All steps of a planting's week, in the order in which the water takes them. */
import {
  type PlantingSeason,
  type Season,
  STATES,
  type State,
  type ZoneSeason,
} from '../../../engine/season/season.ts';
import { weekSpan } from '../day-span.ts';
import type { TraceStep } from '../trace-step.ts';
import { code, days, depth, input } from '../trace-value.ts';
import { rainSteps } from '../weather/rain.ts';
import { referenceEtSteps } from '../weather/reference-et.ts';
import { balanceSteps } from './balance.ts';
import { coefficientSteps } from './coefficients.ts';
import { effectiveRainSteps } from './effective-rain.ts';
import { irrigationSteps } from './irrigation.ts';
import { lineSteps } from './lines.ts';
import { openDaysStep } from './open-days.ts';
import { type PlantingCell, plantingCell } from './planting-cell.ts';
import { soilSteps } from './soil.ts';
import { volumeSteps } from './volumes.ts';

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
    ...effectiveRainSteps(cell),
    ...soilSteps(cell),
    ...lineSteps(cell),
    openDaysStep(cell),
    ...irrigationSteps(cell),
    ...balanceSteps(cell),
    ...volumeSteps(cell),
    stateStep(cell),
  ];
}

function stateStep(cell: PlantingCell): TraceStep {
  const { at, ground, days: daily, dayOf } = cell;
  const last = ground.end - 1;
  const state = STATES[at('state')] as State;
  return {
    id: 'state',
    state,
    variant: 'planting',
    source: ['FAO-56 eq. 83, 84', { id: 'choice-state-names' }],
    inputs: [
      input('depletion-end', depth(at('depletionEndMm'))),
      input({ id: 'day-readily-available', day: dayOf(last) }, depth(daily.demand.rawMm[last] as number)),
      input('unmet-demand', depth(at('demandMm') - at('usedMm'))),
      input('irrigation-drained', depth(at('irrigationDrainedMm'))),
      input('rounding-excess', depth(roundingMm(cell))),
    ],
    result: code('state', state),
  };
}

function offStep(): TraceStep {
  return {
    id: 'state',
    state: 'off',
    variant: 'off',
    source: [{ id: 'plan' }],
    inputs: [input('ground-days', days(0))],
    result: code('state', 'off'),
  };
}

/** Irrigation that rounding to the timer's step may send past the roots: a step on each open day, by the line of the last day. */
function roundingMm({ zone, ground, days: daily, at }: PlantingCell): number {
  return zone.timerStepMinutes * at('openDays') * (daily.netMmPerMinute[ground.end - 1] as number);
}
