/** Another size for a planting: lines that are still assumed are laid anew for it, and stay assumed. */
import type { UnitSystem } from '../engine/units.ts';
import type { Change } from './edits/edit.ts';
import type { PlanPlanting } from './schema/plan-schema.ts';
import { linesFor, usualWay } from './usual-lines.ts';

type Size = Pick<PlanPlanting, 'extent' | 'container'>;

/** `before`: the planting as it stands. The change names only what becomes another; lines that somebody laid stay, and several do. */
export function resized(
  before: Size & Pick<PlanPlanting, 'assumed'> & Partial<Pick<PlanPlanting, 'lines'>>,
  { extent, container }: { readonly extent: Size['extent']; readonly container?: Size['container'] | undefined },
  units: UnitSystem,
): Change<Size & Pick<PlanPlanting, 'lines' | 'assumed'>> {
  const size = { extent, ...(container === before.container ? {} : { container }) };
  const { assumed, lines = [] } = before;
  if (extent === before.extent || lines.length > 1 || assumed?.includes('lines') !== true) return size;
  return {
    ...size,
    lines: linesFor(usualWay(extent, container !== undefined), extent, units),
    assumed: assumed.filter((part) => part !== 'extent'),
  };
}
