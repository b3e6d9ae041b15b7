import type { Notice, NoticeKind } from '../../explain/notices/notice.ts';

/** Whether changes of the plan are known that may mend notices of a kind; some troubles are mended in the garden alone. */
const HAS_REMEDIES = {
  'no-climate': false,
  'no-line': false,
  'too-long': true,
  closed: false,
  'short-by-hand': false,
  'short-as-run': false,
  'cut-short': false,
  'cut-not-met': false,
  restricted: false,
  'beyond-timer': true,
  'shut-off-short': true,
  'left-behind': true,
  'few-days': true,
  'dry-spell': false,
  short: true,
  'crop-early': false,
  'crop-past': false,
  'out-of-season': false,
  over: true,
  'over-by-hand': false,
  'step-too-long': true,
  'hand-set': false,
  'line-too-long': true,
  'pressure-low': false,
  'flow-below-label': false,
  'flow-too-fast': true,
  'flow-too-great': true,
  'window-too-short': true,
  'tank-dry': true,
  'allowance-exceeded': true,
  'flow-together': true,
  'emitters-far-apart': true,
  'line-downhill': true,
  'pot-dries-out': true,
  'wetted-too-little': true,
} as const satisfies Readonly<Record<NoticeKind, boolean>>;

export type RemediedKind = {
  [Kind in NoticeKind]: (typeof HAS_REMEDIES)[Kind] extends true ? Kind : never;
}[NoticeKind];

/** Whether changes of the plan are known that may mend a notice. */
export function hasRemedies(notice: Notice): notice is Notice<RemediedKind> {
  return HAS_REMEDIES[notice.kind];
}
