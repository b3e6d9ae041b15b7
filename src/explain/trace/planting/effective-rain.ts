/** How much of the rain enters a planting's root zone. */
import { NORMALS } from '../../../engine/rain/daily-rain.ts';
import { daysIn } from '../day-span.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { depth, factor, input, share } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';
import { METHOD_SOURCES, normalMonths, shareOf, shareSteps } from './rain-share.ts';
import { rainFactorInput } from './rain-there.ts';

export function effectiveRainSteps(cell: PlantingCell): readonly TraceStep[] {
  const { site } = cell.season.garden;
  const measured = measuredInputs(cell);
  return [
    ...shareSteps(cell, normalMonths(cell, daysIn(cell.ground))),
    {
      id: 'effective-rain',
      source: [...METHOD_SOURCES[site.rain.method], { id: 'measured-days', cite: 'FAO-56 p. 170' }],
      inputs: [
        ...normalRainInputs(
          cell,
          daysIn(cell.ground, (day) => cell.season.weather.rain.origin[day] === NORMALS),
        ),
        ...measured,
        ...(measured.length > 0 ? [input('runoff', share(site.rain.runoffFraction))] : []),
        ...rainFactorInput(cell),
      ],
      result: depth(cell.at('rainSoakedMm')),
    },
  ];
}

/** The normals' rain of some days, with its share of each month. */
export function normalRainInputs(cell: PlantingCell, indexes: readonly number[]): readonly TraceValue[] {
  return normalMonths(cell, indexes).flatMap(({ index, month, rainMm }) => [
    input({ id: 'normal-rain', month }, depth(rainMm)),
    input({ id: 'rain-share', month }, factor(shareOf(cell, index))),
  ]);
}

/** Days that were read, by themselves or in a total, and had rain. */
function measuredInputs({ season, ground, dayOf }: PlantingCell): readonly TraceValue[] {
  const { rain, eto } = season.weather;
  return daysIn(ground, (day) => rain.origin[day] !== NORMALS && (rain.mm[day] as number) > 0).flatMap((day) => [
    input({ id: 'day-rain', day: dayOf(day) }, depth(rain.mm[day] as number)),
    input({ id: 'day-eto', day: dayOf(day) }, depth(eto.mm[day] as number)),
  ]);
}
