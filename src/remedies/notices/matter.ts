/** How great the trouble is that a notice tells of, and which notices of a season tell of the same. */
import type { Season } from '../../engine/season/season.ts';
import type { FoundNotice, NoticeFigures, NoticeKind } from '../../explain/notices/notice.ts';
import { NOTICE_KINDS } from '../../explain/notices/notice-kinds.ts';
import type { RemediedKind } from './remedied-kinds.ts';

const AMOUNTS: { readonly [Kind in RemediedKind]: (figures: NoticeFigures[Kind]) => number } = {
  'line-too-long': ({ beyondBounds }) => beyondBounds,
  'flow-too-great': ({ excessLpm }) => excessLpm,
  'flow-together': ({ days }) => days,
  'window-too-short': ({ minutesOverInAll }) => minutesOverInAll,
  'allowance-exceeded': ({ overLitres }) => overLitres,
  'tank-dry': ({ mainsLitres }) => mainsLitres,
  'emitters-far-apart': ({ spacingM, widestSpacingM }) => spacingM - widestSpacingM,
  'line-downhill': () => 1,
};

/** How great a notice's trouble is, in a measure of its kind; above 0, and grows with the trouble. */
export function amountOf<Kind extends RemediedKind>({ kind, figures }: FoundNotice<Kind>): number {
  const amount: (figures: NoticeFigures[Kind]) => number = AMOUNTS[kind];
  return amount(figures);
}

/** All the notices in a season that are of a notice's kind; of an allowance, those of the same span. */
export function likeNotices<Kind extends NoticeKind>(
  season: Season,
  { kind, figures }: FoundNotice<Kind>,
): readonly FoundNotice<Kind>[] {
  const isOfWeek = 'weekAllowanceLitres' in figures;
  return NOTICE_KINDS[kind]
    .find(season)
    .filter((other): other is FoundNotice<Kind> => other.kind === kind)
    .filter((other) => 'weekAllowanceLitres' in other.figures === isOfWeek);
}
