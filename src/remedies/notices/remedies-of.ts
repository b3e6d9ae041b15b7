import { runThrough } from '../../engine/run-through.ts';
import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { NOTICE_REMEDIES, type NoticeRemediesRow } from './notice-remedies.ts';
import { hasRemedies, type RemediedKind } from './remedied-kinds.ts';
import type { NoticeInPlan, Remedy, RemedyCandidates, RemedyKind, TriedRemedy } from './remedy.ts';
import { sideEffects } from './side-effects.ts';
import { tryCandidate } from './try-candidate.ts';
import { isWorseElsewhere } from './worse-elsewhere.ts';

/**
 * What mends a notice or makes it less by half at least, each worked out by computing the season with it, and none that does harm
 * elsewhere (`isWorseElsewhere`). Those that make nothing dry out come first, then those that leave the least of the problem, then
 * those that are the least to do, then those that leave plants least short. Of several sizes of one change the best alone, of
 * much the same the smallest change. Empty where no change of the plan is known to help.
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
  const groups = new Map<string, TriedRemedy[]>();
  let steps = 0;
  for (const candidate of candidatesOf(remedied)) {
    const tried = candidate === undefined ? undefined : tryCandidate(remedied, candidate, steps);
    if (tried !== undefined) groups.set(groupOf(tried), [...(groups.get(groupOf(tried)) ?? []), tried]);
    steps += 1;
    yield steps;
  }
  const remedies: Remedy[] = [];
  for (const group of groups.values()) {
    for (const tried of group.toSorted(byWorth).slice(0, MOST_OF_GROUP)) {
      const remedy = { ...tried, sideEffects: sideEffects(of.season, tried.seasonWith) };
      steps += 1;
      yield steps;
      if (isWorseElsewhere(remedied, remedy)) continue;
      remedies.push(remedy);
      break;
    }
  }
  return remedies
    .toSorted((one, other) => dangersOf(one) - dangersOf(other) || byWorth(one, other))
    .slice(0, MOST_LISTED);
}

/** So many of the best sizes of one change are looked at for the harm that they do. */
const MOST_OF_GROUP = 6;

/** More would hide the best. */
const MOST_LISTED = 5;

/** Shares of a problem that differ by less than half of this come to much the same. */
const SHARE_STEP = 0.05;

/** What is least to do first. */
const EFFORT: readonly RemedyKind[] = [
  'zone-rule',
  'more-room',
  'keep-watered',
  'other-days',
  'days-by-month',
  'more-days',
  'uphill',
  'more-starts',
  'smaller-step',
  'other-emitters',
  'closer-spacing',
  'wider-spacing',
  'shut-off',
  'other-runs',
  'close-loop',
  'feed-middle',
  'own-zone',
  'own-zone-and-days',
  'split-zone',
  'cut-in-two',
  'no-shut-off',
  'larger-tank',
  'fewer-minutes',
];

/** Of one kind, of much the same the one that was tried first stays first: the smaller change; of other emitters the one that takes least. */
function byWorth(one: TriedRemedy, other: TriedRemedy): number {
  const grade = ({ remaining }: TriedRemedy) => Math.round(remaining / SHARE_STEP);
  const isEmitters = one.kind === 'other-emitters' && other.kind === 'other-emitters';
  return (
    grade(one) - grade(other) ||
    EFFORT.indexOf(one.kind) - EFFORT.indexOf(other.kind) ||
    (isEmitters ? one.litresMore - other.litresMore : 0)
  );
}

/** Sizes of one change of one planting. */
function groupOf(remedy: TriedRemedy): string {
  const plantingId = 'plantingId' in remedy ? remedy.plantingId : undefined;
  return `${remedy.kind} ${plantingId}`;
}

function candidatesOf<Kind extends RemediedKind>(of: NoticeInPlan<Kind>): RemedyCandidates {
  const row: NoticeRemediesRow<Kind> = NOTICE_REMEDIES[of.notice.kind];
  return row.candidates(of);
}

function dangersOf({ sideEffects }: Remedy): number {
  return sideEffects.filter(({ severity }) => severity === 'danger').length;
}
