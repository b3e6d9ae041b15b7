/** Where the week's water went: nothing is lost without a name. */
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

const DEFINITION = 'Definition';

export function closingSteps({ at }: PlantingCell): readonly TraceStep[] {
  const effectiveRain = depth('Effective rain', at('rainSoakedMm'));
  const rain = depth('Rain', at('rainMm'));
  const gross = depth('Gross irrigation', at('irrigationGrossMm'));
  const net = depth('Net irrigation', at('irrigationNetMm'));
  const rainDrained = depth('Rain drained', at('rainDrainedMm'));
  const irrigationDrained = depth('Irrigation drained', at('irrigationDrainedMm'));
  const used = depth('Water used', at('usedMm'));
  const lost = depth('Lost', at('rainMm') - at('rainSoakedMm') + at('irrigationGrossMm') - at('irrigationNetMm'));
  const stored = depth('Change of stored water', at('depletionStartMm') - at('depletionEndMm'));
  const difference = total(rain, gross) - total(used, rainDrained, irrigationDrained, lost, stored);
  return [
    {
      id: 'rain-stayed',
      title: 'Rain credited',
      says: 'The rain that stayed where roots can reach it, and need not be watered.',
      formula: 'rain credited = effective rain − rain drained',
      source: DEFINITION,
      inputs: [effectiveRain, rainDrained],
      result: depth('Rain credited', at('rainSoakedMm') - at('rainDrainedMm')),
    },
    {
      id: 'irrigation-stayed',
      title: 'Irrigation that stayed',
      says: 'The irrigation that stayed where roots can reach it.',
      formula: 'irrigation that stayed = net irrigation − irrigation drained',
      source: DEFINITION,
      inputs: [net, irrigationDrained],
      result: depth('Irrigation that stayed', at('irrigationNetMm') - at('irrigationDrainedMm')),
    },
    {
      id: 'lost',
      title: 'Lost on the way',
      says: 'Rain that dried off or ran off, and irrigation that fell unevenly.',
      formula: 'lost = rain − effective rain + gross irrigation − net irrigation',
      source: DEFINITION,
      inputs: [rain, effectiveRain, gross, net],
      result: lost,
    },
    {
      id: 'storage-change',
      title: 'Change of the water in the soil',
      says: 'Above zero the soil ends the week wetter than it began, below zero drier.',
      formula: 'change = depletion at the start − depletion at the end',
      source: DEFINITION,
      inputs: [
        depth('Depletion at the week’s start', at('depletionStartMm')),
        depth('Depletion at the week’s end', at('depletionEndMm')),
      ],
      result: stored,
    },
    {
      id: 'closing',
      title: 'The water of the week adds up',
      says: 'All that came went somewhere: nothing is left over.',
      formula:
        'left over = rain + gross irrigation − used − rain drained − irrigation drained − lost − change of stored water',
      source: 'Conservation of water; FAO-56 eq. 85',
      inputs: [rain, gross, used, rainDrained, irrigationDrained, lost, stored],
      result: depth('Left over', difference),
    },
  ];
}

function total(...values: readonly TraceValue[]): number {
  return values.reduce((sum, { value }) => sum + Number(value), 0);
}
