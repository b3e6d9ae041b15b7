import type { Plan } from '../../plan/schema/plan-schema.ts';
import { toBase64Url } from './base64url.ts';

/** What a plan's part of a fragment begins with. */
export const LINK_MARK = 'runnel=';

/** Of a plan whose real years were left out. */
export const YEARS_MARK = 'runnel-years=out';

/** The plan as a link carries it: thirty years by day would be longer than an address may be. */
export function withoutYears(plan: Plan): Plan {
  if (plan.site.years === undefined) return plan;
  const { years: _, ...site } = plan.site;
  return { ...plan, site };
}

/**
 * The address of a page with a whole plan behind its `#`, as gzip (RFC 1952), whose CRC-32 tells of a letter that was changed, in
 * base64url. Its real years are left out, and the link says so. A browser keeps that part to itself: no server sees the plan. A fragment that `base` has is left out.
 */
export async function linkTo(plan: Plan, base: string): Promise<string> {
  const [page = ''] = base.split('#');
  const carried = withoutYears(plan);
  const packed = new Blob([JSON.stringify(carried)]).stream().pipeThrough(new CompressionStream('gzip'));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  return `${page}#${LINK_MARK}${toBase64Url(bytes)}${carried === plan ? '' : `&${YEARS_MARK}`}`;
}
