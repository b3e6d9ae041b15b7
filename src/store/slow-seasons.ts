/** Which seasons were long to compute, and how much it takes to keep the rain of all plantings anew. */
import type { Plan } from '../plan/schema/plan-schema.ts';
import { AT_ONCE } from './waiting-work.ts';

/** What a planting's rain over many years takes where nothing of it is known yet, in weeks of one planting: some 2 ms. */
const RAIN_EFFORT = 1000;

/** What it takes to keep all plantings' rain anew, in weeks of one planting: none where the weather of a plan is as it was. */
export function rainKeptAnew({ site, zones }: Plan, { site: before }: Plan): number {
  const fields = ['climate', 'latitude', 'elevation'] as const;
  if (fields.every((field) => site[field] === before[field])) return 0;
  return zones.reduce((sum, { plantings }) => sum + plantings.length, 0) * RAIN_EFFORT;
}

const slow = new WeakSet<object>();

/** Whether to compute it took longer than a reader hardly waits for. */
export const wasSlow = (season: object): boolean => slow.has(season);

/** The same steps; what they end with is known as slow where one of them was, or what came before, in weeks of one planting. */
export function* notingSlow<Result extends object>(
  steps: Generator<number, Result>,
  before = 0,
): Generator<number, Result> {
  let most = before;
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      if (most > AT_ONCE) slow.add(step.value);
      return step.value;
    }
    most = Math.max(most, step.value);
    yield step.value;
  }
}
