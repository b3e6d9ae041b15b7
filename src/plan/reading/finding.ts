/** A fault before it is put into words: where, what stands there, and what was expected. */
import { shortText, valueInWords } from '../words/short-text.ts';
import type { Fault } from './fault.ts';
import { placeInWords } from './place-in-words.ts';

export type Path = readonly (string | number)[];

export interface Finding {
  readonly path: Path;
  readonly value: unknown;
  readonly expected: string;
}

/** More would bury the first. */
export const MOST_FAULTS = 200;

/** In the document's order, one fault a place; the names in the words are those of the document. */
export function faultsOf(document: unknown, findings: readonly Finding[]): readonly Fault[] {
  const places = new Map<string, Finding>();
  for (const finding of findings) {
    const path = pathText(finding.path);
    if (!places.has(path)) places.set(path, finding);
  }
  const compare = readingOrder([...places.values()]);
  const sorted = [...places.entries()].sort(([, left], [, right]) => compare(left.path, right.path));
  const faults = sorted.slice(0, MOST_FAULTS).map(
    ([path, { path: parts, value, expected }]): Fault => ({
      path,
      where: placeInWords(document, parts),
      value: valueInWords(value),
      expected,
    }),
  );
  const more = sorted.length - faults.length;
  return more === 0
    ? faults
    : [
        ...faults,
        { path: '', where: 'The plan', value: `${more} more faults`, expected: 'the faults above put right first' },
      ];
}

function pathText(path: Path): string {
  return path.map((part) => (typeof part === 'number' ? part : shortText(part, 80))).join('.');
}

/** What a plan is, then the place, then the zones, then the records. */
const PARTS = ['format', 'version', 'units', 'name', 'notes', 'season', 'site', 'supply', 'zones', 'log', 'choices'];

/** The order in which a plan is read: parts as above, lists by their places, fields of one object as they were found. */
function readingOrder(findings: readonly Finding[]): (left: Path, right: Path) => number {
  const ranks = new Map<string, number>();
  const inside = (path: Path, depth: number) => pathText(path.slice(0, depth + 1));
  for (const { path } of findings) {
    path.forEach((_, depth) => {
      const prefix = inside(path, depth);
      if (!ranks.has(prefix)) ranks.set(prefix, ranks.size);
    });
  }
  const rank = (path: Path, depth: number) => ranks.get(inside(path, depth)) ?? 0;
  return (left, right) => {
    const depth = left.findIndex((part, place) => part !== right[place]);
    if (depth < 0 || depth >= right.length) return left.length - right.length;
    const [one, other] = [left[depth], right[depth]];
    if (typeof one === 'number' && typeof other === 'number') return one - other;
    if (depth === 0) return PARTS.indexOf(String(one)) - PARTS.indexOf(String(other));
    return rank(left, depth) - rank(right, depth);
  };
}
