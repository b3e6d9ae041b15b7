/** The gardens of the demo. */
import { readFileSync } from 'node:fs';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';

export const DEMO_PLANS: readonly Plan[] = ['lantern-lane', 'mixed-border'].map((name) => {
  const read = readPlan(readFileSync(new URL(`../../demo/plans/${name}.runnel.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`the demo's plan ${name} is not read`);
  return read.plan;
});
