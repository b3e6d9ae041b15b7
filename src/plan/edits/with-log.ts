import type { Plan, PlanLog } from '../schema/plan-schema.ts';
import { replaced } from './change.ts';
import type { Change } from './edit.ts';

/** The plan with its log changed; a log that is empty is taken out. */
export function withLog(plan: Plan, change: Change<PlanLog>): Plan {
  const log = replaced<PlanLog>(plan.log ?? {}, change);
  if (log === plan.log) return plan;
  return replaced(plan, { log: Object.keys(log).length === 0 ? undefined : log });
}
