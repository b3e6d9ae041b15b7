/** What no plan can look like, whatever its fields: nested or listed without end, or with names that JavaScript keeps for itself. */
import type { Issue } from './issue.ts';
import { isFarTooLarge, largeIssue } from './large-part.ts';
import type { Path } from './place.ts';

/** The deepest value of a plan, `zones.0.plantings.0.lines.0.layout.kind`, lies 8 deep. */
const MOST_DEPTH = 10;

const RESERVED = new Set(['__proto__', 'constructor', 'prototype']);

export interface StructureIssues {
  readonly issues: readonly Issue[];
  /** The rest must not be looked at: it may have no end. */
  readonly endless: boolean;
}

/** Looks at the whole of any value, which stands at a path of the document, without recursion. */
export function structureIssues(document: unknown, at: Path = []): StructureIssues {
  const issues: Issue[] = [];
  const open: { readonly value: unknown; readonly path: Path }[] = [{ value: document, path: at }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { value, path } = next;
    if (typeof value !== 'object' || value === null) continue;
    if (path.length > MOST_DEPTH) {
      const deep: Issue = {
        path: path.slice(0, MOST_DEPTH),
        value,
        code: 'too-deep',
        values: { most: MOST_DEPTH },
      };
      return { issues: [deep], endless: true };
    }
    const keys = Object.keys(value);
    if (isFarTooLarge(value, keys)) return { issues: [largeIssue(path, value)], endless: true };
    const isList = Array.isArray(value);
    const pathTo = (key: string): Path => [...path, isList ? Number(key) : key];
    const reserved = keys.filter((key) => RESERVED.has(key));
    issues.push(
      ...reserved.map(
        (key): Issue => ({ path: [...path, key], value: item(value, key), code: 'reserved-name', values: {} }),
      ),
    );
    // A list that has such a field of its own, which no file can hold, cannot even be copied.
    if (isList && reserved.length > 0) return { issues, endless: true };
    for (const key of keys) open.push({ value: item(value, key), path: pathTo(key) });
  }
  return { issues, endless: false };
}

const item = (part: object, key: string): unknown => (part as Readonly<Record<string, unknown>>)[key];
