/** What irrigation brought to a planting in its week. */
import type { TraceStep } from '../trace-step.ts';
import { depth, input, minutes, rate, share } from '../trace-value.ts';
import { weekLines } from './lines.ts';
import type { PlantingCell } from './planting-cell.ts';

/** A share of a need below this would say nothing. */
const LEAST_NEED_MM = 0.05;

export function irrigationSteps(cell: PlantingCell): readonly TraceStep[] {
  return [minutesStep(cell), grossStep(cell), netStep(cell), ...needMetSteps(cell)];
}

function minutesStep({ daily }: PlantingCell): TraceStep {
  return {
    id: 'minutes-open',
    source: [{ id: 'definition' }],
    inputs: daily
      .filter((day) => day.minutes > 0)
      .map(({ day, minutes: ran }) => input({ id: 'day-minutes', day }, minutes(ran))),
    result: minutes(daily.reduce((sum, day) => sum + day.minutes, 0)),
  };
}

function grossStep(cell: PlantingCell): TraceStep {
  const { daily } = cell;
  return {
    id: 'irrigation-gross',
    source: [{ id: 'definition' }],
    inputs: weekLines(cell).flatMap(({ grossRate, indexes, which }) => [
      input({ id: 'application-rate', ...which }, rate(grossRate)),
      input(
        { id: 'minutes-watered', ...which },
        minutes(daily.reduce((sum, day) => sum + (indexes.includes(day.index) ? day.minutes : 0), 0)),
      ),
    ]),
    result: depth(cell.at('irrigationGrossMm')),
  };
}

function netStep({ at, zone }: PlantingCell): TraceStep {
  return {
    id: 'irrigation-net',
    source: [{ id: 'definition' }],
    inputs: [input('irrigation-gross', depth(at('irrigationGrossMm'))), input('efficiency', share(zone.efficiency))],
    result: depth(at('irrigationNetMm')),
  };
}

function needMetSteps({ at }: PlantingCell): readonly TraceStep[] {
  const needed = at('neededMm');
  if (needed < LEAST_NEED_MM) return [];
  return [
    {
      id: 'need-met',
      source: [{ id: 'definition' }],
      inputs: [input('irrigation-net', depth(at('irrigationNetMm'))), input('need', depth(needed))],
      result: share(at('irrigationNetMm') / needed),
    },
  ];
}
