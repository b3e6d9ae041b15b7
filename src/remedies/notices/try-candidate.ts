import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import { mixFigures } from '../mix/mix-figures.ts';
import { minutesOf } from './minutes-of.ts';
import type { RemediedKind } from './remedied-kinds.ts';
import type { Candidate, Noticed, Remedy } from './remedy.ts';
import { REMEDY_CAUTIONS } from './remedy-cautions.ts';
import { remainingTrouble } from './trouble.ts';
import { weakestEmitterKpa } from './weakest-emitter.ts';

/** A remedy before its side effects are looked for. */
export type TriedRemedy = Omit<Remedy, 'sideEffects'>;

/**
 * A candidate with what comes of it, found out by making the change and computing the season; undefined where the plan
 * refuses it, where the notice's trouble does not become less, or where the same trouble only moves elsewhere. `index`: of the
 * candidate among those of the notice.
 */
export function tryCandidate(
  { plan, season, notice }: Noticed<RemediedKind>,
  candidate: Candidate,
  index: number,
): TriedRemedy | undefined {
  const result = tryEdit(plan, candidate.edit);
  if (!result.ok) return undefined;
  const seasonWith = computeSeason(result.plan, season);
  const remaining = remainingTrouble(notice, season, seasonWith);
  if (remaining === undefined) return undefined;
  const [before, after] = [gardenFigures(season), gardenFigures(seasonWith)];
  return {
    ...candidate,
    figures: { ...candidate.figures, ...pressureAfter(seasonWith, notice) },
    id: `${candidate.kind}-${index}`,
    remaining,
    litresMore: after.litres - before.litres,
    unmetLitresMore: after.unmetLitres - before.unmetLitres,
    minutesMore: minutesOf(seasonWith) - minutesOf(season),
    seasonWith,
    cautions: REMEDY_CAUTIONS[candidate.kind],
  };
}

function gardenFigures(season: Season) {
  return mixFigures(
    season,
    season.zones.map(({ zone }) => zone.id),
  );
}

function pressureAfter(season: Season, notice: Notice): Candidate['figures'] {
  const leastPressureKpa = notice.kind === 'line-too-long' ? weakestEmitterKpa(season, notice) : undefined;
  return leastPressureKpa === undefined ? {} : { leastPressureKpa };
}
