/** A list or a group far larger than any plan's: what stands in it is not looked at, which would keep a page waiting for seconds. */
import { expectationOf } from '../schema/expectation.ts';
import { MOST_ZONES, PLAN_SCHEMAS } from '../schema/plan-schema.ts';
import { childSchema, resolveSchema, type SchemaNode } from '../schema/walk.ts';
import type { Issue } from './issue.ts';
import type { Path } from './place.ts';

/** No list of a plan is longer than that of its zones. */
const MOST_ITEMS = MOST_ZONES;
/** No group has more fields than the days that a log may have, those of three hundred years. */
const MOST_FIELDS = 300 * 366;

/** `keys`: those of the value; a list with holes has fewer than items. */
export const isFarTooLarge = (value: object, keys: readonly string[]): boolean =>
  Array.isArray(value) ? value.length > MOST_ITEMS : keys.length > MOST_FIELDS;

/** What is wrong with it: that it is none of what belongs there. */
export function largeIssue(path: Path, value: object): Issue {
  let schema: SchemaNode | undefined = PLAN_SCHEMAS.us as unknown as SchemaNode;
  for (const key of path) {
    const parent: SchemaNode | undefined = schema && resolveSchema(schema, undefined);
    schema = parent && childSchema(parent, String(key));
  }
  const isList = Array.isArray(value);
  const due = schema && resolveSchema(schema, isList ? [] : {});
  if (!isList)
    return { path, value, ...(due === undefined ? { code: 'not-a-plan', values: {} } : expectationOf(due, '')) };
  const expected = due?.type === 'array' ? expectationOf(due, 'max_length') : undefined;
  if (expected?.code === 'list-too-long' && Number.isFinite(expected.values.most)) return { path, value, ...expected };
  return { path, value, code: 'list-too-long', values: { most: MOST_ITEMS } };
}
