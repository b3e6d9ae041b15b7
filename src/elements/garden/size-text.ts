/** A planting's size in words: as it was typed, and what it comes to. */
import { toSi } from '../../engine/units.ts';
import { sizesWords } from '../../language/en/sizes.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { extentOf } from '../../plan/to-garden/planting.ts';

type Size = Pick<PlanPlanting, 'extent' | 'container'>;

/** In the form in which it was typed, to be shown and to be typed again. */
export function sizeText({ extent, container }: Size, reader: Reader): string {
  const say = sizesWords(reader.language).text;
  const format = formatFor(reader);
  switch (extent.kind) {
    case 'area':
      return say.area(format, extent.area, format.unit('area'));
    case 'bed':
      return say.bed(format, extent.length, extent.width, format.unit('length'));
    case 'rows': {
      const apart = extent.apart === undefined ? '' : `${format.number(extent.apart, 1)} ${format.unit('spacing')}`;
      const words = container === undefined || apart === '' ? say.rows : say.boxes;
      return words(format, extent.rows, `${format.number(extent.length, 2)} ${format.unit('length')}`, apart);
    }
    case 'canopy':
      if (container !== undefined && container.opening === undefined)
        return say.holding(format, extent.count, container.volume, format.unit('volume'));
      // Whole feet of a crown are said in feet; the rim of a pot is in inches.
      if (container === undefined && reader.units === 'us' && extent.diameter % 12 === 0)
        return say.canopy(format, extent.count, extent.diameter / 12, format.unit('length'));
      return say.canopy(format, extent.count, extent.diameter, format.unit('diameter'));
  }
}

/** The ground that it covers, or what its pots hold. */
export function sizeComesTo({ extent, container }: Size, reader: Reader): string {
  const say = sizesWords(reader.language);
  const format = formatFor(reader);
  return container === undefined
    ? say.covers(format, extentOf(extent, reader.units).areaM2)
    : say.holds(format, toSi(container.volume, 'volume', reader.units));
}
