/** An object of the plan with exactly these fields. What each means is said by language (`en/plan-fields.ts`). */
import * as v from 'valibot';

export function fields<const Entries extends v.ObjectEntries>(entries: Entries) {
  return v.strictObject(entries);
}

/**
 * As `v.pipe` with something that leaves the value as it is, in one pipe where the schema is one: a pipe in a pipe takes more
 * time and memory for the same answer.
 */
export function withMore<Schema extends v.GenericSchema>(schema: Schema, about: v.GenericMetadata): Schema {
  const steps: readonly unknown[] = 'pipe' in schema && Array.isArray(schema.pipe) ? schema.pipe : [schema];
  return (v.pipe as (...steps: readonly unknown[]) => unknown)(...steps, about) as Schema;
}
