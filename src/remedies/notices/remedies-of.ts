import { runThrough } from '../../engine/run-through.ts';
import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { NOTICE_REMEDIES, type NoticeRemediesRow } from './notice-remedies.ts';
import { hasRemedies, type RemediedKind } from './remedied-kinds.ts';
import type { NoticeInPlan, Remedy, RemedyCandidates, RemedyKind, TriedRemedy } from './remedy.ts';
import { sideEffects } from './side-effects.ts';
import { tryCandidate } from './try-candidate.ts';

/**
 * What mends a notice or makes it less, each worked out by computing the season with it. Those that make nothing dry out
 * come first, then those that leave the least of the problem, then those that leave plants least short. Of several sizes
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
export function* searchRemedies(of: NoticeInPlan): Generator<number, readonly Remedy[]> {
  const { notice } = of;
  if (!hasRemedies(notice)) return [];
  const remedied = { ...of, notice };
  const best = new Map<RemedyKind, TriedRemedy>();
  let steps = 0;
  for (const candidate of candidatesOf(remedied)) {
    const tried = candidate === undefined ? undefined : tryCandidate(remedied, candidate, steps);
    const rival = tried && best.get(tried.kind);
    if (tried && (rival === undefined || tried.remaining < rival.remaining)) best.set(tried.kind, tried);
    steps += 1;
    yield steps;
  }
  const remedies: Remedy[] = [];
  for (const tried of best.values()) {
    remedies.push({ ...tried, sideEffects: sideEffects(of.season, tried.seasonWith, notice) });
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

function candidatesOf<Kind extends RemediedKind>(of: NoticeInPlan<Kind>): RemedyCandidates {
  const row: NoticeRemediesRow<Kind> = NOTICE_REMEDIES[of.notice.kind];
  return row.candidates(of);
}

function dangersOf({ sideEffects }: Remedy): number {
  return sideEffects.filter(({ severity }) => severity === 'danger').length;
}
