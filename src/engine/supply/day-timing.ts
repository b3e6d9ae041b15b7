import { flowGroups } from './flow-groups.ts';
import { type WateringDayPlan, wateringDay, type ZoneCycles } from './watering-window.ts';

/** A zone that waters on a day. */
export interface DayRun extends ZoneCycles {
  readonly flowLpm: number;
}

export interface DayTiming extends WateringDayPlan {
  /** Ids of zones that can run at the same time, group by group, in the order in which the groups were made. */
  readonly groups: readonly (readonly string[])[];
  /** Of these, zones that ask for more than the source gives even alone: each is a group of its own. */
  readonly tooGreat: readonly string[];
}

/**
 * When the zones of a day run. As many as the source feeds run at the same time (`flowGroups`); where its flow is not
 * known, one after another. While one group's soil takes up its water another runs.
 *
 * @param sourceLpm NaN where it is not known
 */
export function dayTiming(runs: readonly DayRun[], sourceLpm: number, windowHours: number): DayTiming {
  const { groups, tooGreat } = dayGroups(runs, sourceLpm);
  const plan = wateringDay({ groups, windowHours, interleaves: true });
  return { ...plan, groups: groups.map((group) => group.map(({ id }) => id)), tooGreat };
}

interface DayGroups {
  readonly groups: readonly (readonly DayRun[])[];
  readonly tooGreat: readonly string[];
}

function dayGroups(runs: readonly DayRun[], sourceLpm: number): DayGroups {
  if (Number.isNaN(sourceLpm)) return { groups: runs.map((run) => [run]), tooGreat: [] };
  const runOf = new Map(runs.map((run) => [run.id, run]));
  const { groups, tooGreat } = flowGroups(runs, sourceLpm);
  const ids = [...tooGreat.map((id) => [id]), ...groups.map((group) => group.ids)];
  return { groups: ids.map((group) => group.map((id) => runOf.get(id) as DayRun)), tooGreat };
}
