/** The size of pots, baskets and boxes as people say it: `6 pots 18 in`, `6 x 5 gal pots`, `2 baskets 10 L`, `2 boxes 36 x 8 in`. */
import { toSi } from '../../engine/units.ts';
import { boxVolume, type ContainerForm, containerOf, widthOf } from '../../plan/container-size.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { sizesWords } from '../en/sizes.ts';
import type { Reader } from '../reader.ts';
import { parseQuantity } from './parse-quantity.ts';
import { type Extent, typedSize } from './parse-size.ts';

type Container = NonNullable<PlanPlanting['container']>;

export interface ContainerSize {
  /** Of pots that were given by what they hold: as wide as they usually are. */
  readonly extent: Extent;
  readonly container: Pick<Container, 'volume' | 'opening' | 'count'>;
  /** What was typed: the width, what one holds, or the sides of a box. */
  readonly by: 'width' | 'volume' | 'sides';
  /** Named as a basket, which hangs. */
  readonly isBasket: boolean;
}

/** Undefined where it names no container and no volume. Numbers alone are inches, or centimeters, across. */
export function parseContainerSize(text: string, reader: Reader): ContainerSize | undefined {
  const say = sizesWords(reader.language);
  const words = typedSize(text)
    .replaceAll(/(\d)-(?=\p{L})/gu, '$1 ')
    .trim()
    .split(/\s+/);
  const named = words.filter((word) => includes(say.containers, word));
  const rest = words.filter((word) => !includes(say.containers, word) && !includes(say.fillers, word)).join(' ');
  const isOne = includes(say.containers, words[0] ?? '');
  const [, count = '1', size = ''] = (isOne ? /^()?(\d.*)$/u : /^(?:(\d+)\s+(?:x\s+)?)?(\d.*)$/u).exec(rest) ?? [];
  // `6 pots`: how many there are, and not how large.
  if (!isOne && named.length > 0 && /^\d+$/.test(rest)) return undefined;
  const isBasket = named.some((word) => includes(say.baskets, word));
  return sizeOf({ count: Number(count), size, form: isBasket ? 'basket' : 'pot', isNamed: named.length > 0 }, reader);
}

const includes = (words: readonly string[], word: string): boolean => words.includes(word);

interface Typed {
  readonly count: number;
  readonly size: string;
  readonly form: ContainerForm;
  readonly isNamed: boolean;
}

function sizeOf({ count, size, form, isNamed }: Typed, reader: Reader): ContainerSize | undefined {
  const { units } = reader;
  const volume = /\p{L}/u.test(size) ? positive(parseQuantity(size, 'volume', reader)) : undefined;
  if (volume !== undefined) {
    const extent: Extent = { kind: 'canopy', count, diameter: widthOf(form, volume, units) };
    return { extent, container: { volume }, by: 'volume', isBasket: form === 'basket' };
  }
  if (!isNamed) return undefined;
  const sides = /^(.+?) x (.+)$/.exec(size);
  if (sides !== null) return boxOf(count, sides[1] ?? '', sides[2] ?? '', reader);
  const across = positive(parseQuantity(size, 'diameter', reader));
  if (across === undefined) return undefined;
  return {
    extent: { kind: 'canopy', count, diameter: across },
    container: containerOf(form, across, units),
    by: 'width',
    isBasket: form === 'basket',
  };
}

/** Boxes are rows as long as one of them and as far apart as it is wide. A unit behind the second side holds for both. */
function boxOf(count: number, long: string, wide: string, reader: Reader): ContainerSize | undefined {
  const { units } = reader;
  const unit = /\p{L}.*$/u.exec(wide)?.[0] ?? '';
  const inInches = units === 'us' ? 'in' : 'cm';
  const withUnit = (text: string) => (/\p{L}/u.test(text) ? text : `${text} ${unit || inInches}`);
  const length = positive(parseQuantity(withUnit(long), 'length', reader));
  const apart = positive(parseQuantity(withUnit(wide), 'spacing', reader));
  if (length === undefined || apart === undefined) return undefined;
  const volume = boxVolume(toSi(length, 'length', units), toSi(apart, 'spacing', units), units);
  return {
    extent: { kind: 'rows', rows: count, length, apart },
    container: { volume, count },
    by: 'sides',
    isBasket: false,
  };
}

const positive = (parsed: ReturnType<typeof parseQuantity>): number | undefined =>
  parsed.kind === 'number' && parsed.value > 0 ? parsed.value : undefined;
