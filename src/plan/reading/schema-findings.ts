/** What a valibot schema finds wrong with a value, and the fields that it does not know. */
import * as v from 'valibot';
import { childSchema, resolveSchema, type SchemaNode } from '../schema/walk.ts';
import type { Finding, Path } from './finding.ts';

export interface SchemaReading<Output> {
  readonly findings: readonly Finding[];
  /** A copy with its fields in the schema's order; undefined where something was found. */
  readonly output: Output | undefined;
}

/** A value that stands at a path of the document, and every fault of it. */
export function readBySchema<Schema extends v.GenericSchema>(
  schema: Schema,
  value: unknown,
  at: Path,
): SchemaReading<v.InferOutput<Schema>> {
  const { issues = [], output } = v.safeParse(schema, value);
  // Every object is strict: an unknown field is at least one issue.
  if (issues.length === 0) return { findings: [], output };
  const found = issues.filter((issue) => !isUnknownField(issue)).map((issue) => findingOf(issue, at));
  const findings = [...found, ...unknownFields(schema as unknown as SchemaNode, value, at)];
  return { findings, output: undefined };
}

/** Every fault of a value that stands at a path of the document. */
export function schemaFindings(schema: v.GenericSchema, value: unknown, at: Path): readonly Finding[] {
  return readBySchema(schema, value, at).findings;
}

function findingOf(issue: v.BaseIssue<unknown>, at: Path): Finding {
  const path = (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));
  return { path: [...at, ...path], value: issue.input, expected: issue.message };
}

/** Valibot stops at an object's first unknown field: the walk below finds them all. */
const isUnknownField = (issue: v.BaseIssue<unknown>): boolean =>
  issue.type === 'strict_object' && issue.expected === 'never';

function unknownFields(schema: SchemaNode, value: unknown, at: Path): readonly Finding[] {
  const resolved = resolveSchema(schema, value);
  if (resolved === undefined || typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) {
    return value.flatMap((item, place) => inside(resolved, '', item, [...at, place]));
  }
  return Object.entries(value).flatMap(([key, item]) => inside(resolved, key, item, [...at, key]));
}

function inside(parent: SchemaNode, key: string, value: unknown, at: Path): readonly Finding[] {
  const schema = childSchema(parent, key);
  if (schema !== undefined) return unknownFields(schema, value, at);
  if (parent.entries === undefined) return [];
  return [
    { path: at, value, expected: `nothing under this name; known are ${Object.keys(parent.entries).join(', ')}` },
  ];
}
