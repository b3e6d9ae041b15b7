/** An object of the plan with exactly these fields, each explained; a field that is missing says what belongs there. */
import * as v from 'valibot';

export function fields<const Entries extends v.ObjectEntries>(_what: string, entries: Entries) {
  return v.strictObject(entries);
}

/** A field and what it means; the words end up in the published JSON Schema. */
export function field<Schema extends v.GenericSchema>(schema: Schema, meaning: string) {
  return withMore(schema, v.description(meaning));
}

/** The same for a field that may be left out. */
export function maybe<Schema extends v.GenericSchema>(schema: Schema, meaning: string) {
  return v.optional(field(schema, meaning));
}

/**
 * As `v.pipe` with something that leaves the value as it is, in one pipe where the schema is one: a pipe in a pipe takes more
 * time and memory for the same answer.
 */
export function withMore<Schema extends v.GenericSchema>(schema: Schema, about: v.GenericMetadata): Schema {
  const steps: readonly unknown[] = 'pipe' in schema && Array.isArray(schema.pipe) ? schema.pipe : [schema];
  return (v.pipe as (...steps: readonly unknown[]) => unknown)(...steps, about) as Schema;
}
