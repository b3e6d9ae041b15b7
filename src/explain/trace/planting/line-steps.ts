/** What a planting's line brings in an hour. */
import type { EfficiencyBasis, GardenLine } from '../../../engine/garden.ts';
import type { TraceStep } from '../trace-step.ts';
import { area, count, flow, percent, rate, words } from '../trace-value.ts';
import { type LinePiece, linePieces } from './line-pieces.ts';
import type { PlantingCell } from './planting-cell.ts';

const KINDS: Readonly<Record<GardenLine['kind'], string>> = {
  dripline: 'dripline',
  point: 'point emitters',
  spray: 'micro-spray',
  solid: 'solid line without emitters',
};

const EFFICIENCY_SOURCES: Readonly<Record<EfficiencyBasis, string>> = {
  default: 'California Code of Regulations, Title 23 (2015), the usual efficiency of the method',
  efficiency: 'Efficiency set in the plan',
  'distribution-uniformity':
    'Efficiency 0.4 + 0.6 DU from the distribution uniformity set in the plan: Irrigation Association (2014), from memory',
  'computed-uniformity':
    'Efficiency 0.4 + 0.6 EU from the uniformity computed along its lines: Irrigation Association (2014), from memory',
};

export function lineSteps(cell: PlantingCell): readonly TraceStep[] {
  const pieces = linePieces(cell);
  return pieces.length === 0 ? [noLineStep()] : pieces.flatMap((piece) => pieceSteps(cell, piece));
}

function noLineStep(): TraceStep {
  return {
    id: 'line-flow',
    title: 'Flow of the line',
    says: 'No line is laid here in this week, so irrigation brings it nothing.',
    formula: 'flow = 0 without a line',
    source: 'The plan',
    inputs: [words('Line', 'none laid')],
    result: flow('Flow of the line', 0),
  };
}

function pieceSteps({ planting, zone }: PlantingCell, piece: LinePiece): readonly TraceStep[] {
  const { line, suffix, idSuffix } = piece;
  const flowOfLine = flow(`Flow of the line${suffix}`, line.flowLph / 60);
  const gross = rate(`Application rate${suffix}`, piece.grossRate);
  return [
    {
      id: `line-flow${idSuffix}`,
      title: `Flow of the line${suffix}`,
      says: 'All emitters of the line together.',
      formula: 'flow = emitters × flow of one',
      source: 'The plan',
      inputs: [
        words('Line', KINDS[line.kind]),
        count('Emitters', line.emitters),
        { label: 'Flow of one emitter', value: line.emitterFlowLph, quantity: 'emitterFlow' },
      ],
      result: flowOfLine,
    },
    {
      id: `application-rate${idSuffix}`,
      title: `Application rate${suffix}`,
      says: 'How deep an hour’s run would stand on the planting’s ground if nothing soaked in.',
      formula: 'rate = flow in an hour / ground; one litre on one square metre is one millimetre',
      source: 'Definition',
      inputs: [flowOfLine, area('Ground of the planting', planting.areaM2)],
      result: gross,
    },
    {
      id: `net-rate${idSuffix}`,
      title: `Net application rate${suffix}`,
      says: 'No line waters quite evenly; this part of its water counts as reaching the roots everywhere.',
      formula: 'net rate = rate × efficiency',
      source: EFFICIENCY_SOURCES[zone.efficiencyBasis],
      inputs: [gross, percent('Efficiency', zone.efficiency)],
      result: rate(`Net application rate${suffix}`, piece.netRate),
    },
  ];
}
