/** What rounding may add before a flow counts as too great. */
const ROUNDING = 1e-9;

/** The most that a source gives, with what rounding may add. */
export function mostFlowLpm(availableLpm: number): number {
  return availableLpm * (1 + ROUNDING);
}

/** Of each zone: the group that it runs in, from 0 in the order in which they were opened; -1 where it fits in none. */
export type GroupIndexes = Int32Array;

/**
 * First fit decreasing: the flows, greatest first (equal ones in the order given), each join the first group that has
 * room for them, or open one. A flow above what is available is in no group.
 */
export function firstFitDecreasing(flowsLpm: readonly number[], availableLpm: number): GroupIndexes {
  const most = mostFlowLpm(availableLpm);
  const groups = new Int32Array(flowsLpm.length).fill(-1);
  const groupLpm: number[] = [];
  const order = flowsLpm.map((_, index) => index).sort((a, b) => (flowsLpm[b] as number) - (flowsLpm[a] as number));
  for (const index of order) {
    const flowLpm = flowsLpm[index] as number;
    if (flowLpm > most) continue;
    let group = 0;
    while (group < groupLpm.length && (groupLpm[group] as number) + flowLpm > most) group += 1;
    groupLpm[group] = (groupLpm[group] ?? 0) + flowLpm;
    groups[index] = group;
  }
  return groups;
}
