/** Arguments of callers that no compiler checks: what is none of its kind is refused by name, with a TypeError. */

/** `plan is undefined; it must be an object.`, or `plan.zones is missing.` where a field that it cannot be without is. */
export function requireObject(name: string, value: unknown, ...fields: readonly string[]): void {
  if (typeof value !== 'object' || value === null) {
    throw new TypeError(`${name} is ${shown(value)}; it must be an object.`);
  }
  const missing = fields.find((field) => (value as Readonly<Record<string, unknown>>)[field] === undefined);
  if (missing !== undefined) throw new TypeError(`${name}.${missing} is missing.`);
}

/** `text is 5; it must be a text.` */
export function requireText(name: string, value: unknown): void {
  if (typeof value !== 'string') throw new TypeError(`${name} is ${shown(value)}; it must be a text.`);
}

/** A text in quotes, so that it is told from the value that it names. */
function shown(value: unknown): string {
  return typeof value === 'string' ? JSON.stringify(value) : String(value);
}
