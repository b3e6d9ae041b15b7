/** Days on which a planting asks for no water, and why. */
import type { TraceStep } from '../trace-step.ts';
import { date, days, input } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

export function restSteps({ planting: { rest = [] }, ground, dayOf }: PlantingCell): readonly TraceStep[] {
  const first = dayOf(ground.first);
  const last = dayOf(ground.end - 1);
  return rest
    .filter(({ from, to }) => from <= last && to >= first)
    .map(({ from, to, kind }) => ({
      id: 'rest',
      day: from,
      variant: kind,
      source: kind === 'dry-down' ? [{ id: 'plan' }, { id: 'common-practice' }] : [{ id: 'plan' }, { id: 'choice' }],
      inputs: [
        input('rest-from', date(from)),
        input('rest-to', date(to)),
        input('ground-first', date(first)),
        input('ground-days', days(ground.end - ground.first)),
      ],
      result: days(Math.min(to, last) - Math.max(from, first) + 1),
    }));
}
