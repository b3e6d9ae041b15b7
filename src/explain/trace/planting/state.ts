/** How a planting's week turned out, and what its last watering was to leave. */
import { countDays, daysMask } from '../../../engine/season/days-mask.ts';
import { expectedChangeMm } from '../../../engine/season/expected-days.ts';
import { STATES, type State } from '../../../engine/season/season.ts';
import { timerOf } from '../../../engine/season/week-timer.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { code, days, depth, input } from '../trace-value.ts';
import { goalInput } from './goal.ts';
import { leachedInputs } from './leached.ts';
import { isInMask, isParted, type PlantingCell } from './planting-cell.ts';
import { endInputs, rootedParts } from './stores.ts';
import { shareInput } from './wetted.ts';

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
  const { keeper, mornings, dayOf, at } = cell;
  const last = mornings.at(-1);
  if (keeper.isRefill || last === undefined) return [];
  const { index, outlook, depletionMm, minutes } = last;
  const open = isInMask(last.openMask, index - outlook.start) ? minutes : 0;
  const day = dayOf(index);
  return [
    {
      id: 'missed',
      day,
      variant: isParted(cell) ? 'part' : 'whole',
      source: [{ id: 'definition' }],
      inputs: [
        input({ id: 'day-depletion-start', day }, depth(depletionMm)),
        input({ id: 'day-change', day }, depth(expectedChangeMm(outlook.days, index))),
        input({ id: 'day-irrigation', day }, depth(open * (outlook.days.netMmPerMinute[index] as number))),
        goalInput(cell, outlook),
        ...shareInput(cell),
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
  const roundings = at('openDays') * timerOf(cell.zoneSeason, cell.week).runsADay;
  return {
    id: 'state',
    state,
    variant: isParted(cell) ? 'part' : 'planting',
    source: ['FAO-56 eq. 83, 84', { id: 'choice-state-names' }],
    inputs: [
      ...depletionInputs(cell),
      input({ id: 'day-readily-available', day: dayOf(last) }, depth(of.demand.rawMm[last] as number)),
      input('unmet-demand', depth(at('demandMm') - at('usedMm'))),
      ...(of.demand.rest?.[last] ? [input('resting', code('answer', 'yes'))] : []),
      ...goalInputs(cell, stepMm),
      input('irrigation-drained', depth(at('irrigationDrainedMm'))),
      input('unasked', depth(at('unaskedMm'))),
      input('rounding-excess', depth(stepMm * roundings)),
      ...leachedInputs(cell),
    ],
    result: code('state', state),
  };
}

/** Of both parts of its ground, where its roots are in both. */
function depletionInputs(cell: PlantingCell): readonly TraceValue[] {
  const last = cell.daily.at(-1);
  if (!isParted(cell) || last === undefined) return [input('depletion-end', depth(cell.at('depletionEndMm')))];
  return endInputs(last, rootedParts(last));
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
