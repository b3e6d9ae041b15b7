/** What irrigation brought to a planting in its week. */
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth, input, minutes, rate, share } from '../trace-value.ts';
import { type WeekLine, weekLines } from './lines.ts';
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
  return {
    id: 'irrigation-gross',
    source: [{ id: 'definition' }],
    inputs: weekLines(cell).flatMap((line) => [
      input({ id: 'application-rate', ...line.which }, rate(line.grossRate)),
      minutesOf(cell, line),
    ]),
    result: depth(cell.at('irrigationGrossMm')),
  };
}

function netStep(cell: PlantingCell): TraceStep {
  return {
    id: 'irrigation-net',
    source: [{ id: 'definition' }],
    inputs: weekLines(cell).flatMap((line) => [
      input({ id: 'net-rate', ...line.which }, rate(line.netRate)),
      minutesOf(cell, line),
    ]),
    result: depth(cell.at('irrigationNetMm')),
  };
}

function minutesOf({ daily }: PlantingCell, { indexes, which }: WeekLine): TraceValue {
  const watered = daily.reduce((sum, day) => sum + (indexes.includes(day.index) ? day.minutes : 0), 0);
  return input({ id: 'minutes-watered', ...which }, minutes(watered));
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
