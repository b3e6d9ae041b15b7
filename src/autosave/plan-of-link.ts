import { describeFault } from '../language/describe-fault.ts';
import { keepingWords } from '../language/en/keeping-words.ts';
import { readerFor } from '../language/reader.ts';
import { readPlan } from '../plan/reading/read-plan.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';

/** The plan that a link carries, undefined where it carries none, or in words why it cannot be opened. */
export async function planOfLink(
  link: Promise<string | undefined>,
  locale: string,
): Promise<Plan | string | undefined> {
  try {
    const text = await link;
    if (text === undefined) return undefined;
    const result = readPlan(text);
    if (result.ok) return result.plan;
    const reader = readerFor(locale, 'us');
    return result.faults
      .slice(0, 1)
      .map((fault) => keepingWords.linkRefused(describeFault(fault, reader)))
      .join('');
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
