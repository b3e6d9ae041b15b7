import { type LinkContent, LinkError } from '../exchange/link/plan-text-from-link.ts';
import { readPlan } from '../plan/reading/read-plan.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { LinkFault } from './report.ts';

/** What a link carries: a plan, or why there is none; undefined where it carries nothing. Never rejects. */
export async function readLink(
  link: Promise<LinkContent | undefined>,
): Promise<{ readonly plan: Plan; readonly isChecked: boolean } | { readonly fault: LinkFault } | undefined> {
  try {
    const content = await link;
    if (content === undefined) return undefined;
    const result = readPlan(content.text);
    return result.ok ? { plan: result.plan, isChecked: content.isChecked } : { fault: { faults: result.faults } };
  } catch (error) {
    return { fault: { code: error instanceof LinkError ? error.code : 'damaged' } };
  }
}
