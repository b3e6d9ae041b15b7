import type { Notice, NoticeFigures, NoticeKind } from './notice.ts';

/** Less than this share of what the plants concerned need, or get, is not worth a person's time. */
const LEAST_SHARE = 0.02;

/** By what a kind is weighed: water that lacks, water that drains, or neither: then it says that something cannot work as set. */
const WEIGHED: Partial<Record<NoticeKind, (figures: never) => number>> = {
  'short-by-hand': lackShare,
  'short-as-run': lackShare,
  'shut-off-short': lackShare,
  'left-behind': lackShare,
  'few-days': lackShare,
  'dry-spell': lackShare,
  short: lackShare,
  closed: lackShare,
  over: drainedShare,
  'over-by-hand': drainedShare,
};

function lackShare({ unmetLitres, demandLitres }: NoticeFigures['short']): number {
  return demandLitres > 0 ? unmetLitres / demandLitres : 0;
}

function drainedShare({ drainedLitres, seasonLitres }: NoticeFigures['over']): number {
  return seasonLitres > 0 ? drainedLitres / seasonLitres : 0;
}

/** Whether a notice is shown to a person who asks what needs attention: it cannot work as set, or is no trifle. */
export function isWorthTelling({ kind, figures }: Notice): boolean {
  const share = WEIGHED[kind] as ((figures: Notice['figures']) => number) | undefined;
  return share === undefined || share(figures) >= LEAST_SHARE;
}
