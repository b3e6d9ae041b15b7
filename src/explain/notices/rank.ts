import type { Notice } from './notice.ts';
import { NOTICE_KINDS, shareOf } from './notice-kinds.ts';
import { SEVERITIES } from './severity.ts';

/**
 * Worst first: by severity; then that nothing is known, what is broken (what cannot be run, harms plants or is to be checked), what
 * wastes water, what is only good to know; then by the share that goes wrong, greatest first; then in the order given, which
 * within a kind is the garden's.
 */
export function ranked(notices: readonly Notice[]): readonly Notice[] {
  return notices
    .map((notice) => ({
      notice,
      severity: SEVERITIES.indexOf(notice.severity),
      weight: NOTICE_KINDS[notice.kind].weight,
      share: shareOf(notice),
    }))
    .sort((left, right) => left.severity - right.severity || left.weight - right.weight || right.share - left.share)
    .map(({ notice }) => notice);
}
