/** As much of JSON Schema 2020-12 as the published schema of a plan uses, read from the standard: for tests that hold it against plans. */

type Schema = Readonly<Record<string, unknown>>;

/** Keywords that say nothing about validity. */
const NOTES = new Set(['$schema', '$defs', 'title', 'description', 'format']);

/** Whether a value is valid. Throws on a keyword that is not known here, so that none is passed over. */
export function isValid(root: Schema, value: unknown): boolean {
  return check(root, root, value);
}

function check(root: Schema, schema: Schema, value: unknown): boolean {
  return Object.entries(schema).every(([keyword, wanted]) => {
    if (NOTES.has(keyword)) return true;
    const rule = RULES[keyword];
    if (rule === undefined) throw new Error(`the keyword ${keyword} is not known`);
    return rule({ root, schema, value, wanted });
  });
}

interface Place {
  readonly root: Schema;
  readonly schema: Schema;
  readonly value: unknown;
  readonly wanted: unknown;
}

const number = (value: unknown): number => (typeof value === 'number' ? value : Number.NaN);
const ifNumber = ({ value, wanted }: Place, holds: (value: number, wanted: number) => boolean) =>
  typeof value !== 'number' || holds(value, number(wanted));
const ifText = ({ value, wanted }: Place, holds: (value: string, wanted: unknown) => boolean) =>
  typeof value !== 'string' || holds(value, wanted);
const ifList = ({ value, wanted }: Place, holds: (value: readonly unknown[], wanted: unknown) => boolean) =>
  !Array.isArray(value) || holds(value, wanted);
const entriesOf = (value: unknown): [string, unknown][] =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.entries(value) : [];
const some = (place: Place): number =>
  (place.wanted as Schema[]).filter((option) => check(place.root, option, place.value)).length;

const TYPES: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
  array: Array.isArray,
  string: (value) => typeof value === 'string',
  number: (value) => typeof value === 'number',
  integer: Number.isInteger,
  boolean: (value) => typeof value === 'boolean',
};

const RULES: Readonly<Record<string, (place: Place) => boolean>> = {
  $ref: ({ root, value, wanted }) => {
    const name = String(wanted).replace('#/$defs/', '');
    return check(root, (root['$defs'] as Readonly<Record<string, Schema>>)[name] as Schema, value);
  },
  type: ({ value, wanted }) => TYPES[String(wanted)]?.(value) ?? false,
  const: ({ value, wanted }) => value === wanted,
  enum: ({ value, wanted }) => (wanted as unknown[]).includes(value),
  oneOf: (place) => some(place) === 1,
  anyOf: (place) => some(place) > 0,
  minimum: (place) => ifNumber(place, (value, least) => value >= least),
  maximum: (place) => ifNumber(place, (value, most) => value <= most),
  exclusiveMinimum: (place) => ifNumber(place, (value, least) => value > least),
  minLength: (place) => ifText(place, (value, least) => value.length >= number(least)),
  maxLength: (place) => ifText(place, (value, most) => value.length <= number(most)),
  pattern: (place) => ifText(place, (value, pattern) => new RegExp(String(pattern), 'u').test(value)),
  minItems: (place) => ifList(place, (value, least) => value.length >= number(least)),
  maxItems: (place) => ifList(place, (value, most) => value.length <= number(most)),
  items: (place) => ifList(place, (value, item) => value.every((each) => check(place.root, item as Schema, each))),
  required: ({ value, wanted }) => {
    const keys = entriesOf(value).map(([key]) => key);
    return !TYPES['object']?.(value) || (wanted as string[]).every((key) => keys.includes(key));
  },
  properties: ({ root, value, wanted }) =>
    entriesOf(value).every(([key, item]) => {
      const schema = (wanted as Readonly<Record<string, Schema>>)[key];
      return schema === undefined || check(root, schema, item);
    }),
  propertyNames: ({ root, value, wanted }) => entriesOf(value).every(([key]) => check(root, wanted as Schema, key)),
  additionalProperties: ({ root, schema, value, wanted }) => {
    const known = Object.keys((schema['properties'] as object | undefined) ?? {});
    const rest = entriesOf(value).filter(([key]) => !known.includes(key));
    return wanted === false ? rest.length === 0 : rest.every(([, item]) => check(root, wanted as Schema, item));
  },
};
