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
  const sorted = [...places.entries()].sort(([, left], [, right]) => comparePaths(left.path, right.path));
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

/** The order in which a plan is read: what it is, then the place, then the zones, then the records. */
const READING_ORDER = [
  'format',
  'version',
  'units',
  'name',
  'notes',
  'season',
  'site',
  'supply',
  'zones',
  'log',
  'choices',
];

function comparePaths(left: Path, right: Path): number {
  const [leftFirst = '', rightFirst = ''] = [left[0], right[0]].map(String);
  if (leftFirst !== rightFirst) return READING_ORDER.indexOf(leftFirst) - READING_ORDER.indexOf(rightFirst);
  for (let depth = 1; depth < Math.min(left.length, right.length); depth++) {
    const [one, other] = [left[depth], right[depth]];
    if (typeof one === 'number' && typeof other === 'number' && one !== other) return one - other;
    // Fields of one object keep the order in which they were found.
    if (one !== other) return 0;
  }
  return left.length - right.length;
}
