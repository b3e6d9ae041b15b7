/** What of a week's irrigation passes straight through, to carry salt away. */
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth, input } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';
import { leachingInput } from './wetted.ts';

/** Nothing where no irrigation is to drain. */
export function leachedInputs(cell: PlantingCell): readonly TraceValue[] {
  return cell.days.demand.leachingFraction === 0 ? [] : [input('leaching-depth', depth(leachedMm(cell)))];
}

export function leachedSteps(cell: PlantingCell): readonly TraceStep[] {
  if (cell.days.demand.leachingFraction === 0) return [];
  const net = input('irrigation-net', depth(cell.at('irrigationNetMm')));
  return [
    { id: 'leached', source: [{ id: 'choice' }], inputs: [leachingInput(cell), net], result: depth(leachedMm(cell)) },
  ];
}

function leachedMm({ days, at }: PlantingCell): number {
  return days.demand.leachingFraction * at('irrigationNetMm');
}
