import type { Notice } from './notice.ts';
import { NOTICE_KINDS } from './notice-kinds.ts';
import { SEVERITIES } from './severity.ts';

/**
 * Worst first: by severity; then that nothing is known, what cannot be run or watered at all, what harms plants, what is
 * to be checked, what wastes water, what is only good to know; then by the litres concerned, most first (demand unmet,
 * else net need, else drained); then in the order given, which within a kind is the garden's.
 */
export function ranked(notices: readonly Notice[]): readonly Notice[] {
  return notices
    .map((notice) => ({
      notice,
      severity: SEVERITIES.indexOf(notice.severity),
      weight: NOTICE_KINDS[notice.kind].weight,
      litres: litresOf(notice.figures),
    }))
    .sort((left, right) => left.severity - right.severity || left.weight - right.weight || right.litres - left.litres)
    .map(({ notice }) => notice);
}

function litresOf(figures: Readonly<Record<string, number | undefined>>): number {
  return figures['unmetLitres'] || figures['neededLitres'] || figures['drainedLitres'] || 0;
}
