import type { Plan } from '../schema/plan-schema.ts';

/** The plan as if nothing had been logged of what ran; its weather stays. */
export function withoutRuns({ log, ...plan }: Plan): Plan {
  if (log === undefined) return plan;
  const { runs: _runs, ...weather } = log;
  return { ...plan, log: weather };
}
