/** A typed value of a quantity, with the unit that may stand behind it: `18`, `18 in`, `45 cm`, `1.5 ft`. */
import { fromSi, QUANTITIES, type Quantity, toSi, type UnitId, type UnitSystem, unitOf } from '../../engine/units.ts';
import { roundByShare } from '../../plan/edits/round-for-person.ts';
import { fieldUnits, fieldUnitsWords } from '../en/field-units.ts';
import { units, unitsWords } from '../en/units.ts';
import type { Language } from '../language.ts';
import type { Reader } from '../reader.ts';
import { type ParsedNumber, parseNumber, unread } from './parse-number.ts';

/** Engine units that measure the same, each with what one of it is in the first of its line. */
const SAME_DIMENSION: readonly Readonly<Record<string, number>>[] = [
  { m: 1, mm: 0.001 },
  { 'L/min': 1, 'L/h': 1 / 60 },
  { 'L/m²': 1, mm: 1 },
];

/** What is left of a converted value: six digits, so that a round figure stays one. */
const CONVERTED_TOLERANCE = 1e-6;

/** A unit that a quantity can be typed in, by another quantity that is stated in it. */
interface TypedIn {
  readonly unit: UnitId;
  readonly quantity: Quantity;
  readonly system: UnitSystem;
  /** One engine unit of that quantity, in that of the quantity asked for. */
  readonly scale: number;
}

/**
 * Reads a number alone as one in the plan's own unit, and a number with a unit of the same dimension, in the reader's language or in
 * English, as what it comes to in the plan's own unit. The value is in the plan's unit, not in SI.
 */
export function parseQuantity(text: string, quantity: Quantity, reader: Reader): ParsedNumber {
  const typed = text.trim().replace(/\.$/, '');
  const bare = parseNumber(text, reader.language);
  if (bare.kind === 'number') return bare;
  const lower = typed.toLowerCase();
  for (const [word, typedIn] of wordsFor(quantity, reader.language)) {
    if (!lower.endsWith(word)) continue;
    const number = parseNumber(typed.slice(0, typed.length - word.length), reader.language);
    if (number.kind === 'number')
      return { kind: 'number', value: inPlanUnit(number.value, typedIn, quantity, reader.units) };
  }
  return unknownUnit(typed, reader.language) ?? bare;
}

function inPlanUnit(value: number, typedIn: TypedIn, quantity: Quantity, system: UnitSystem): number {
  if (typedIn.unit === unitOf(quantity, system).name) return value;
  const si = toSi(value, typedIn.quantity, typedIn.system) * typedIn.scale;
  return roundByShare(fromSi(si, quantity, system), CONVERTED_TOLERANCE);
}

/** A number with something behind it that is no unit here. */
function unknownUnit(typed: string, language: Language): ParsedNumber | undefined {
  const [, number = '', unit = ''] = /^(.*?)\s*(\p{L}[^\p{Nd}]*)$/u.exec(typed) ?? [];
  if (parseNumber(number, language).kind === 'unread') return undefined;
  return unread('no-unit', fieldUnitsWords(language).noUnit(unit));
}

/** Words of every unit that measures what the quantity does; the longest first, since `m` ends `cm`. */
function wordsFor(quantity: Quantity, language: Language): readonly (readonly [string, TypedIn])[] {
  return unitsFor(quantity)
    .flatMap((typedIn) => wordsOf(typedIn.unit, language).map((word) => [word, typedIn] as const))
    .sort(([left], [right]) => right.length - left.length);
}

function wordsOf(unit: UnitId, language: Language): readonly string[] {
  const typed: readonly Readonly<Partial<Record<UnitId, readonly string[]>>>[] = [
    fieldUnits.typed,
    units.typed,
    fieldUnitsWords(language).typed,
    unitsWords(language).typed,
  ];
  const symbol = unitsWords(language).symbols[unit].toLowerCase();
  return [...new Set([symbol, ...typed.flatMap((words) => words[unit] ?? [])])];
}

function unitsFor(quantity: Quantity): readonly TypedIn[] {
  const { siName } = unitOf(quantity, 'metric');
  const found = new Map<UnitId, TypedIn>();
  for (const other of QUANTITIES) {
    const scale = scaleBetween(unitOf(other, 'metric').siName, siName);
    for (const system of ['us', 'metric'] as const) {
      const unit = unitOf(other, system).name;
      if (scale !== undefined && !found.has(unit)) found.set(unit, { unit, quantity: other, system, scale });
    }
  }
  return [...found.values()];
}

/** Undefined where they do not measure the same. */
function scaleBetween(from: UnitId, to: UnitId): number | undefined {
  if (from === to) return 1;
  const line = SAME_DIMENSION.find((units) => from in units && to in units);
  return line && (line[from] ?? 0) / (line[to] ?? 1);
}
