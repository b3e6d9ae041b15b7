import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import { gardenFigures } from '../mix/mix-figures.ts';
import { remainingProblem } from './problem.ts';
import type { RemediedKind } from './remedied-kinds.ts';
import type { NoticeInPlan, RemedyCandidate, TriedRemedy } from './remedy.ts';
import { cautionsOf } from './remedy-cautions.ts';
import { seasonMinutes } from './season-minutes.ts';
import { weakestEmitterKpa } from './weakest-emitter.ts';

/**
 * A candidate with what comes of it, found out by making the change and computing the season; undefined where the plan
 * refuses it, where the notice's problem does not become less, or where the same problem only moves elsewhere. `index`: of the
 * candidate among those of the notice.
 */
export function tryCandidate(
  { plan, season, notice }: NoticeInPlan<RemediedKind>,
  candidate: RemedyCandidate,
  index: number,
): TriedRemedy | undefined {
  const result = tryEdit(plan, candidate.edit);
  if (!result.ok) return undefined;
  const seasonWith = computeSeason(result.plan, season);
  const remaining = remainingProblem(notice, season, seasonWith);
  if (remaining === undefined) return undefined;
  const [before, after] = [gardenFigures(season), gardenFigures(seasonWith)];
  return {
    ...candidate,
    candidate,
    ...pressureAfter(seasonWith, notice),
    id: `${candidate.kind}-${index}`,
    remaining,
    litresMore: after.litres - before.litres,
    unmetLitresMore: after.unmetLitres - before.unmetLitres,
    minutesMore: seasonMinutes(seasonWith) - seasonMinutes(season),
    seasonWith,
    cautions: cautionsOf(candidate),
  };
}

function pressureAfter(season: Season, notice: Notice): Pick<TriedRemedy, 'leastPressureKpa'> {
  const leastPressureKpa = notice.kind === 'line-too-long' ? weakestEmitterKpa(season, notice) : undefined;
  return leastPressureKpa === undefined ? {} : { leastPressureKpa };
}
