/** What of the rain reaches a planting under a sheet, or in pots. */
import { daysIn, sumOver } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { area, count, depth, factor, input, length, share } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

export function rainThereSteps(cell: PlantingCell): readonly TraceStep[] {
  const { days, at, season, ground } = cell;
  const { rainFactor } = days.demand;
  if (rainFactor === 1) return [];
  const fell = sumOver(season.weather.rain.mm, daysIn(ground));
  return [
    ...factorSteps(cell),
    {
      id: 'rain-there',
      source: [{ id: 'definition' }],
      inputs: [input('rain', depth(fell)), ...rainFactorInput(cell)],
      result: depth(at('rainMm')),
    },
  ];
}

/** Nothing where all of the rain reaches it. */
export function rainFactorInput({ days: { demand } }: PlantingCell): readonly TraceValue[] {
  return demand.rainFactor === 1 ? [] : [input('rain-factor', factor(demand.rainFactor))];
}

function factorSteps({ planting: { container, areaM2, mulch }, days }: PlantingCell): readonly TraceStep[] {
  const of = { id: 'rain-factor', result: factor(days.demand.rainFactor) } as const;
  if (mulch?.kind === 'plastic' && days.demand.rainFactor === 0) {
    return [{ ...of, variant: 'plastic', source: ['Penn State Extension (2013)'], inputs: [] }];
  }
  if (container === undefined) return [];
  return [
    {
      ...of,
      variant: 'pot',
      source: [{ id: 'definition' }],
      inputs: [
        input('pots', count(container.count)),
        input('opening', length(container.openingM)),
        input('opening-rain', share(container.rainShare)),
        input('ground', area(areaM2)),
      ],
    },
  ];
}
