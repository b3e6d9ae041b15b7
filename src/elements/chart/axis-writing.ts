import type { SeasonSpan } from '../../engine/garden.ts';
import { toSi, type UnitSystem } from '../../engine/units.ts';
import { type MonthStart, monthStarts } from '../../language/format/month-starts.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import { readerFor } from '../../language/reader.ts';

const writers = new Map<string, (value: number) => string>();
const months = new Map<string, readonly MonthStart[]>();

/** Writes values of the volume axis; the same function for the same units and locale. */
export function volumeWriter(units: UnitSystem, locale: string): (value: number) => string {
  const key = `${units} ${locale}`;
  let writer = writers.get(key);
  if (writer === undefined) {
    writer = (value) => formatQuantity(toSi(value, 'volume', units), 'volume', readerFor(locale, units));
    writers.set(key, writer);
  }
  return writer;
}

/** The months of a span; the same list for the same days and locale. */
export function monthsOf(span: SeasonSpan, locale: string): readonly MonthStart[] {
  const key = `${span.firstDay} ${span.weeks} ${locale}`;
  const known = months.get(key) ?? monthStarts(span, locale);
  months.set(key, known);
  return known;
}
