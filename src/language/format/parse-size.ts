/** The size of a planting in the ground as people say it: `4 x 12 ft`, `9 x 3 ft across`, `3 rows 12 ft`, `96 sq ft`. */
import type { Quantity } from '../../engine/units.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { sizesWords } from '../en/sizes.ts';
import type { Reader } from '../reader.ts';
import { parseQuantity } from './parse-quantity.ts';

export type Extent = PlanPlanting['extent'];

/** The size in the form in which it was typed; undefined where it is none. Numbers alone are in the plan's own unit. */
export function parseSize(text: string, reader: Reader): Extent | undefined {
  const say = sizesWords(reader.language);
  const typed = typedSize(text);
  const apart = cut(typed, say.apart);
  const rows = rowsOf(apart.before, say.rows);
  if (rows !== undefined) return rowsExtent(rows, apart.isThere, reader);
  const across = cut(typed, say.across);
  const plants = plantsOf(across.before, across.isThere, [...say.plants, ...say.times], say.times);
  if (plants !== undefined) {
    const diameter = number(plants.size, 'diameter', reader, say.length[reader.units]);
    return diameter === undefined ? undefined : { kind: 'canopy', count: plants.count, diameter };
  }
  return bedOrArea(typed, say.times, reader);
}

/** In small letters, with signs of feet and inches and of times as words. */
export function typedSize(text: string): string {
  return ` ${text.trim().toLowerCase()} `
    .replaceAll(/[\u2032']/g, ' ft ')
    .replaceAll(/[\u2033"]/g, ' in ')
    .replaceAll(/[\u00d7*]/g, ' x ')
    .replaceAll(/(\d)\s*x\s*(?=\d)/g, '$1 x ');
}

/** `9 plants`: their number alone, of plants whose spread is known. */
export function parsePlantCount(text: string, { language }: Reader): number | undefined {
  const [, count] =
    new RegExp(`^(\\d+)\\s+(?:${escaped(sizesWords(language).plants)})$`, 'u').exec(typedSize(text).trim()) ?? [];
  return count === undefined || Number(count) === 0 ? undefined : Number(count);
}

/** `4 pots`, `9 shrubs`: how many there are, and not how large. */
export function isBareCount(text: string, { language }: Reader): boolean {
  const { plants, containers } = sizesWords(language);
  return new RegExp(`^\\d+\\s+(?:${escaped([...plants, ...containers])})$`, 'u').test(typedSize(text).trim());
}

/** The text in front of any of the words, where one stands there as a word. */
function cut(text: string, words: readonly string[]): { readonly before: string; readonly isThere: boolean } {
  const found = words.map((word) => text.indexOf(` ${word} `)).filter((at) => at >= 0);
  return found.length === 0
    ? { before: text, isThere: false }
    : { before: text.slice(0, Math.min(...found)), isThere: true };
}

const escaped = (words: readonly string[]): string =>
  words.map((word) => word.replaceAll(/[^\p{L}\p{N} ]/gu, '\\$&')).join('|');

interface Rows {
  readonly rows: number;
  /** Length of one, and, behind a comma, how far they are apart. */
  readonly rest: string;
}

function rowsOf(text: string, words: readonly string[]): Rows | undefined {
  const [, rows, rest] =
    new RegExp(`^\\s*(\\d+)\\s+(?:${escaped(words)})\\s+(?:\\p{L}{1,3}\\s+)?(\\d.*)$`, 'u').exec(text) ?? [];
  return rows === undefined || rest === undefined ? undefined : { rows: Number(rows), rest };
}

function rowsExtent({ rows, rest }: Rows, hasApart: boolean, reader: Reader): Extent | undefined {
  const [first = '', second] = rest.split(/,\s+|;/);
  const length = number(first, 'length', reader);
  const apart = hasApart && second !== undefined ? number(second, 'spacing', reader) : undefined;
  if (length === undefined) return undefined;
  return { kind: 'rows', rows, length, ...(apart === undefined ? {} : { apart }) };
}

/** `9 x 3 ft`, where `across` stood behind it, or `9 shrubs 3 ft`. */
function plantsOf(text: string, isAcross: boolean, words: readonly string[], times: readonly string[]) {
  const [, count, word = '', size] =
    new RegExp(`^\\s*(\\d+)\\s+(${escaped(words)})\\s+(?:\\p{L}{1,3}\\s+)?(\\d.*)$`, 'u').exec(text) ?? [];
  if (count === undefined || size === undefined) return undefined;
  return times.includes(word) && !isAcross ? undefined : { count: Number(count), size };
}

function bedOrArea(text: string, times: readonly string[], reader: Reader): Extent | undefined {
  const [first = '', second, third] = text.split(new RegExp(`\\s(?:${escaped(times)})\\s`));
  if (third !== undefined) return undefined;
  if (second === undefined) {
    const area = number(text, 'area', reader);
    return area === undefined ? undefined : { kind: 'area', area };
  }
  const width = number(second, 'length', reader);
  // A unit behind the second holds for both.
  const unit = /[\p{L}].*$/u.exec(second)?.[0] ?? '';
  const length = number(/\p{L}/u.test(first) ? first : `${first} ${unit}`, 'length', reader);
  return length === undefined || width === undefined ? undefined : { kind: 'bed', length, width };
}

/** `unit`: what a number alone is in, where that is not the quantity's own. */
function number(text: string, quantity: Quantity, reader: Reader, unit = ''): number | undefined {
  const typed = /\p{L}|\u00b2/u.test(text) ? text.trim() : `${text.trim()} ${unit}`.trim();
  const parsed = parseQuantity(typed, quantity, reader);
  return parsed.kind === 'number' && parsed.value > 0 ? parsed.value : undefined;
}
