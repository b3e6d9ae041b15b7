import type { Notice, NoticeKind, NoticeSeverity } from './notice.ts';

const SEVERITIES: readonly NoticeSeverity[] = ['danger', 'warning', 'note'];

const NOTHING_IS_KNOWN = 0;
const CANNOT_BE_RUN = 1;
const HARMS_PLANTS = 2;
const TO_BE_CHECKED = 3;
const WASTES_WATER = 4;
const GOOD_TO_KNOW = 5;

/** How much each kind matters among notices of one severity. */
const WEIGHTS: Readonly<Record<NoticeKind, number>> = {
  'no-climate': NOTHING_IS_KNOWN,
  'no-line': CANNOT_BE_RUN,
  'too-long': CANNOT_BE_RUN,
  'line-too-long': CANNOT_BE_RUN,
  'pressure-low': CANNOT_BE_RUN,
  'flow-too-great': CANNOT_BE_RUN,
  'window-too-short': CANNOT_BE_RUN,
  dry: HARMS_PLANTS,
  'never-enough': HARMS_PLANTS,
  closed: HARMS_PLANTS,
  short: HARMS_PLANTS,
  'tank-dry': HARMS_PLANTS,
  'crop-early': TO_BE_CHECKED,
  'crop-past': TO_BE_CHECKED,
  'out-of-season': TO_BE_CHECKED,
  'allowance-exceeded': TO_BE_CHECKED,
  'flow-together': TO_BE_CHECKED,
  over: WASTES_WATER,
  'emitters-far-apart': WASTES_WATER,
  'line-downhill': WASTES_WATER,
  'refill-weekly': GOOD_TO_KNOW,
  'hand-set': GOOD_TO_KNOW,
};

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
      weight: WEIGHTS[notice.kind],
      litres: litresOf(notice),
    }))
    .sort((left, right) => left.severity - right.severity || left.weight - right.weight || right.litres - left.litres)
    .map(({ notice }) => notice);
}

function litresOf({ figures }: Notice): number {
  return figures['unmetLitres'] || figures['neededLitres'] || figures['drainedLitres'] || 0;
}
