/** A fault before its place has names: a path, what stands there, and what was expected. */
import { shortText } from '../words/short-text.ts';
import type { Expectation, Fault, Found } from './fault.ts';
import { type Path, placeAt, WHOLE_PLAN } from './place.ts';

export type Issue = Expectation & {
  readonly path: Path;
  /** As it stands there, of any size. */
  readonly value: unknown;
};

/** More would bury the first. */
export const MOST_FAULTS = 200;

/** In the document's order, one fault a place; names are those of the document. Issues of `more-faults` are added to what is only counted. */
export function faultsOf(document: unknown, issues: readonly Issue[]): readonly Fault[] {
  const places = new Map<string, Issue>();
  let uncounted = 0;
  for (const issue of issues) {
    if (issue.code === 'more-faults') {
      uncounted += issue.values.count;
      continue;
    }
    const path = pathText(issue.path);
    if (!places.has(path)) places.set(path, issue);
  }
  const compare = readingOrder([...places.values()]);
  const sorted = [...places.entries()].sort(([, left], [, right]) => compare(left.path, right.path));
  const faults = sorted.slice(0, MOST_FAULTS).map(([path, issue]) => {
    const place = placeAt(document, issue.path);
    return { path, code: issue.code, values: { ...issue.values, place, found: foundOf(issue.value) } } as Fault;
  });
  const more = sorted.length - faults.length + uncounted;
  if (more === 0) return faults;
  return [...faults, { path: '', code: 'more-faults', values: { count: more, place: WHOLE_PLAN, found: undefined } }];
}

/** A list of at most so many short items is named item by item. */
const MOST_ITEMS = 7;

/** What stands somewhere, small enough to hand on. */
export function foundOf(value: unknown): Found {
  if (typeof value === 'string') return shortText(value);
  if (value === null || value === undefined || typeof value === 'number' || typeof value === 'boolean') return value;
  if (Array.isArray(value)) {
    const isShort = value.length <= MOST_ITEMS && value.every((item) => typeof item !== 'object' || item === null);
    return isShort
      ? { items: Array.from(value, (item) => shortText(String(item ?? null))) }
      : { listLength: value.length };
  }
  return typeof value === 'object' ? { fields: Object.keys(value).length } : { type: typeof value };
}

function pathText(path: Path): string {
  return path.map((part) => (typeof part === 'number' ? part : shortText(part, 80))).join('.');
}

/** What a plan is, then the place, then the zones, then the records. */
const PARTS = [
  'format',
  'version',
  'units',
  'name',
  'identity',
  'notes',
  'season',
  'site',
  'supply',
  'zones',
  'log',
  'choices',
];

/** The order in which a plan is read: parts as above, lists by their indexes, fields of one object as they were found. */
function readingOrder(issues: readonly Issue[]): (left: Path, right: Path) => number {
  const ranks = new Map<string, number>();
  const inside = (path: Path, depth: number) => pathText(path.slice(0, depth + 1));
  for (const { path } of issues) {
    path.forEach((_, depth) => {
      const prefix = inside(path, depth);
      if (!ranks.has(prefix)) ranks.set(prefix, ranks.size);
    });
  }
  const rank = (path: Path, depth: number) => ranks.get(inside(path, depth)) ?? 0;
  return (left, right) => {
    const depth = left.findIndex((part, index) => part !== right[index]);
    if (depth < 0 || depth >= right.length) return left.length - right.length;
    const [one, other] = [left[depth], right[depth]];
    if (typeof one === 'number' && typeof other === 'number') return one - other;
    if (depth === 0) return PARTS.indexOf(String(one)) - PARTS.indexOf(String(other));
    return rank(left, depth) - rank(right, depth);
  };
}
