/** How a planting's week turned out, and what its last watering was to leave. */
import { countDays, daysMask } from '../../../engine/season/days-mask.ts';
import { STATES, type State } from '../../../engine/season/season.ts';
import { expectedChangeMm } from '../../../engine/season/week-outlook.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, days, depth, input } from '../trace-value.ts';
import { goalInput } from './goal.ts';
import { isInMask, type PlantingCell } from './planting-cell.ts';

export function stateSteps(cell: PlantingCell): readonly TraceStep[] {
  return [...missedSteps(cell), stateStep(cell)];
}

export function offStep(): TraceStep {
  return {
    id: 'state',
    state: 'off',
    variant: 'off',
    source: [{ id: 'plan' }],
    inputs: [input('ground-days', days(0))],
    result: code('state', 'off'),
  };
}

/** What a kept planting's last watering of the week was expected to leave above its goal. */
function missedSteps(cell: PlantingCell): readonly TraceStep[] {
  const { keeper, mornings, days: of, dayOf, at } = cell;
  const last = mornings.at(-1);
  if (keeper.isRefill || last === undefined) return [];
  const { index, outlook, forecast, depletionMm, minutes } = last;
  const open = isInMask(last.openMask, index - outlook.start) ? minutes : 0;
  const day = dayOf(index);
  return [
    {
      id: 'missed',
      day,
      source: [{ id: 'definition' }],
      inputs: [
        input({ id: 'day-depletion-start', day }, depth(depletionMm)),
        input({ id: 'day-change', day }, depth(expectedChangeMm(of, index, forecast))),
        input({ id: 'day-irrigation', day }, depth(open * (of.netMmPerMinute[index] as number))),
        goalInput(cell, outlook),
      ],
      result: depth(at('missedMm')),
    },
  ];
}

function stateStep(cell: PlantingCell): TraceStep {
  const { at, ground, days: of, dayOf, zone } = cell;
  const last = ground.end - 1;
  const state = STATES[at('state')] as State;
  const stepMm = zone.timerStepMinutes * (of.netMmPerMinute[last] as number);
  return {
    id: 'state',
    state,
    variant: 'planting',
    source: ['FAO-56 eq. 83, 84', { id: 'choice-state-names' }],
    inputs: [
      input('depletion-end', depth(at('depletionEndMm'))),
      input({ id: 'day-readily-available', day: dayOf(last) }, depth(of.demand.rawMm[last] as number)),
      input('unmet-demand', depth(at('demandMm') - at('usedMm'))),
      ...goalInputs(cell, stepMm),
      input('irrigation-drained', depth(at('irrigationDrainedMm'))),
      input('rounding-excess', depth(stepMm * at('openDays'))),
    ],
    result: code('state', state),
  };
}

/** What tells whether a refill was filled, or a kept planting came to its goal. */
function goalInputs({ keeper, mornings, ground, week, at }: PlantingCell, stepMm: number): readonly TraceValue[] {
  if (keeper.isRefill) {
    return [input('still-due', code('answer', at('dueMask') !== 0 && at('fillingMm') > 0 ? 'yes' : 'no'))];
  }
  const [first] = mornings;
  if (first === undefined) return [];
  const { mask, last } = first.outlook;
  const waterings = countDays(mask & daysMask(ground.first - 7 * week, last + 1 - 7 * week));
  return [
    input('missed', depth(at('missedMm'))),
    input('need', depth(at('neededMm'))),
    input('rounding-lack', depth(0.5 * stepMm * waterings)),
  ];
}
