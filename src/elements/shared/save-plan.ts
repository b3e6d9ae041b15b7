import { writePlan } from '../../plan/reading/write-plan.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { fileNameOf, saveFile } from './save-file.ts';

/** Kinds of file that a plan comes in, as an input's `accept` has them. */
export const PLAN_FILES = '.json,application/json';

export const planFileName = ({ name }: Plan): string => `${fileNameOf(name)}.runnel.json`;

/** Hands the plan to the reader as a file of its name. */
export function savePlan(plan: Plan): void {
  saveFile(planFileName(plan), writePlan(plan), 'application/json');
}
