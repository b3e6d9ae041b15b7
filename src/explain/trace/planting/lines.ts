/** The lines that lie on a planting in one week, and what they bring in an hour. */
import { applicationRateMmPerHour } from '../../../engine/application/application-rate.ts';
import { netMmPerMinute } from '../../../engine/application/run-time.ts';
import type { EfficiencyBasis, GardenLine, PlantingFlow } from '../../../engine/garden.ts';
import { liesOn } from '../../../engine/line/planting-flows.ts';
import { flowOn } from '../../../engine/season/planting-days.ts';
import { daysIn } from '../day-span.ts';
import type { OfLine } from '../label-about.ts';
import type { TraceSource, TraceStep, TraceValue } from '../trace-step.ts';
import { area, code, count, emitterFlow, factor, flow, input, pressure, rate, share } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

/** A line on some days of a week, all at one pressure. */
export interface WeekLine {
  readonly line: GardenLine;
  readonly which: OfLine;
  /** Indexes of its days in the ground in this week. */
  readonly indexes: readonly number[];
  /** L/h. */
  readonly flowLph: number;
  readonly flow: PlantingFlow;
  readonly efficiency: number;
  readonly efficiencyBasis: EfficiencyBasis;
  /** mm/h. */
  readonly grossRate: number;
  /** mm/h. */
  readonly netRate: number;
}

export function weekLines({ planting, zone, ground, dayOf }: PlantingCell): readonly WeekLine[] {
  const laid = planting.flows.flatMap((flow) => {
    const indexes = daysIn(ground, (index) => flowOn(planting, dayOf(index)) === flow);
    if (indexes.length === 0) return [];
    const lies = (line: GardenLine) => line.emitters > 0 && liesOn(line, flow.from);
    return planting.lines.flatMap((line, order) => (lies(line) ? [{ line, order, flow, indexes }] : []));
  });
  return laid.map(({ line, order, flow, indexes }) => {
    const flowLph = flow.linesLph[order] as number;
    const grossRate = applicationRateMmPerHour(flowLph, planting.areaM2);
    const { efficiency = zone.efficiency, efficiencyBasis = zone.efficiencyBasis } = line;
    const isTwice = laid.some((other) => other.line === line && other.flow !== flow);
    return {
      line,
      which: {
        ...(laid.length === 1 ? {} : { line: order + 1 }),
        ...(isTwice ? { from: dayOf(indexes[0] as number) } : {}),
      },
      indexes,
      flowLph,
      flow,
      efficiency,
      efficiencyBasis,
      grossRate,
      netRate: 60 * netMmPerMinute(grossRate, efficiency),
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

function stepsOf({ planting }: PlantingCell, of: WeekLine): readonly TraceStep[] {
  const { which, grossRate, netRate, efficiency, efficiencyBasis } = of;
  return [
    flowStep(of),
    {
      id: 'application-rate',
      ...which,
      source: [{ id: 'definition' }],
      inputs: [input({ id: 'line-flow', ...which }, flow(of.flowLph / 60)), input('ground', area(planting.areaM2))],
      result: rate(grossRate),
    },
    {
      id: 'net-rate',
      ...which,
      source: [EFFICIENCIES[efficiencyBasis].source],
      inputs: [input({ id: 'application-rate', ...which }, rate(grossRate)), input('efficiency', share(efficiency))],
      result: rate(netRate),
    },
  ];
}

/** Its nominal flow where no pressure is known, or is enough for compensating emitters; else what its pressure gives. */
function flowStep({ line, which, flowLph, flow: { pressureKpa } }: WeekLine): TraceStep {
  const printed = [
    input('line', code('line', line.kind)),
    input('emitters', count(line.emitters)),
    input('emitter-flow', emitterFlow(line.emitterFlowLph)),
  ];
  const common = { id: 'line-flow', ...which, result: flow(flowLph / 60) } as const;
  if (pressureKpa === undefined) return { ...common, variant: 'laid', source: [{ id: 'plan' }], inputs: printed };
  const there = [...printed, input('line-pressure', pressure(pressureKpa)), ...emitterValues(line)];
  if (flowLph === line.flowLph) return { ...common, variant: 'full', source: [{ id: 'plan' }], inputs: there };
  const mean = input('mean-emitter-flow', emitterFlow(flowLph / line.emitters));
  return { ...common, variant: 'at-pressure', source: [{ id: 'solved-along-line' }], inputs: [...there, mean] };
}

function emitterValues({ compensating, leastPressureKpa, exponent }: GardenLine): readonly TraceValue[] {
  return [compensating ? input('least-pressure', pressure(leastPressureKpa)) : input('exponent', factor(exponent))];
}
