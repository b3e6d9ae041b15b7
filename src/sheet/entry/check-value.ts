import * as v from 'valibot';

/** What the plan's schema expected instead of `value`: `a number from 0 to 10080 minutes a week`; undefined where it is content. */
export function expectedInstead(schema: v.GenericSchema<unknown, number>, value: number): string | undefined {
  const result = v.safeParse(schema, value);
  return result.success ? undefined : result.issues[0].message;
}
