/** Another rule for the zone's minutes: costs nothing, and is seldom enough. */
import type { ZoneRule } from '../../../engine/garden.ts';
import { rulesOf } from '../../../engine/mix/compare-zone.ts';
import type { PlanZone } from '../../../plan/schema/plan-schema.ts';
import type { MixContext } from '../mix-context.ts';
import { type MixCandidate, NO_GOODS } from '../remedy.ts';

export function ruleCandidates({ zone, zoneSeason }: MixContext): readonly MixCandidate[] {
  return rulesOf(zoneSeason)
    .filter((rule) => !isSameRule(rule, zoneSeason.zone.rule))
    .map((rule) => ({
      changes: [{ kind: 'rule', rule }],
      goods: NO_GOODS,
      edits: [{ type: 'change-zone', zone: zone.id, change: { rule: ruleInPlan(rule) } }],
    }));
}

export function isSameRule(one: ZoneRule, other: ZoneRule): boolean {
  if (one.kind === 'planting' && other.kind === 'planting') return one.plantingId === other.plantingId;
  return one.kind === other.kind;
}

function ruleInPlan(rule: ZoneRule): NonNullable<PlanZone['rule']> {
  return rule.kind === 'planting' ? { kind: 'planting', planting: rule.plantingId } : rule;
}
