import type { Plan } from '../../plan/schema/plan-schema.ts';
import { toBase64Url } from './base64url.ts';

/** What a plan's part of a fragment begins with. */
export const LINK_MARK = 'runnel=';

/**
 * The address of a page with a whole plan behind its `#`, deflated (RFC 1951) and in base64url. A browser keeps that part to itself:
 * no server sees the plan. A fragment that `base` has is left out.
 */
export async function linkTo(plan: Plan, base: string): Promise<string> {
  const [page = ''] = base.split('#');
  const deflated = new Blob([JSON.stringify(plan)]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  const bytes = new Uint8Array(await new Response(deflated).arrayBuffer());
  return `${page}#${LINK_MARK}${toBase64Url(bytes)}`;
}
