import { runThrough } from '../../engine/run-through.ts';
import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { allowanceExceededCandidates } from './kinds/allowance-exceeded.ts';
import { emittersFarApartCandidates } from './kinds/emitters-far-apart.ts';
import { flowTogetherCandidates } from './kinds/flow-together.ts';
import { flowTooGreatCandidates } from './kinds/flow-too-great.ts';
import { lineDownhillCandidates } from './kinds/line-downhill.ts';
import { lineTooLongCandidates } from './kinds/line-too-long.ts';
import { tankDryCandidates } from './kinds/tank-dry.ts';
import { windowTooShortCandidates } from './kinds/window-too-short.ts';
import { type Proven, prove } from './prove.ts';
import { hasRemedies, type RemediedKind } from './remedied-kinds.ts';
import type { Candidates, Noticed, Remedy, RemedyKind } from './remedy.ts';
import { sideEffects } from './side-effects.ts';

const CANDIDATES: Readonly<Record<RemediedKind, (of: Noticed) => Candidates>> = {
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
 * What mends a notice or makes it less, each worked out by computing the season with it. Those that make nothing dry out
 * come first, then those that leave the least of the trouble, then those that leave plants least short. Of several sizes
 * of one change the best alone, and of equals the smallest change. Empty where no change of the plan is known to help.
 *
 * `season` is the plan's own, `notice` one of its notices. Computing takes a season for each candidate, up to half a
 * second: ask for one notice at a time, and where somebody waits use `searchRemedies`. Never throws.
 */
export function remediesOf(plan: Plan, season: Season, notice: Notice): readonly Remedy[] {
  return runThrough(searchRemedies({ plan, season, notice }));
}

/**
 * The same in steps of one season each, so that a page can pause between any two. Yields the number of steps done; to
 * give the search up, stop asking.
 */
export function* searchRemedies(of: Noticed): Generator<number, readonly Remedy[]> {
  const best = new Map<RemedyKind, Proven>();
  let steps = 0;
  const { notice } = of;
  if (!hasRemedies(notice)) return [];
  const remedied = { ...of, notice };
  for (const candidate of CANDIDATES[notice.kind](of)) {
    const proven = candidate === undefined ? undefined : prove(remedied, candidate, steps);
    const rival = proven && best.get(proven.kind);
    if (proven && (rival === undefined || proven.remaining < rival.remaining)) best.set(proven.kind, proven);
    steps += 1;
    yield steps;
  }
  const remedies: Remedy[] = [];
  for (const proven of best.values()) {
    remedies.push({ ...proven, sideEffects: sideEffects(of.season, proven.seasonWith, of.notice) });
    steps += 1;
    yield steps;
  }
  return remedies.toSorted(
    (one, other) =>
      dangersOf(one) - dangersOf(other) ||
      one.remaining - other.remaining ||
      one.unmetLitresMore - other.unmetLitresMore,
  );
}

function dangersOf({ sideEffects }: Remedy): number {
  return sideEffects.filter(({ severity }) => severity === 'danger').length;
}
