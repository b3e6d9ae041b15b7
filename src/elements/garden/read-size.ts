/** What a typed size comes to, for a planting that is there or one that is begun. */
import { type ContainerSize, parseContainerSize } from '../../language/format/parse-container-size.ts';
import { parseSize } from '../../language/format/parse-size.ts';
import type { Reader } from '../../language/reader.ts';
import { containerOf } from '../../plan/container-size.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { sizeText } from './size-text.ts';

type Container = NonNullable<PlanPlanting['container']>;

export interface ReadSize {
  readonly extent: PlanPlanting['extent'];
  /** Undefined where what is typed stands in the ground. */
  readonly container?: Container | undefined;
  /** Of pots and boxes that were typed: by what. */
  readonly by?: ContainerSize['by'];
  readonly isBasket?: boolean;
}

/** A size that nobody typed anew stays to the last figure; pots of another size keep their mix and their rain. */
export function readSize(
  text: string,
  before: Pick<PlanPlanting, 'extent' | 'container'> | undefined,
  reader: Reader,
): ReadSize | undefined {
  if (before !== undefined && text.trim() === sizeText(before, reader)) return before;
  const kept = keptOf(before?.container);
  const pots = parseContainerSize(text, reader);
  if (pots !== undefined) return { ...pots, container: { ...kept, ...pots.container } };
  const extent = parseSize(text, reader);
  if (extent?.kind !== 'canopy') return extent && { extent };
  const trunk = before?.extent.kind === 'canopy' ? before.extent.trunk : undefined;
  if (before?.container === undefined) return { extent: trunk === undefined ? extent : { ...extent, trunk } };
  return { extent, container: { ...kept, ...containerOf('pot', extent.diameter, reader.units) }, by: 'width' };
}

/** What the size of a pot does not decide. */
function keptOf(container: Partial<Container> = {}): Omit<Container, 'volume' | 'opening' | 'count'> {
  const { volume: _, opening: __, count: ___, ...kept } = container;
  return kept;
}
