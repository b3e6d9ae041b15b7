import type { Notice, NoticeKind } from '../../../engine/notices/notice.ts';
import type { Season } from '../../../engine/season/season.ts';
import type { Plan } from '../../schema/plan-schema.ts';
import { allowanceExceededCandidates } from './kinds/allowance-exceeded.ts';
import { emittersFarApartCandidates } from './kinds/emitters-far-apart.ts';
import { flowTogetherCandidates } from './kinds/flow-together.ts';
import { flowTooGreatCandidates } from './kinds/flow-too-great.ts';
import { lineDownhillCandidates } from './kinds/line-downhill.ts';
import { lineTooLongCandidates } from './kinds/line-too-long.ts';
import { tankDryCandidates } from './kinds/tank-dry.ts';
import { windowTooShortCandidates } from './kinds/window-too-short.ts';
import { prove } from './prove.ts';
import type { Candidate, Noticed, Remedy } from './remedy.ts';

const CANDIDATES: Readonly<Partial<Record<NoticeKind, (of: Noticed) => readonly Candidate[]>>> = {
  'line-too-long': lineTooLongCandidates,
  'flow-too-great': flowTooGreatCandidates,
  'flow-together': flowTogetherCandidates,
  'window-too-short': windowTooShortCandidates,
  'allowance-exceeded': allowanceExceededCandidates,
  'tank-dry': tankDryCandidates,
  'emitters-far-apart': emittersFarApartCandidates,
  'line-downhill': lineDownhillCandidates,
};

/**
 * What mends a notice or makes it less, each worked out by computing the season with it: those that do away with it first,
 * of these the one that leaves plants least short; then those that leave the least of it. Of several sizes of one change
 * the best alone, and of equals the smallest change. Empty where no change of the plan is known to help: some troubles are mended in the garden alone.
 *
 * `season` is the plan's own, `notice` one of its notices. Computing takes a season for each candidate: ask for one
 * notice at a time.
 */
export function remediesOf(plan: Plan, season: Season, notice: Notice): readonly Remedy[] {
  const of: Noticed = { plan, season, notice };
  const candidates = CANDIDATES[notice.kind]?.(of) ?? [];
  const proven = candidates.flatMap((candidate, place) => prove(of, candidate, place) ?? []);
  const best = new Map<string, Remedy>();
  for (const remedy of proven) {
    const rival = best.get(remedy.kind);
    if (rival === undefined || remedy.remaining < rival.remaining) best.set(remedy.kind, remedy);
  }
  return [...best.values()].toSorted(
    (one, other) => one.remaining - other.remaining || one.unmetLitresMore - other.unmetLitresMore,
  );
}
