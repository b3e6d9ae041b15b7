/** Whether two pieces of plain data say the same; a field that is undefined counts as left out. */
export function sameData(left: unknown, right: unknown): boolean {
  if (Object.is(left, right)) return true;
  if (!isWhole(left) || !isWhole(right) || Array.isArray(left) !== Array.isArray(right)) return false;
  const ours = stated(left);
  return (
    ours.length === stated(right).length &&
    ours.every((key) => Object.hasOwn(right, key) && right[key] !== undefined && sameData(left[key], right[key]))
  );
}

type Whole = Readonly<Record<string, unknown>>;

function isWhole(value: unknown): value is Whole {
  return typeof value === 'object' && value !== null;
}

function stated(whole: Whole): readonly string[] {
  return Object.keys(whole).filter((key) => whole[key] !== undefined);
}
