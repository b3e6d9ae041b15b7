/** How dry the week's last watering may leave the soil: the room that is kept free for rain. */
import { leftAfterRunsMm } from '../../../engine/season/expected-days.ts';
import { targetOn } from '../../../engine/season/planting-demand.ts';
import type { TraceLabel, TraceStep, TraceValue } from '../trace-step.ts';
import { date, depth, input } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';
import { allowedInputs, type PlantingMorning } from './planting-morning.ts';
import { targetStep } from './soil.ts';

/** `known`: the morning before that asked, of which the goal may still stand. */
export function goalSteps(
  cell: PlantingCell,
  morning: PlantingMorning,
  known: PlantingMorning | undefined,
): readonly TraceStep[] {
  if (cell.keeper.isRefill || (known !== undefined && known.outlook.goalMm === morning.outlook.goalMm)) return [];
  const step = goalStep(cell, morning);
  const hasTarget = step.inputs.some(({ label }) => label.id === 'target');
  return hasTarget && known === undefined ? [targetStep(cell, morning.outlook.last), step] : [step];
}

/** The depletion to reach by the end of the last watering day. */
export function goalInput({ dayOf }: PlantingCell, { last, goalMm }: PlantingMorning['outlook']): TraceValue {
  const label: TraceLabel = { id: 'goal', day: dayOf(last) };
  return input(label, depth(goalMm));
}

function goalStep(cell: PlantingCell, { index, outlook }: PlantingMorning): Extract<TraceStep, { id: 'goal' }> {
  const { planting, dayOf } = cell;
  const { last, next, goalMm, days, afterRuns } = outlook;
  const of = { id: 'goal', day: dayOf(index), source: [{ id: 'choice-room' }], result: depth(goalMm) } as const;
  const until = last < days.demand.targetFrom ? planting.establishing?.until : undefined;
  const inputs =
    until === undefined
      ? [
          input('target', depth(targetOn(cell.days.demand, last))),
          ...allowedInputs({ outlook }, { from: last + 1, until: next, isGrown: false }, dayOf),
        ]
      : [input('establishing-until', date(until))];
  if (afterRuns === 0) return { ...of, variant: until === undefined ? 'room' : 'establishing', inputs };
  const left = input('after-last-run', depth(leftAfterRunsMm(days, afterRuns, last)));
  return { ...of, variant: 'pot', inputs: [...inputs, left] };
}
