/** An object of the plan with exactly these fields, each explained; a field that is missing says what belongs there. */
import * as v from 'valibot';

/** `what` names the whole where something else stands in its place: `a zone`. */
export function fields<const Entries extends v.ObjectEntries>(what: string, entries: Entries) {
  return v.strictObject(entries, (issue): string => {
    if (issue.path === undefined) return what;
    const key = String(issue.path[0]?.key);
    const missing = Object.hasOwn(entries, key) ? entries[key] : undefined;
    return missing === undefined ? `no field of this name: ${Object.keys(entries).join(', ')}` : wordsOf(missing);
  });
}

/** A field and what it means; the words end up in the published JSON Schema. */
export function field<Schema extends v.GenericSchema>(schema: Schema, meaning: string) {
  return v.pipe(schema, v.description(meaning));
}

/** The same for a field that may be left out. */
export function maybe<Schema extends v.GenericSchema>(schema: Schema, meaning: string) {
  return v.optional(v.pipe(schema, v.description(meaning)));
}

/** What a schema expects, in the words of its own message. */
function wordsOf(schema: object): string {
  const { message } = schema as { readonly message?: string | ((issue: object) => string) };
  return typeof message === 'function' ? message({}) : (message ?? 'a value');
}
