/** Whether two pieces of plain data say the same; a field that is undefined counts as left out. */
export function sameData(left: unknown, right: unknown): boolean {
  if (Object.is(left, right)) return true;
  if (typeof left !== 'object' || typeof right !== 'object' || left === null || right === null) return false;
  if (Array.isArray(left) !== Array.isArray(right)) return false;
  const [ours, theirs] = [stated(left), stated(right)];
  return (
    ours.size === theirs.size && [...ours].every(([key, value]) => theirs.has(key) && sameData(value, theirs.get(key)))
  );
}

function stated(whole: object): ReadonlyMap<string, unknown> {
  return new Map(Object.entries(whole).filter(([, value]) => value !== undefined));
}
