/**
 * A conversion that hands on the same result while a part of the document is the same object and everything else that
 * it hangs on is the same too. So an unchanged zone is the same object in the engine, and its season is kept.
 * Of each part the last result alone is held, and let go with the part.
 */
export function memoize<Part extends object, Context extends object, Result>(
  convert: (part: Part, context: Context) => Result,
  isSame: (left: Context, right: Context) => boolean = sameFields,
): (part: Part, context: Context) => Result {
  const last = new WeakMap<Part, { readonly context: Context; readonly result: Result }>();
  return (part, context) => {
    const before = last.get(part);
    if (before !== undefined && isSame(before.context, context)) return before.result;
    const result = convert(part, context);
    last.set(part, { context, result });
    return result;
  };
}

/** The same where the context is one object for as long as it says the same: it is not held with each result. */
export function memoizeByContext<Part extends object, Context extends object, Result>(
  convert: (part: Part, context: Context) => Result,
): (part: Part, context: Context) => Result {
  const found = new WeakMap<Context, WeakMap<Part, Result>>();
  return (part, context) => {
    const results = found.get(context) ?? new WeakMap<Part, Result>();
    found.set(context, results);
    const result = results.get(part) ?? convert(part, context);
    results.set(part, result);
    return result;
  };
}

/** The same for a part that stands at several places of the document at once: the last few results are held. */
export function memoizeFew<Part extends object, Context extends object, Result>(
  convert: (part: Part, context: Context) => Result,
): (part: Part, context: Context) => Result {
  const found = new WeakMap<Part, readonly { readonly context: Context; readonly result: Result }[]>();
  return (part, context) => {
    const before = found.get(part) ?? [];
    const same = before.find((each) => sameFields(each.context, context));
    if (same !== undefined) return same.result;
    const result = convert(part, context);
    found.set(part, [{ context, result }, ...before].slice(0, MOST_PLACES));
    return result;
  };
}

const MOST_PLACES = 16;

/** Whether two objects have the same fields with the same values. */
export function sameFields<Context extends object>(left: Context, right: Context): boolean {
  if (left === right) return true;
  const keys = Object.keys(left) as (keyof Context)[];
  return keys.length === Object.keys(right).length && keys.every((key) => Object.is(left[key], right[key]));
}
