import { writePlan } from '../../plan/reading/write-plan.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { plannerWords } from '../shared/words/planner-words.ts';

/** Hands the plan to the reader as a file. */
export function savePlan(plan: Plan): void {
  const address = URL.createObjectURL(new Blob([writePlan(plan)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = plannerWords.fileName(fileNameOf(plan.name));
  link.click();
  URL.revokeObjectURL(address);
}

/** A name that every system takes for a file. */
function fileNameOf(name: string): string {
  return (
    name
      .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
      .replaceAll(/^-|-$/g, '')
      .toLowerCase() || 'plan'
  );
}
