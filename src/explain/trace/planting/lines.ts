/** The lines that lie on a planting in one week, and what they bring in an hour. */
import { applicationRateMmPerHour } from '../../../engine/application/application-rate.ts';
import { netMmPerMinute } from '../../../engine/application/run-time.ts';
import type { EfficiencyBasis, GardenLine } from '../../../engine/garden.ts';
import { lineOn } from '../../../engine/season/planting-days.ts';
import { daysIn } from '../day-span.ts';
import type { TraceSource, TraceStep } from '../trace-step.ts';
import { area, code, count, flow, input, rate, share } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

/** One line, or one of two where it was re-laid within the week. */
export interface WeekLine {
  readonly line: GardenLine;
  /** Its number among the planting's, from 1, where the week has more than one. */
  readonly which: { readonly line?: number };
  /** Indexes of its days in the ground in this week. */
  readonly indexes: readonly number[];
  /** mm/h. */
  readonly grossRate: number;
  /** mm/h. */
  readonly netRate: number;
}

export function weekLines({ planting, zone, ground, dayOf }: PlantingCell): readonly WeekLine[] {
  const laid = planting.lines
    .map((line, order) => ({
      line,
      number: order + 1,
      indexes: daysIn(ground, (index) => lineOn(planting, dayOf(index)) === line),
    }))
    .filter(({ indexes }) => indexes.length > 0);
  return laid.map(({ line, number, indexes }) => {
    const grossRate = applicationRateMmPerHour(line.flowLph, planting.areaM2);
    return {
      line,
      which: laid.length === 1 ? {} : { line: number },
      indexes,
      grossRate,
      netRate: 60 * netMmPerMinute(grossRate, zone.efficiency),
    };
  });
}

const EFFICIENCIES: Readonly<Record<EfficiencyBasis, { readonly source: TraceSource }>> = {
  default: { source: { id: 'efficiency-usual', cite: 'California Code of Regulations, Title 23 (2015)' } },
  efficiency: { source: { id: 'efficiency-set' } },
  'distribution-uniformity': { source: { id: 'efficiency-from-du', cite: 'Irrigation Association (2014)' } },
  'computed-uniformity': { source: { id: 'efficiency-from-eu', cite: 'Irrigation Association (2014)' } },
};

export function lineSteps(cell: PlantingCell): readonly TraceStep[] {
  const lines = weekLines(cell);
  return lines.length === 0 ? [noLineStep()] : lines.flatMap((line) => stepsOf(cell, line));
}

function noLineStep(): TraceStep {
  return { id: 'line-flow', variant: 'none', source: [{ id: 'plan' }], inputs: [], result: flow(0) };
}

function stepsOf(
  { planting, zone }: PlantingCell,
  { line, which, grossRate, netRate }: WeekLine,
): readonly TraceStep[] {
  const flowOfLine = flow(line.flowLph / 60);
  return [
    {
      id: 'line-flow',
      variant: 'laid',
      ...which,
      source: [{ id: 'plan' }],
      inputs: [
        input('line', code('line', line.kind)),
        input('emitters', count(line.emitters)),
        input('emitter-flow', { value: line.emitterFlowLph, quantity: 'emitterFlow' }),
      ],
      result: flowOfLine,
    },
    {
      id: 'application-rate',
      ...which,
      source: [{ id: 'definition' }],
      inputs: [input({ id: 'line-flow', ...which }, flowOfLine), input('ground', area(planting.areaM2))],
      result: rate(grossRate),
    },
    {
      id: 'net-rate',
      ...which,
      source: [EFFICIENCIES[zone.efficiencyBasis].source],
      inputs: [
        input({ id: 'application-rate', ...which }, rate(grossRate)),
        input('efficiency', share(zone.efficiency)),
      ],
      result: rate(netRate),
    },
  ];
}
