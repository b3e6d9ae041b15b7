/** Whether a changed part of a plan is still valid, told from what has changed in it alone. */
import * as v from 'valibot';
import { childSchema, resolveSchema, type SchemaNode } from '../schema/walk.ts';

/** `valid` is known to fit the schema. True means that `value` fits it too; false, that it must be looked at as a whole. */
export function isStillValid(schema: v.GenericSchema, value: unknown, valid: unknown): boolean {
  return Object.is(value, valid) || isPartlyValid(schema as Node, value, valid) || v.is(schema, value);
}

type Node = v.GenericSchema & SchemaNode & { readonly pipe?: readonly PipeItem[] };

interface PipeItem {
  readonly kind: string;
  readonly type: string;
  readonly requirement?: unknown;
}

function isPartlyValid(schema: Node, value: unknown, valid: unknown): boolean {
  const chosen = resolveSchema(schema, value) as Node | undefined;
  if (chosen === undefined || chosen !== resolveSchema(schema, valid)) return false;
  if (Array.isArray(value) && Array.isArray(valid)) return isListValid(chosen, value, valid);
  if (chosen.type !== 'strict_object' || !isFields(value) || !isFields(valid) || !isPlain(chosen)) return false;
  const { entries = {} } = chosen;
  return (
    Object.keys(value).every((key) => Object.hasOwn(entries, key)) &&
    Object.keys(entries).every((key) => isStillValid(entries[key] as Node, value[key], valid[key]))
  );
}

/** Items that were in the list are known; any other is compared with the one at its index. */
function isListValid(schema: Node, value: readonly unknown[], valid: readonly unknown[]): boolean {
  const item = childSchema(schema, '') as Node | undefined;
  if (item === undefined || schema.type !== 'array' || !isPlain(schema, value.length)) return false;
  const known = new Set(valid);
  // `every` would pass over the holes of a list.
  return [...value].every(
    (part, index) =>
      known.has(part) || (index < valid.length ? isStillValid(item, part, valid[index]) : v.is(item, part)),
  );
}

/** Whether nothing is asked of the whole beyond its parts, but for a greatest length that this one does not pass. */
function isPlain({ pipe = [] }: Node, length = Number.POSITIVE_INFINITY): boolean {
  return pipe.every(
    ({ kind, type, requirement }) =>
      kind === 'schema' || kind === 'metadata' || (type === 'max_length' && length <= Number(requirement)),
  );
}

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
