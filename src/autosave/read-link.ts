import { withoutYears } from '../exchange/link/link-to.ts';
import { type LinkContent, LinkError } from '../exchange/link/plan-text-from-link.ts';
import { readPlan } from '../plan/reading/read-plan.ts';
import { sameData } from '../plan/same-data.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { LinkFault } from './report.ts';

export interface LinkedPlan {
  readonly plan: Plan;
  readonly isChecked: boolean;
  readonly lacksYears: boolean;
}

/** Whether a plan is the one that a link carries. */
export function isLinked(plan: Plan | undefined, link: Plan, lacksYears: boolean): boolean {
  return sameData(link, lacksYears && plan !== undefined ? withoutYears(plan) : plan);
}

/** What a link carries: a plan, or why there is none; undefined where it carries nothing. Never rejects. */
export async function readLink(
  link: Promise<LinkContent | undefined>,
): Promise<LinkedPlan | { readonly fault: LinkFault } | undefined> {
  try {
    const content = await link;
    if (content === undefined) return undefined;
    const result = readPlan(content.text);
    return result.ok
      ? { plan: result.plan, isChecked: content.isChecked, lacksYears: content.lacksYears }
      : { fault: { faults: result.faults } };
  } catch (error) {
    return { fault: { code: error instanceof LinkError ? error.code : 'damaged' } };
  }
}
