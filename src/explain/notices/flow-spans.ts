import type { PlantingFlow } from '../../engine/garden.ts';
import type { Season } from '../../engine/season/season.ts';
import type { PlantingSpan } from './planting-spans.ts';

/** Days of the season on which the same lines of a planting are fed by the same pressure. */
export interface FlowSpan extends PlantingSpan {
  readonly flow: PlantingFlow;
}

/** Planting by planting, each with its spans in the season: none where no line lies. */
export function flowSpans({ garden: { span }, zones }: Season): readonly (readonly FlowSpan[])[] {
  const last = span.firstDay + 7 * span.weeks - 1;
  const weekOf = (day: number) => Math.floor((day - span.firstDay) / 7);
  return zones.flatMap((zone) =>
    zone.plantings.map(({ planting }) =>
      planting.flows
        .filter(({ from, to }) => from <= last && to >= span.firstDay)
        .map(
          (flow): FlowSpan => ({
            zone,
            planting,
            flow,
            firstWeek: Math.max(0, weekOf(flow.from)),
            lastWeek: weekOf(Math.min(last, flow.to)),
          }),
        ),
    ),
  );
}
