import type { Season } from '../../engine/season/season.ts';
import type { FoundNotice, Notice, NoticeSubject } from '../../explain/notices/notice.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import { mixFigures } from '../mix/mix-figures.ts';
import { amountOf, likeNotices } from './matter.ts';
import { minutesOf } from './minutes-of.ts';
import type { RemediedKind } from './remedied-kinds.ts';
import type { Candidate, Noticed, Remedy } from './remedy.ts';
import { REMEDY_CAUTIONS } from './remedy-cautions.ts';
import { weakestEmitterKpa } from './weakest-emitter.ts';

/** What rounding may leave of a trouble that did not change. */
const ROUNDING = 1e-9;

/** A remedy before it is known what else comes with it. */
export type Proven = Omit<Remedy, 'sideEffects'>;

/**
 * A candidate with what comes of it, found out by making the change and computing the season; undefined where the plan
 * refuses it, where the notice's trouble does not become less, or where the same trouble only moves elsewhere.
 */
export function prove(
  { plan, season, notice }: Noticed<RemediedKind>,
  candidate: Candidate,
  index: number,
): Proven | undefined {
  const result = tryEdit(plan, candidate.edit);
  if (!result.ok) return undefined;
  const next = computeSeason(result.plan, season);
  const [before, after] = [likeNotices(season, notice), likeNotices(next, notice)];
  const known = partsOf(season);
  const left = sum(after.filter((other) => isSameMatter(notice, other, known)));
  const remaining = left / amountOf(notice);
  if (!(remaining < 1 - ROUNDING && sum(after) < sum(before) * (1 - ROUNDING))) return undefined;
  const [was, becomes] = [season, next].map((each) =>
    mixFigures(
      each,
      each.zones.map(({ zone }) => zone.id),
    ),
  );
  return {
    ...candidate,
    figures: { ...candidate.figures, ...pressureAfter(next, notice) },
    id: `${candidate.kind}-${index}`,
    remaining,
    litresMore: (becomes?.litres ?? 0) - (was?.litres ?? 0),
    unmetLitresMore: (becomes?.unmetLitres ?? 0) - (was?.unmetLitres ?? 0),
    minutesMore: minutesOf(next) - minutesOf(season),
    seasonWith: next,
    cautions: REMEDY_CAUTIONS[candidate.kind],
  };
}

function pressureAfter(season: Season, notice: Notice): Candidate['figures'] {
  const leastPressureKpa = notice.kind === 'line-too-long' ? weakestEmitterKpa(season, notice) : undefined;
  return leastPressureKpa === undefined ? {} : { leastPressureKpa };
}

function sum(notices: readonly FoundNotice<RemediedKind>[]): number {
  return notices.reduce((total, notice) => total + amountOf(notice), 0);
}

/** Ids of the zones and plantings that there are. */
function partsOf({ zones }: Season): ReadonlySet<string> {
  return new Set(zones.flatMap(({ zone, plantings }) => [zone.id, ...plantings.map(({ planting }) => planting.id)]));
}

/** In the same place, or in one that the change has made. */
function isSameMatter(notice: NoticeSubject, other: NoticeSubject, known: ReadonlySet<string>): boolean {
  const same = (id: string | undefined, otherId: string | undefined) =>
    id === otherId || (otherId !== undefined && !known.has(otherId));
  return (
    same(notice.zoneId, other.zoneId) &&
    same(notice.plantingId, other.plantingId) &&
    notice.lineIndex === other.lineIndex
  );
}
