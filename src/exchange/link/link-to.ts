import type { Plan } from '../../plan/schema/plan-schema.ts';
import { toBase64Url } from './base64url.ts';

/** What a plan's part of a fragment begins with. */
export const LINK_MARK = 'runnel=';

/**
 * The address of a page with a whole plan behind its `#`, as gzip (RFC 1952), whose CRC-32 tells of a letter that was changed, in
 * base64url. A browser keeps that part to itself: no server sees the plan. A fragment that `base` has is left out.
 */
export async function linkTo(plan: Plan, base: string): Promise<string> {
  const [page = ''] = base.split('#');
  const packed = new Blob([JSON.stringify(plan)]).stream().pipeThrough(new CompressionStream('gzip'));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  return `${page}#${LINK_MARK}${toBase64Url(bytes)}`;
}
