import { requireNumber } from '../require-number.ts';
import { firstFitDecreasing } from './first-fit-decreasing.ts';

export interface ZoneFlow {
  readonly id: string;
  readonly flowLpm: number;
}

export interface FlowGroup {
  readonly ids: readonly string[];
  readonly flowLpm: number;
}

export interface FlowGroups {
  /**
   * Zones that may run at the same time, the group with the greatest zone first. A zone that asks too much is in none.
   */
  readonly groups: readonly FlowGroup[];
  /** Zones that ask for more than the source gives, even alone. */
  readonly tooGreat: readonly string[];
}

/**
 * Which zones can run together on a source, by `firstFitDecreasing`. Never more than 11/9 of the fewest possible groups
 * and two thirds of one (Dosa 2007, from memory).
 *
 * @throws RangeError where a flow is negative
 */
export function flowGroups(zones: readonly ZoneFlow[], availableLpm: number): FlowGroups {
  requireNumber('flow of the source (L/min)', availableLpm, { atLeast: 0 });
  for (const { id, flowLpm } of zones) requireNumber(`flow of zone ${id} (L/min)`, flowLpm, { atLeast: 0 });
  const groupIndexes = firstFitDecreasing(
    zones.map(({ flowLpm }) => flowLpm),
    availableLpm,
  );
  const groups: { ids: string[]; flowLpm: number }[] = [];
  const tooGreat: string[] = [];
  const greatestFirst = zones.map((_, index) => index).sort((a, b) => flowAt(zones, b) - flowAt(zones, a));
  for (const index of greatestFirst) {
    const { id, flowLpm } = zones[index] as ZoneFlow;
    const at = groupIndexes[index] as number;
    if (at < 0) continue;
    const group = groups[at] ?? { ids: [], flowLpm: 0 };
    groups[at] = group;
    group.ids.push(id);
    group.flowLpm += flowLpm;
  }
  for (const [index, { id }] of zones.entries()) if ((groupIndexes[index] as number) < 0) tooGreat.push(id);
  return { groups, tooGreat };
}

function flowAt(zones: readonly ZoneFlow[], index: number): number {
  return (zones[index] as ZoneFlow).flowLpm;
}
