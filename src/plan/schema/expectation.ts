/** What a schema asks for at a place, told from its type, its requirements and its metadata. */
import { getMetadata } from 'valibot';
import type { Expectation, Measure } from '../reading/fault.ts';
import { NAME_PATTERN } from './name-text.ts';
import { FIRST_YEAR, LAST_YEAR, MONTH_PATTERN } from './text.ts';
import type { SchemaNode } from './walk.ts';

interface PipeItem {
  readonly kind: string;
  readonly type: string;
  readonly requirement?: unknown;
}

interface Metadata extends Measure {
  readonly format?: string;
}

/** `issue`: the type of valibot's issue, where one requirement of several was not met. */
export function expectationOf(schema: SchemaNode, issue: string): Expectation {
  if (schema.wrapped) return expectationOf(schema.wrapped, issue);
  switch (schema.type) {
    case 'number':
      return ofNumber(schema, issue);
    case 'string':
      return ofText(schema, issue);
    case 'boolean':
      return choice([true, false]);
    case 'literal':
      return choice([schema.literal]);
    case 'picklist':
      return choice(schema.options ?? []);
    case 'array':
      return ofList(schema, issue);
    case 'variant':
      return { code: 'kinds', values: { kinds: kindsOf(schema).map(String) } };
    case 'record':
      return { code: 'entries', values: { by: entriesBy(schema.key as SchemaNode) } };
    case 'union':
      return ofUnion(schema);
    default:
      return { code: 'fields', values: { known: Object.keys(schema.entries ?? {}) } };
  }
}

/** What the field may hold that tells the kinds of a variant apart. */
export function kindsOf(schema: SchemaNode): readonly unknown[] {
  return (schema.options ?? []).map((option) => option.entries?.[String(schema.key)]?.literal);
}

export function choice(options: readonly unknown[]): Expectation {
  return { code: 'choice', values: { options: options.map(String) } };
}

function ofNumber(schema: SchemaNode, issue: string): Expectation {
  const { quantity, units, unit } = metadataOf(schema);
  const measure: Measure = {
    ...(quantity && { quantity }),
    ...(units && { units }),
    ...(unit && { unit }),
  };
  if (issue === 'gt_value') return { code: 'above', values: { bound: Number(requirement(schema, issue)), ...measure } };
  return {
    code: 'range',
    values: { ...boundsOf(schema), isWhole: pipeOf(schema).some(({ type }) => type === 'integer'), ...measure },
  };
}

function boundsOf(schema: SchemaNode): { readonly least: number; readonly most: number } {
  return { least: Number(requirement(schema, 'min_value')), most: Number(requirement(schema, 'max_value')) };
}

function ofText(schema: SchemaNode, issue: string): Expectation {
  if (isDay(schema)) {
    if (issue === 'check') return { code: 'calendar-day', values: {} };
    return { code: 'day', values: { firstYear: FIRST_YEAR, lastYear: LAST_YEAR } };
  }
  if (metadataOf(schema).format === 'time-of-day') return { code: 'time-of-day', values: {} };
  const most = Number(requirement(schema, 'max_length'));
  if (requirement(schema, 'regex') === NAME_PATTERN) return { code: 'name', values: { most } };
  if (isMonth(schema)) return { code: 'month-number', values: {} };
  if (requirement(schema, 'regex') !== undefined) return { code: 'id', values: {} };
  return { code: 'text', values: { least: Number(requirement(schema, 'min_length') ?? 0), most } };
}

function ofList(schema: SchemaNode, issue: string): Expectation {
  if (issue === 'max_length') return { code: 'list-too-long', values: { most: Number(requirement(schema, issue)) } };
  if (issue === 'min_length') return { code: 'list-too-short', values: { least: Number(requirement(schema, issue)) } };
  // Only the months of a year are a list of fixed length.
  return { code: requirement(schema, 'length') === undefined ? 'list' : 'list-of-months', values: {} };
}

/** The fields that take a number or something else: the watering days of a zone, and what ran in a week. */
function ofUnion({ options = [] }: SchemaNode): Expectation {
  const number = options.find(({ type }) => type === 'number');
  if (number === undefined) return { code: 'list', values: {} };
  const isByDay = options.some(({ entries }) => entries !== undefined);
  return { code: isByDay ? 'minutes-or-days' : 'number-or-weekdays', values: boundsOf(number) };
}

function entriesBy(key: SchemaNode): 'day' | 'month' | 'id' {
  if (isDay(key)) return 'day';
  return isMonth(key) ? 'month' : 'id';
}

const isMonth = (schema: SchemaNode): boolean => requirement(schema, 'regex') === MONTH_PATTERN;

const isDay = (schema: SchemaNode): boolean => metadataOf(schema).format === 'date';

function pipeOf(schema: SchemaNode): readonly PipeItem[] {
  return (schema as { readonly pipe?: readonly PipeItem[] }).pipe ?? [];
}

function requirement(schema: SchemaNode, type: string): unknown {
  return pipeOf(schema).find((item) => item.type === type)?.requirement;
}

function metadataOf(schema: SchemaNode): Metadata {
  return getMetadata(schema as unknown as Parameters<typeof getMetadata>[0]);
}
