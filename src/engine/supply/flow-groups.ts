import { requireNumber } from '../require-number.ts';

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

/** What rounding may add before a flow counts as too great. */
const ROUNDING = 1e-9;

/**
 * Which zones can run together on a source: first fit decreasing. The zones, greatest flow first (equal ones in the
 * order given), each join the first group that has room for them. Never more than 11/9 of the fewest possible groups
 * and two thirds of one (Dosa 2007, from memory).
 *
 * @throws RangeError where a flow is negative
 */
export function flowGroups(zones: readonly ZoneFlow[], availableLpm: number): FlowGroups {
  requireNumber('flow of the source (L/min)', availableLpm, { atLeast: 0 });
  for (const zone of zones) requireNumber(`flow of zone ${zone.id} (L/min)`, zone.flowLpm, { atLeast: 0 });
  const most = availableLpm * (1 + ROUNDING);
  const tooGreat = zones.filter((zone) => zone.flowLpm > most).map((zone) => zone.id);
  const groups: { ids: string[]; flowLpm: number }[] = [];
  for (const { id, flowLpm } of zones.toSorted((a, b) => b.flowLpm - a.flowLpm)) {
    if (flowLpm > most) continue;
    const group = groups.find((candidate) => candidate.flowLpm + flowLpm <= most);
    if (group) {
      group.ids.push(id);
      group.flowLpm += flowLpm;
    } else groups.push({ ids: [id], flowLpm });
  }
  return { groups, tooGreat };
}
