/** Parts of plantings that say the same made one object: hundreds of beds have a handful of needs and lines among them. */
import type { Plan, PlanPlanting, PlanZone } from '../schema/plan-schema.ts';

/**
 * The same document; nothing in it may be changed in place. What has an id stays an object of its own: zones and plantings.
 * The fields of every part stand in the schema's order.
 */
export function shareAlike(plan: Plan): Plan {
  const known = new Map<string, unknown>();
  /** The first part that was written like this one. */
  const shared = <Part>(part: Part): Part => {
    const written = JSON.stringify(part);
    const first = known.get(written);
    if (first !== undefined) return first as Part;
    known.set(written, part);
    return part;
  };
  return { ...plan, zones: plan.zones.map(sharedZone) };

  function sharedZone(zone: PlanZone): PlanZone {
    return {
      ...zone,
      ...(zone.rule && { rule: shared(zone.rule) }),
      plantings: zone.plantings.map(sharedPlanting),
    };
  }

  function sharedPlanting(planting: PlanPlanting): PlanPlanting {
    const { need, extent, inGround, establishing, lines } = planting;
    return {
      ...planting,
      need: shared(need),
      extent: shared(extent),
      ...(inGround && { inGround: shared(inGround) }),
      ...(establishing && { establishing: shared(establishing) }),
      lines: shared(lines.map(shared)),
    };
  }
}
