/** The week's depths as volumes over the planting's ground. */
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { area, depth, input, volume } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

type VolumeStepId =
  | 'litres'
  | 'needed-litres'
  | 'demand-litres'
  | 'used-litres'
  | 'rain-stayed-litres'
  | 'irrigation-stayed-litres'
  | 'drained-irrigation-litres';

export function volumeSteps(cell: PlantingCell): readonly TraceStep[] {
  const { planting, at } = cell;
  const { areaM2 } = planting;
  const stayed = {
    rain: at('rainSoakedMm') - at('rainDrainedMm'),
    irrigation: at('irrigationNetMm') - at('irrigationDrainedMm'),
  };
  const over = (id: VolumeStepId, ofDepth: TraceValue, litres: number): TraceStep => ({
    id,
    variant: 'planting',
    source: [{ id: 'definition' }],
    inputs: [ofDepth, input('ground', area(areaM2))],
    result: volume(litres),
  });
  return [
    over('litres', input('irrigation-gross', depth(at('irrigationGrossMm'))), at('litres')),
    over('needed-litres', input('need', depth(at('neededMm'))), at('neededLitres')),
    over('demand-litres', input('demand', depth(at('demandMm'))), at('demandLitres')),
    over('used-litres', input('used', depth(at('usedMm'))), at('usedLitres')),
    over('rain-stayed-litres', input('rain-stayed', depth(stayed.rain)), at('rainStayedLitres')),
    over(
      'irrigation-stayed-litres',
      input('irrigation-stayed', depth(stayed.irrigation)),
      at('irrigationStayedLitres'),
    ),
    over(
      'drained-irrigation-litres',
      input('irrigation-drained', depth(at('irrigationDrainedMm'))),
      areaM2 * at('irrigationDrainedMm'),
    ),
    {
      id: 'unmet-litres',
      source: [{ id: 'definition' }],
      inputs: [input('demand-litres', volume(at('demandLitres'))), input('used-litres', volume(at('usedLitres')))],
      result: volume(at('demandLitres') - at('usedLitres')),
    },
  ];
}
