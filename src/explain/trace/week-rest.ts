/** Weeks all through which a planting asks for no water. */
import type { RestSpan } from '../../engine/garden.ts';
import type { PlantingSeason, Season } from '../../engine/season/season.ts';

/** Why it asks for none on any day of a week in the ground; undefined where on some day it may, or where it is not there. */
export function restOfWeek(
  { garden: { span } }: Season,
  { planting, demand }: PlantingSeason,
  week: number,
): RestSpan['kind'] | undefined {
  const { rest = [] } = planting;
  const first = Math.max(7 * week, demand.first);
  const end = Math.min(7 * week + 7, demand.end);
  if (rest.length === 0 || first >= end) return undefined;
  for (let day = first; day < end; day++) if (demand.rest?.[day] !== 1) return undefined;
  return rest.find(({ from, to }) => from <= span.firstDay + first && span.firstDay + first <= to)?.kind;
}
