import type { NoticeKind } from '../../explain/notices/notice.ts';

/** Kinds of notices that changes of the plan may mend; some troubles are mended in the garden alone. */
const REMEDIED_KINDS = [
  'line-too-long',
  'flow-too-great',
  'flow-together',
  'window-too-short',
  'allowance-exceeded',
  'tank-dry',
  'emitters-far-apart',
  'line-downhill',
] as const satisfies readonly NoticeKind[];

export type RemediedKind = (typeof REMEDIED_KINDS)[number];

/** Whether changes of the plan are known that may mend notices of a kind. */
export function hasRemedies(kind: NoticeKind): kind is RemediedKind {
  return (REMEDIED_KINDS as readonly NoticeKind[]).includes(kind);
}
