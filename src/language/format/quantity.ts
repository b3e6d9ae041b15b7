/** The engine's values as a reader sees them: in the plan's unit, rounded as a gardener would say them. */
import { fromSi, type Quantity, type UnitId, type UnitSystem, unitOf } from '../../engine/units.ts';
import { unitsWords } from '../en/units.ts';
import type { Reader } from '../reader.ts';
import { formatNumber, formatSpelledOut, NO_FIGURE } from './number.ts';

/** Decimals below ten and from ten on; `always` keeps them where they are zero, so that columns line up. */
interface Decimals {
  readonly below10: number;
  readonly from10: number;
  readonly always?: boolean;
}

const decimals = (below10: number, from10 = below10): Decimals => ({ below10, from10 });
const always = (places: number): Decimals => ({ below10: places, from10: places, always: true });

const DECIMALS: Readonly<Record<Quantity, Readonly<Record<UnitSystem, Decimals>>>> = {
  depth: { us: always(2), metric: always(1) },
  rate: { us: always(2), metric: always(1) },
  availableWater: { us: decimals(2), metric: decimals(0) },
  length: { us: decimals(1), metric: decimals(1) },
  elevation: { us: decimals(0), metric: decimals(0) },
  height: { us: decimals(1), metric: decimals(1) },
  waterHeight: { us: decimals(1), metric: decimals(2) },
  spacing: { us: decimals(1), metric: decimals(0) },
  diameter: { us: decimals(1), metric: decimals(0) },
  rootDepth: { us: decimals(1), metric: decimals(0) },
  bore: { us: decimals(3), metric: decimals(1) },
  area: { us: decimals(1, 0), metric: decimals(2, 1) },
  volume: { us: decimals(1, 0), metric: decimals(1, 0) },
  waterPerArea: { us: decimals(2, 1), metric: decimals(1, 0) },
  emitterFlow: { us: decimals(2, 1), metric: decimals(2, 1) },
  supplyFlow: { us: decimals(2, 1), metric: decimals(1, 1) },
  pressure: { us: decimals(1), metric: decimals(0) },
  temperature: { us: decimals(0), metric: decimals(1) },
  windSpeed: { us: decimals(1), metric: decimals(1) },
};

/** `310 gal`; the number and its unit never part. */
export function formatQuantity(si: number, quantity: Quantity, reader: Reader): string {
  return withUnit(formatAmount(si, quantity, reader), unitSymbol(quantity, reader));
}

/** `0.90 gpm` beside `1.65 gpm`: with as many decimals whatever the value is, for what stands in a list of its kind. */
export function formatListed(si: number, quantity: Quantity, reader: Reader): string {
  const { below10 } = DECIMALS[quantity][reader.units];
  const value = fromSi(si, quantity, reader.units);
  return withUnit(formatNumber(value, reader.locale, below10, below10), unitSymbol(quantity, reader));
}

/** A quantity without its unit, for columns that name it once. */
export function formatAmount(si: number, quantity: Quantity, { units, locale }: Reader): string {
  const value = fromSi(si, quantity, units);
  const { below10, from10, always: least } = DECIMALS[quantity][units];
  const places = isWrittenBelow10(value, below10) ? below10 : from10;
  return formatNumber(value, locale, places, least ? places : 0);
}

/** Whether a value is written as nought. */
export function isWrittenAs0(si: number, quantity: Quantity, { units }: Reader): boolean {
  return Math.abs(fromSi(si, quantity, units)) < 0.5 * 10 ** -DECIMALS[quantity][units].below10;
}

/** What is spelled out where it is read aloud. */
export type SpelledQuantity = 'depth' | 'volume';

const SPELLED: Readonly<Record<SpelledQuantity, Readonly<Record<UnitSystem, string>>>> = {
  depth: { us: 'inch', metric: 'millimeter' },
  volume: { us: 'gallon', metric: 'liter' },
};

/** `310 gallons`, `0.3 inches`: with the unit's own word, for what is read aloud. */
export function formatSpelledQuantity(si: number, quantity: SpelledQuantity, { units, locale }: Reader): string {
  const value = fromSi(si, quantity, units);
  const { below10, from10 } = DECIMALS[quantity][units];
  return formatSpelledOut(value, SPELLED[quantity][units], locale, isWrittenBelow10(value, below10) ? below10 : from10);
}

/** What stands beside a number of the quantity in the reader's units: `gal`, `sq ft`. */
export function unitSymbol(quantity: Quantity, { units, language }: Reader): string {
  return symbolOf(unitOf(quantity, units).name, language);
}

/** Symbol of a unit by its id: `sq ft` for `ft²`. */
export function symbolOf(unit: UnitId | 'min' | 'h', language: Reader['language']): string {
  return unitsWords(language).symbols[unit];
}

/** Binds a number to its unit with a no-break space. */
export function withUnit(number: string, unit: string): string {
  return unit === '' || number === NO_FIGURE ? number : `${number}\u00a0${unit}`;
}

/** What rounds up to ten reads as ten: “10”, not “10.0”. */
function isWrittenBelow10(value: number, places: number): boolean {
  return Math.abs(value) < 10 - 0.5 * 10 ** -places;
}
