/** Walking a value beside its schema: which schema stands at each place, and its quantities changed. */
import { getMetadata } from 'valibot';
import type { PlanQuantity } from './quantity.ts';

/** What of a valibot schema the walk looks at. */
export interface SchemaNode {
  readonly type: string;
  readonly entries?: Readonly<Record<string, SchemaNode>>;
  readonly item?: SchemaNode;
  readonly value?: SchemaNode;
  readonly wrapped?: SchemaNode;
  readonly options?: readonly SchemaNode[];
  readonly key?: unknown;
  readonly literal?: unknown;
}

/** The schema that answers for a value: past `optional`, and of several the one that the value has chosen. */
export function resolveSchema(schema: SchemaNode, value: unknown): SchemaNode | undefined {
  if (schema.wrapped) return resolveSchema(schema.wrapped, value);
  if (schema.type === 'variant') {
    const chosen = isObject(value) ? value[String(schema.key)] : undefined;
    return schema.options?.find((option) => option.entries?.[String(schema.key)]?.literal === chosen);
  }
  if (schema.type === 'union') {
    const [first] = schema.options ?? [];
    return schema.options?.find((option) => isOfType(option, value)) ?? first;
  }
  return schema;
}

function isOfType({ type, entries }: SchemaNode, value: unknown): boolean {
  if (entries !== undefined) return isObject(value) && !Array.isArray(value);
  return type === 'array' ? Array.isArray(value) : type === typeof value;
}

/** The schema of one field, place or key of a value that `schema` answers for. */
export function childSchema(schema: SchemaNode, key: string): SchemaNode | undefined {
  if (schema.entries) return Object.hasOwn(schema.entries, key) ? schema.entries[key] : undefined;
  return schema.item ?? (schema.type === 'record' ? schema.value : undefined);
}

/** The same document with every quantity changed; `isExact`: no digit of it may be lost. Parts without any are handed on as they are. */
export function mapQuantities<Value>(
  schema: SchemaNode,
  value: Value,
  change: (value: number, quantity: PlanQuantity, isExact: boolean) => number,
): Value {
  const map = (node: SchemaNode | undefined, part: unknown): unknown => {
    const resolved = node && resolveSchema(node, part);
    if (resolved === undefined) return part;
    if (typeof part === 'number') {
      const { quantity, isExact } = measureOf(resolved);
      return quantity === undefined ? part : change(part, quantity, isExact === true);
    }
    if (Array.isArray(part))
      return sameOr(
        part,
        part.map((item) => map(childSchema(resolved, ''), item)),
      );
    if (!isObject(part)) return part;
    return sameOr(
      part,
      Object.fromEntries(Object.entries(part).map(([key, item]) => [key, map(childSchema(resolved, key), item)])),
    );
  };
  return map(schema, value) as Value;
}

function measureOf(schema: SchemaNode): { readonly quantity?: PlanQuantity; readonly isExact?: boolean } {
  return getMetadata(schema as unknown as Parameters<typeof getMetadata>[0]);
}

function sameOr<Whole extends object>(before: Whole, after: Whole): Whole {
  const keys = Object.keys(after) as (keyof Whole)[];
  return keys.every((key) => Object.is(before[key], after[key])) ? before : after;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
