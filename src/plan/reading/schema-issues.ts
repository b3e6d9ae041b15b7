/** What a valibot schema finds wrong with a value, and the fields that it does not know. */
import * as v from 'valibot';
import { choice, expectationOf, kindsOf } from '../schema/expectation.ts';
import { childSchema, resolveSchema, type SchemaNode } from '../schema/walk.ts';
import type { Expectation } from './fault.ts';
import type { Issue } from './issue.ts';
import { fieldsIn, listIn } from './loose.ts';
import type { Path } from './place.ts';

export interface SchemaReading<Output> {
  readonly issues: readonly Issue[];
  /** A copy with its fields in the schema's order; undefined where something is wrong. */
  readonly output: Output | undefined;
}

/** A value that stands at a path of the document, and everything that is wrong with it. */
export function readBySchema<Schema extends v.GenericSchema>(
  schema: Schema,
  value: unknown,
  at: Path,
): SchemaReading<v.InferOutput<Schema>> {
  const { issues: found = [], output } = v.safeParse(schema, value);
  // Every object is strict: an unknown field is at least one issue.
  if (found.length === 0) return { issues: [], output };
  const node = schema as unknown as SchemaNode;
  const known = found.filter((issue) => !isUnknownField(issue)).map((issue) => issueOf(issue, node, value, at));
  return { issues: [...known, ...unknownFields(node, value, at)], output: undefined };
}

/** Everything that is wrong with a value that stands at a path of the document. */
export function schemaIssues(schema: v.GenericSchema, value: unknown, at: Path): readonly Issue[] {
  return readBySchema(schema, value, at).issues;
}

type ValibotIssue = v.BaseIssue<unknown>;

function issueOf(issue: ValibotIssue, schema: SchemaNode, value: unknown, at: Path): Issue {
  const path = (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));
  return { path: [...at, ...path], value: issue.input, ...expected(issue, schema, value, path) };
}

/** By the schema that stands where the issue is; that of the keys where a key of a record is wrong. */
function expected(issue: ValibotIssue, top: SchemaNode, value: unknown, path: Path): Expectation {
  let schema: SchemaNode | undefined = top;
  let part = value;
  for (const [depth, key] of path.entries()) {
    const parent: SchemaNode | undefined = schema && resolveSchema(schema, part);
    const isLast = depth === path.length - 1;
    if (parent === undefined && isLast && schema !== undefined) return choice(kindsOf(unwrapped(schema)));
    if (parent?.type === 'record' && isLast && issue.path?.at(-1)?.origin === 'key') {
      return expectationOf(parent.key as SchemaNode, issue.type);
    }
    schema = parent && childSchema(parent, String(key));
    part = fieldsIn(part)[key] ?? listIn(part)[Number(key)];
  }
  return expectationOf(schema ?? top, issue.type);
}

const unwrapped = (schema: SchemaNode): SchemaNode => (schema.wrapped ? unwrapped(schema.wrapped) : schema);

/** Valibot stops at an object's first unknown field: the walk below finds them all. */
const isUnknownField = (issue: ValibotIssue): boolean => issue.type === 'strict_object' && issue.expected === 'never';

function unknownFields(schema: SchemaNode, value: unknown, at: Path): readonly Issue[] {
  const resolved = resolveSchema(schema, value);
  if (resolved === undefined || typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) {
    return value.flatMap((item, index) => inside(resolved, '', item, [...at, index]));
  }
  return Object.entries(value).flatMap(([key, item]) => inside(resolved, key, item, [...at, key]));
}

function inside(parent: SchemaNode, key: string, value: unknown, at: Path): readonly Issue[] {
  const schema = childSchema(parent, key);
  if (schema !== undefined) return unknownFields(schema, value, at);
  if (parent.entries === undefined) return [];
  return [{ path: at, value, code: 'unknown-field', values: { known: Object.keys(parent.entries) } }];
}
