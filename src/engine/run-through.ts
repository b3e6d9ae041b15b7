/** Takes all steps of a long work at once, where nobody waits for a page. */
export function runThrough<Result>(steps: Iterator<unknown, Result>): Result {
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}
