/** A hand shut-off in front of one planting. */
import type { MixContext } from '../mix-context.ts';
import { type MixCandidate, NO_GOODS } from '../remedy.ts';

/** Nothing for a planting that has one, or that is alone: the zone's own valve is in front of it. */
export function shutOffCandidates({ zone, laid }: MixContext): readonly MixCandidate[] {
  if (zone.plantings.length < 2) return [];
  return laid.flatMap(({ planting, line }): readonly MixCandidate[] => {
    if (planting.shutOff === true || line.kind === 'solid') return [];
    const turnsToRefill = planting.watering === undefined && planting.need.kind !== 'crop';
    return [
      {
        changes: [{ kind: 'shut-off', plantingId: planting.id, turnsToRefill }],
        goods: { ...NO_GOODS, shutOffs: 1 },
        edits: [{ type: 'change-planting', zone: zone.id, planting: planting.id, change: { shutOff: true } }],
      },
    ];
  });
}
