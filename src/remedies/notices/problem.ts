/** How much of a notice's problem another season leaves. */
import type { Season } from '../../engine/season/season.ts';
import { type FoundNotice, type Notice, type NoticeSubject, plantingsOf } from '../../explain/notices/notice.ts';
import { foundLike } from '../../explain/notices/notices-of.ts';
import { NOTICE_REMEDIES, type NoticeRemediesRow } from './notice-remedies.ts';
import type { RemediedKind } from './remedied-kinds.ts';
import { type LitresOf, sumOver } from './trouble.ts';

/** What rounding may leave of a problem that did not change. */
const ROUNDING = 1e-9;

/** A change that leaves more than half of a problem is not worth its while: rule of this kit. */
export const MOST_REMAINING = 0.5;

/**
 * The share, from 0 to `MOST_REMAINING`, of a notice's problem in `season` that is left in `next`; undefined where more is left, or
 * where the same problem only moves elsewhere.
 */
export function remainingProblem<Kind extends RemediedKind>(
  notice: Notice<Kind>,
  season: Season,
  next: Season,
): number | undefined {
  const { ofPlanting }: NoticeRemediesRow<Kind> = NOTICE_REMEDIES[notice.kind];
  if (ofPlanting !== undefined) return remainingOfPlantings(notice, [season, next], ofPlanting);
  const [before, after] = [likeNotices(season, notice), likeNotices(next, notice)];
  const known = partsOf(season);
  const left = sum(after.filter((other) => isSameSubject(notice, other, known)));
  const remaining = left / problemOf(notice);
  return remaining <= MOST_REMAINING && sum(after) < sum(before) * (1 - ROUNDING) ? remaining : undefined;
}

/** What its plantings lack or lose in all weeks, less what they did apart from the notice's own weeks and cause. */
function remainingOfPlantings(
  notice: Notice<RemediedKind>,
  [season, next]: readonly [Season, Season],
  ofPlanting: LitresOf,
): number | undefined {
  const ids = plantingsOf(notice);
  const litresIn = (of: Season) => sumOver(of, ofPlanting, (id) => ids.includes(id));
  const litres = problemOf(notice);
  const remaining = Math.max(0, litres + litresIn(next) - litresIn(season)) / litres;
  return remaining <= MOST_REMAINING ? remaining : undefined;
}

/** All the notices in a season that are of a notice's kind; of an allowance, those of the same span. */
function likeNotices<Kind extends RemediedKind>(
  season: Season,
  { kind, figures }: FoundNotice<Kind>,
): readonly FoundNotice<Kind>[] {
  const isOfWeek = 'weekAllowanceLitres' in figures;
  return foundLike(kind, season)
    .filter((other): other is FoundNotice<Kind> => other.kind === kind)
    .filter((other) => 'weekAllowanceLitres' in other.figures === isOfWeek);
}

function sum<Kind extends RemediedKind>(notices: readonly FoundNotice<Kind>[]): number {
  return notices.reduce((total, notice) => total + problemOf(notice), 0);
}

export function problemOf<Kind extends RemediedKind>({ kind, figures }: FoundNotice<Kind>): number {
  const row: NoticeRemediesRow<Kind> = NOTICE_REMEDIES[kind];
  return row.problem(figures);
}

/** Ids of the zones and plantings that there are. */
function partsOf({ zones }: Season): ReadonlySet<string> {
  return new Set(zones.flatMap(({ zone, plantings }) => [zone.id, ...plantings.map(({ planting }) => planting.id)]));
}

/** The same zone, planting and line, or ones that the change has made. */
function isSameSubject(notice: NoticeSubject, other: NoticeSubject, known: ReadonlySet<string>): boolean {
  const same = (id: string | undefined, otherId: string | undefined) =>
    id === otherId || (otherId !== undefined && !known.has(otherId));
  return (
    same(notice.zoneId, other.zoneId) &&
    same(notice.plantingId, other.plantingId) &&
    notice.lineIndex === other.lineIndex
  );
}
