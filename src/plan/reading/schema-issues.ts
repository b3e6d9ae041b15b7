/** What a valibot schema finds wrong with a value, and the fields that it does not know. */
import * as v from 'valibot';
import { choice, expectationOf, kindsOf } from '../schema/expectation.ts';
import { childSchema, resolveSchema, type SchemaNode } from '../schema/walk.ts';
import type { Expectation } from './fault.ts';
import type { Issue } from './issue.ts';
import { fieldsIn, listIn, recordIn } from './loose.ts';
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
  const wrong = found
    .filter((issue) => !isUnknownField(issue))
    .map((issue) => ({ issue, path: [...at, ...pathOf(issue)] }));
  const issues = [
    ...upToMost(wrong, ({ issue }) => insideUnion(issue, node, value, at) ?? [issueOf(issue, node, value, at)]),
    ...upToMost(unknownFields(node, value, at), unknownField),
  ];
  return { issues, output: undefined };
}

/** Everything that is wrong with a value that stands at a path of the document. */
export function schemaIssues(schema: v.GenericSchema, value: unknown, at: Path): readonly Issue[] {
  return readBySchema(schema, value, at).issues;
}

/** More than a person reads. */
const MOST_TOLD = 2000;

/** Of what is wrong, so much is told; of the rest the places are counted. */
function upToMost<Wrong extends { readonly path: Path }>(
  wrong: readonly Wrong[],
  issuesOf: (wrong: Wrong) => readonly Issue[],
): readonly Issue[] {
  const told = wrong.slice(0, MOST_TOLD);
  const issues = told.flatMap(issuesOf);
  if (wrong.length === told.length) return issues;
  const placesOf = (some: readonly Wrong[]) => new Set(some.map(({ path }) => path.join('.')));
  const count = placesOf(wrong).size - placesOf(told).size;
  return [...issues, { path: [], value: undefined, code: 'more-faults', values: { count } }];
}

type ValibotIssue = v.BaseIssue<unknown>;

const pathOf = (issue: ValibotIssue): Path =>
  (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));

function issueOf(issue: ValibotIssue, schema: SchemaNode, value: unknown, at: Path): Issue {
  const path = pathOf(issue);
  return { path: [...at, ...path], value: issue.input, ...expected(issue, schema, value, path) };
}

/** Of a union that takes groups of fields, what is wrong in the group that stands there. */
function insideUnion(issue: ValibotIssue, top: SchemaNode, value: unknown, at: Path): readonly Issue[] | undefined {
  if (issue.type !== 'union' || recordIn(issue.input) === undefined) return undefined;
  const path = pathOf(issue);
  let schema: SchemaNode | undefined = top;
  let part = value;
  for (const key of path) {
    const parent: SchemaNode | undefined = schema && resolveSchema(schema, part);
    schema = parent && childSchema(parent, String(key));
    part = fieldsIn(part)[key] ?? listIn(part)[Number(key)];
  }
  const group = schema && resolveSchema(schema, issue.input);
  if (group?.entries === undefined) return undefined;
  return readBySchema(group as unknown as v.GenericSchema, issue.input, [...at, ...path]).issues;
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
  return expectationOf((schema && chosenNumber(schema, issue.input)) ?? schema ?? top, issue.type);
}

/** Where a number may stand instead of a group of fields, and one stands: what that number may be. */
function chosenNumber(schema: SchemaNode, value: unknown): SchemaNode | undefined {
  const takesGroups = schema.type === 'union' && schema.options?.some(({ entries }) => entries !== undefined);
  return takesGroups && typeof value === 'number' ? resolveSchema(schema, value) : undefined;
}

const unwrapped = (schema: SchemaNode): SchemaNode => (schema.wrapped ? unwrapped(schema.wrapped) : schema);

/** Valibot stops at an object's first unknown field: the walk below finds them all. */
const isUnknownField = (issue: ValibotIssue): boolean => issue.type === 'strict_object' && issue.expected === 'never';

interface UnknownField {
  readonly path: Path;
  readonly value: unknown;
  readonly parent: SchemaNode;
}

const unknownField = ({ path, value, parent }: UnknownField): readonly Issue[] => [
  { path, value, code: 'unknown-field', values: { known: Object.keys(parent.entries ?? {}) } },
];

function unknownFields(schema: SchemaNode, value: unknown, at: Path): readonly UnknownField[] {
  const resolved = resolveSchema(schema, value);
  if (resolved === undefined || typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) {
    return value.flatMap((item, index) => inside(resolved, '', item, [...at, index]));
  }
  return Object.entries(value).flatMap(([key, item]) => inside(resolved, key, item, [...at, key]));
}

function inside(parent: SchemaNode, key: string, value: unknown, path: Path): readonly UnknownField[] {
  const schema = childSchema(parent, key);
  if (schema !== undefined) return unknownFields(schema, value, path);
  return parent.entries === undefined ? [] : [{ path, value, parent }];
}
