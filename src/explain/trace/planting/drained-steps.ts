/** What went below the roots, day by day. */
import type { TraceStep } from '../trace-step.ts';
import { depth } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

/** Less than this drained is rounding. */
const LEAST_DRAINED_MM = 1e-12;

export function drainedSteps(cell: PlantingCell): readonly TraceStep[] {
  const drained = cell.daily.filter(({ drainedMm }) => drainedMm > LEAST_DRAINED_MM);
  const inputs = drained.flatMap((day) => {
    const name = cell.dayName(day.place);
    return [
      depth(`${name}, depletion at the start`, day.startMm),
      depth(`${name}, used`, day.usedMm),
      depth(`${name}, rain that soaks in`, day.soakedMm),
      depth(`${name}, irrigation`, day.irrigationMm),
    ];
  });
  const source = 'FAO-56 eq. 88; counting irrigation first is a choice of this kit';
  const excess = 'a day’s excess = max(0, rain + irrigation − used − depletion)';
  return [
    {
      id: 'irrigation-drained',
      title: 'Irrigation drained below the roots',
      says:
        drained.length === 0
          ? 'On no day came more than the soil could hold.'
          : 'More came than the soil could hold; irrigation is counted first, as it could have been saved.',
      formula: `${excess}; irrigation drained = the lesser of the excess and the day’s irrigation, summed`,
      source,
      inputs,
      result: depth('Irrigation drained', cell.at('irrigationDrainedMm')),
    },
    {
      id: 'rain-drained',
      title: 'Rain drained below the roots',
      says:
        drained.length === 0 ? 'On no day came more than the soil could hold.' : 'What is left of the excess was rain.',
      formula: `${excess}; rain drained = the excess that the day’s irrigation does not explain, summed`,
      source,
      inputs,
      result: depth('Rain drained', cell.at('rainDrainedMm')),
    },
  ];
}
