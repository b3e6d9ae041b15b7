/** The week's depths as volumes over the planting's ground. */
import type { PlantingVolume } from '../../../engine/season/planting-week.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { area, depth, volume } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

interface Volume {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly field: PlantingVolume;
  readonly depthOf: (at: PlantingCell['at']) => TraceValue;
}

const VOLUMES: readonly Volume[] = [
  {
    id: 'litres',
    title: 'Water received',
    says: 'What the meter would show for this planting.',
    field: 'litres',
    depthOf: (at) => depth('Gross irrigation', at('irrigationGrossMm')),
  },
  {
    id: 'needed-litres',
    title: 'Need at its roots, as a volume',
    says: 'The net need over the ground that the planting covers.',
    field: 'neededLitres',
    depthOf: (at) => depth('Net need', at('neededMm')),
  },
  {
    id: 'demand-litres',
    title: 'Demand, as a volume',
    says: 'What the planting would use if it never went short.',
    field: 'demandLitres',
    depthOf: (at) => depth('Demand ETc', at('demandMm')),
  },
  {
    id: 'used-litres',
    title: 'Water used, as a volume',
    says: 'What the plants took up.',
    field: 'usedLitres',
    depthOf: (at) => depth('Water used', at('usedMm')),
  },
  {
    id: 'rain-stayed-litres',
    title: 'Rain credited, as a volume',
    says: 'The rain that stayed where roots can reach it.',
    field: 'rainStayedLitres',
    depthOf: (at) => depth('Rain credited', at('rainSoakedMm') - at('rainDrainedMm')),
  },
  {
    id: 'irrigation-stayed-litres',
    title: 'Irrigation that stayed, as a volume',
    says: 'The irrigation that stayed where roots can reach it.',
    field: 'irrigationStayedLitres',
    depthOf: (at) => depth('Irrigation that stayed', at('irrigationNetMm') - at('irrigationDrainedMm')),
  },
];

export function litresSteps(cell: PlantingCell): readonly TraceStep[] {
  const { planting, at } = cell;
  const { areaM2 } = planting;
  return [
    ...VOLUMES.map(({ id, title, says, field, depthOf }) =>
      volumeStep({ id, title, says }, depthOf(at), areaM2, at(field)),
    ),
    volumeStep(
      {
        id: 'drained-irrigation-litres',
        title: 'Irrigation drained, as a volume',
        says: 'Irrigation that went below the roots and helped nobody.',
      },
      depth('Irrigation drained', at('irrigationDrainedMm')),
      areaM2,
      areaM2 * at('irrigationDrainedMm'),
    ),
    {
      id: 'unmet-litres',
      title: 'Demand that went unmet',
      says: 'What the plants would have used and did not get.',
      formula: 'unmet = demand − used',
      source: 'Definition',
      inputs: [volume('Demand', at('demandLitres')), volume('Used', at('usedLitres'))],
      result: volume('Unmet demand', at('demandLitres') - at('usedLitres')),
    },
  ];
}

function volumeStep(
  named: Pick<TraceStep, 'id' | 'title' | 'says'>,
  ofDepth: TraceValue,
  areaM2: number,
  litres: number,
): TraceStep {
  return {
    ...named,
    formula: 'volume = depth × ground; one millimetre on one square metre is one litre',
    source: 'Definition',
    inputs: [ofDepth, area('Ground of the planting', areaM2)],
    result: volume(named.title, litres),
  };
}
