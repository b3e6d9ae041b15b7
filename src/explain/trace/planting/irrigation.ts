/** What irrigation brought to a planting in its week. */
import type { TraceStep } from '../trace-step.ts';
import { days, depth, input, minutes, rate, share } from '../trace-value.ts';
import { weekLines } from './lines.ts';
import { isOpenOn, type PlantingCell } from './planting-cell.ts';

/** A share of a need below this would say nothing. */
const LEAST_NEED_MM = 0.05;

export function irrigationSteps(cell: PlantingCell): readonly TraceStep[] {
  return [minutesStep(cell), grossStep(cell), netStep(cell), ...needMetSteps(cell)];
}

function minutesStep({ minutesPerDay, at }: PlantingCell): TraceStep {
  return {
    id: 'minutes-open',
    source: [{ id: 'definition' }],
    inputs: [input('zone-minutes-per-day', minutes(minutesPerDay)), input('open-days', days(at('openDays')))],
    result: minutes(minutesPerDay * at('openDays')),
  };
}

function grossStep(cell: PlantingCell): TraceStep {
  const mask = cell.at('openMask');
  return {
    id: 'irrigation-gross',
    source: [{ id: 'definition' }],
    inputs: [
      input('zone-minutes-per-day', minutes(cell.minutesPerDay)),
      ...weekLines(cell).flatMap(({ grossRate, indexes, which }) => [
        input({ id: 'application-rate', ...which }, rate(grossRate)),
        input(
          { id: 'open-days', ...which },
          days(indexes.filter((index) => isOpenOn(mask, index - cell.course.start)).length),
        ),
      ]),
    ],
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
