import type { Notice, NoticeKind, NoticeSeverity } from './notice.ts';

const SEVERITIES: readonly NoticeSeverity[] = ['danger', 'warning', 'note'];

/** What cannot be run or watered at all, then what harms plants, then what wastes water, then what is only good to know. */
const KINDS: readonly NoticeKind[] = [
  'no-line',
  'too-long',
  'dry',
  'never-enough',
  'closed',
  'short',
  'crop-past',
  'out-of-season',
  'over',
  'refill-weekly',
  'hand-set',
];

/**
 * Worst first: by severity; then by kind, in the order above; then by the litres concerned, most first (demand unmet,
 * else net need, else drained); then as the garden has them and by their first week.
 *
 * `notices` come in the garden's order within each kind.
 */
export function ranked(notices: readonly Notice[]): readonly Notice[] {
  return notices
    .map((notice) => ({
      notice,
      severity: SEVERITIES.indexOf(notice.severity),
      kind: KINDS.indexOf(notice.kind),
      litres: litresOf(notice),
    }))
    .sort((left, right) => left.severity - right.severity || left.kind - right.kind || right.litres - left.litres)
    .map(({ notice }) => notice);
}

function litresOf({ figures }: Notice): number {
  return figures['unmetLitres'] || figures['neededLitres'] || figures['drainedLitres'] || 0;
}
