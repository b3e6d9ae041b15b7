/** How dry the week's last watering may leave the soil: the room that is kept free for rain. */
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
  return step.variant === 'room' && known === undefined ? [targetStep(cell), step] : [step];
}

/** The depletion to reach by the end of the last watering day. */
export function goalInput({ dayOf }: PlantingCell, { last, goalMm }: PlantingMorning['outlook']): TraceValue {
  const label: TraceLabel = { id: 'goal', day: dayOf(last) };
  return input(label, depth(goalMm));
}

function goalStep(
  cell: PlantingCell,
  { index, outlook, forecast }: PlantingMorning,
): Extract<TraceStep, { id: 'goal' }> {
  const { planting, dayOf } = cell;
  const { last, next, goalMm, days } = outlook;
  const of = { id: 'goal', day: dayOf(index), source: [{ id: 'choice-room' }], result: depth(goalMm) } as const;
  if (last < days.demand.targetFrom && planting.establishing !== undefined) {
    return { ...of, variant: 'establishing', inputs: [input('establishing-until', date(planting.establishing.until))] };
  }
  return {
    ...of,
    variant: 'room',
    inputs: [
      input('target', depth(days.demand.targetMm)),
      ...allowedInputs({ outlook, forecast }, { from: last + 1, until: next }, dayOf),
    ],
  };
}
