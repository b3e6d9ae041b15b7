/** Undo and redo as plain data: every state that a plan went through, and what led from one to the next. */
import type { Plan } from '../schema/plan-schema.ts';

export interface History {
  /** Oldest first; each holds the plan as it was before the edit that the label names. */
  readonly past: readonly Step[];
  readonly present: Plan;
  /** Next to be redone first; each holds the plan as it was after the edit that the label names. */
  readonly future: readonly Step[];
}

export interface Step {
  readonly plan: Plan;
  /** What was done, in words: for the menu and for announcements. */
  readonly label: string;
}

/** The oldest steps are forgotten beyond it. Plans share what they have in common, so a step is small. */
export const MOST_STEPS = 200;

export function startHistory(present: Plan): History {
  return { past: [], present, future: [] };
}

/** A plan that has not changed is not recorded. What had been undone can no longer be redone. */
export function record(history: History, step: Step): History {
  const { past, present } = history;
  if (step.plan === present) return history;
  const before: Step = { plan: present, label: step.label };
  return { past: [...past, before].slice(-MOST_STEPS), present: step.plan, future: [] };
}

/** The same history where there is nothing to undo. */
export function undo(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  const undone: Step = { ...last, plan: history.present };
  return { past: history.past.slice(0, -1), present: last.plan, future: [undone, ...history.future] };
}

/** The same history where there is nothing to redo. */
export function redo(history: History): History {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, { ...next, plan: history.present }], present: next.plan, future };
}

export function canUndo({ past }: History): boolean {
  return past.length > 0;
}

export function canRedo({ future }: History): boolean {
  return future.length > 0;
}

/** What would be undone. */
export function undoLabel({ past }: History): string | undefined {
  return past.at(-1)?.label;
}

/** What would be redone. */
export function redoLabel({ future }: History): string | undefined {
  return future[0]?.label;
}
