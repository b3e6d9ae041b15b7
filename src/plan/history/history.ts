/** Undo and redo as plain data: every edit that a plan went through, with the plan before it and after it. */
import type { Edit } from '../edits/edit.ts';
import type { Plan } from '../schema/plan-schema.ts';

export interface History {
  /** Oldest first. */
  readonly past: readonly Step[];
  readonly present: Plan;
  /** Next to be redone first. */
  readonly future: readonly Step[];
}

/** One edit that was made. */
export interface Step {
  readonly before: Plan;
  readonly edit: Edit;
  readonly after: Plan;
}

/** The oldest steps are forgotten beyond it. Plans share what they have in common, so a step is small. */
export const MOST_STEPS = 200;

export function startHistory(present: Plan): History {
  return { past: [], present, future: [] };
}

/** `plan`: what the edit makes of the present one; where that is the same, nothing is recorded. What was undone can no longer be redone. */
export function record(history: History, edit: Edit, plan: Plan): History {
  const { past, present } = history;
  if (plan === present) return history;
  const step: Step = { before: present, edit, after: plan };
  return { past: [...past, step].slice(-MOST_STEPS), present: plan, future: [] };
}

/** The same history where there is nothing to undo. */
export function undo(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return { past: history.past.slice(0, -1), present: last.before, future: [last, ...history.future] };
}

/** The same history where there is nothing to redo. */
export function redo(history: History): History {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, next], present: next.after, future };
}

export function canUndo({ past }: History): boolean {
  return past.length > 0;
}

export function canRedo({ future }: History): boolean {
  return future.length > 0;
}
