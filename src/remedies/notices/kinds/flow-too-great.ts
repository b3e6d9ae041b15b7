/** A zone that asks for more than its source gives is split: its plantings in two by flow, or its only one cut in two. */
import type { ZoneSeason } from '../../../engine/season/season.ts';
import type { Plan, PlanZone } from '../../../plan/schema/plan-schema.ts';
import { cutOff } from '../../mix/kinds/cut.ts';
import { cutPlanting } from '../cut-planting.ts';
import type { NoticeInPlan, RemedyCandidate } from '../remedy.ts';

export function flowTooGreatCandidates({ plan, season, notice }: NoticeInPlan): readonly RemedyCandidate[] {
  const zone = plan.zones.find(({ id }) => id === notice.zoneId);
  const found = season.zones.find((each) => each.zone.id === notice.zoneId);
  if (zone === undefined || found === undefined) return [];
  const flows = flowsOf(found);
  const greatest = flows[0];
  const split = moving(zone, flows);
  const whole = split.length === 0 ? [] : splitZone(plan, zone, split);
  const planting = zone.plantings.find(({ id }) => id === greatest?.id);
  const cut = planting && cutPlanting(plan, zone, planting);
  return cut === undefined ? whole : [...whole, cut];
}

function splitZone(plan: Plan, zone: PlanZone, plantingIds: readonly string[]): readonly RemedyCandidate[] {
  const { edits, changes } = cutOff(plan, zone, plantingIds);
  return changes.flatMap((change): readonly RemedyCandidate[] => {
    if (change.kind !== 'cut') return [];
    const { newZoneId } = change;
    const edit = { type: 'together', action: 'split-zone', edits } as const;
    return [{ kind: 'split-zone', zoneId: zone.id, newZoneId, plantingIds, edit }];
  });
}

interface PlantingFlow {
  readonly id: string;
  readonly flowLpm: number;
}

/** The greatest flow of each planting that has any, greatest first. */
function flowsOf({ plantings }: ZoneSeason): readonly PlantingFlow[] {
  return plantings
    .map(({ planting }) => ({
      id: planting.id,
      flowLpm: Math.max(0, ...planting.flows.map(({ flowLph }) => flowLph)) / 60,
    }))
    .filter(({ flowLpm }) => flowLpm > 0)
    .toSorted((left, right) => right.flowLpm - left.flowLpm);
}

/** Each planting, greatest first, to the side that has less; the side that goes is the one that does not set the minutes. */
function moving({ rule }: PlanZone, flows: readonly PlantingFlow[]): readonly string[] {
  const side = () => ({ ids: [] as string[], flowLpm: 0 });
  const [one, other] = [side(), side()];
  for (const { id, flowLpm } of flows) {
    const lesser = one.flowLpm <= other.flowLpm ? one : other;
    lesser.ids.push(id);
    lesser.flowLpm += flowLpm;
  }
  return rule?.kind === 'planting' && other.ids.includes(rule.planting) ? one.ids : other.ids;
}
