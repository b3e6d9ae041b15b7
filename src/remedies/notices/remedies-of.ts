import { runThrough } from '../../engine/run-through.ts';
import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { harmOf } from './harm.ts';
import { NOTICE_REMEDIES, type NoticeRemediesRow } from './notice-remedies.ts';
import { hasRemedies, type RemediedKind } from './remedied-kinds.ts';
import type {
  NoticeInPlan,
  Remedy,
  RemedyCandidate,
  RemedyCandidates,
  RemedyChange,
  RemedyKind,
  TriedRemedy,
} from './remedy.ts';
import { sideEffects } from './side-effects.ts';
import { tryCandidate } from './try-candidate.ts';

/**
 * What mends a notice or makes it less by half at least, each worked out by computing the season with it, and none that does harm
 * elsewhere (`harmOf`). Those that make nothing dry out come first, then those that leave the least of the problem, then
 * those that are the least to do, then those that leave plants least short. Of several sizes of one change the best alone, of
 * much the same the smallest change. Of waste, where nothing is harmless, two changes at once, and then what saves more than plants lose by
 * it (`trade`), the least cost first. Empty where no change of the plan is known to help.
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
  const search = { of: { ...of, notice }, steps: 0 };
  const groups = yield* tryAll(search, candidatesOf(search.of));
  const found = yield* judge(search, groups);
  if (found.harmless.length === 0) {
    const best = groups.map((group) => group.toSorted(byWorth)[0] as TriedRemedy).toSorted(byWorth);
    const further = furtherOf(
      search.of,
      best.map(({ candidate }) => candidate),
    );
    const others = yield* judge(search, yield* tryAll(search, further));
    found.harmless.push(...others.harmless);
    found.trades.push(...others.trades);
  }
  const { harmless, trades } = found;
  const ranked =
    harmless.length > 0
      ? harmless.toSorted((one, other) => dangersOf(one) - dangersOf(other) || byWorth(one, other))
      : trades.toSorted((one, other) => costOf(one) - costOf(other));
  return ranked.slice(0, MOST_LISTED);
}

interface Search {
  readonly of: NoticeInPlan<RemediedKind>;
  steps: number;
}

interface Found {
  readonly harmless: Remedy[];
  /** Those that save more than they cost: looked at where there is none that does without. */
  readonly trades: Remedy[];
}

/** Candidates that help, sizes of one change together. */
function* tryAll(search: Search, candidates: RemedyCandidates): Generator<number, readonly (readonly TriedRemedy[])[]> {
  const groups = new Map<string, TriedRemedy[]>();
  for (const candidate of candidates) {
    const tried = candidate === undefined ? undefined : tryCandidate(search.of, candidate, search.steps);
    if (tried !== undefined) groups.set(groupOf(tried), [...(groups.get(groupOf(tried)) ?? []), tried]);
    search.steps += 1;
    yield search.steps;
  }
  return [...groups.values()];
}

/** Of each group the best that does no harm, or else the best trade. */
function* judge(search: Search, groups: readonly (readonly TriedRemedy[])[]): Generator<number, Found> {
  const found: Found = { harmless: [], trades: [] };
  for (const group of groups) {
    const trades: Remedy[] = [];
    for (const tried of group.toSorted(byWorth).slice(0, MOST_OF_GROUP)) {
      const remedy = { ...tried, sideEffects: sideEffects(search.of.season, tried.seasonWith) };
      search.steps += 1;
      yield search.steps;
      const harm = harmOf(search.of, remedy);
      if (harm === 'none') {
        found.harmless.push(remedy);
        break;
      }
      if (harm !== 'too-much') trades.push({ ...remedy, trade: harm });
    }
    found.trades.push(...trades.toSorted((one, other) => costOf(one) - costOf(other)).slice(0, 1));
  }
  return found;
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
  'shut-weeks',
  'together',
  'minutes-as-now',
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

function candidatesOf<Kind extends RemediedKind>(of: NoticeInPlan<Kind>): RemedyCandidates {
  const row: NoticeRemediesRow<Kind> = NOTICE_REMEDIES[of.notice.kind];
  return row.candidates(of);
}

function furtherOf<Kind extends RemediedKind>(
  of: NoticeInPlan<Kind>,
  tried: readonly RemedyCandidate[],
): RemedyCandidates {
  const row: NoticeRemediesRow<Kind> = NOTICE_REMEDIES[of.notice.kind];
  return row.further?.(of, tried) ?? [];
}

/** Sizes of one change of one planting. */
function groupOf(change: RemedyChange): string {
  if (change.kind === 'together') return change.parts.map(groupOf).join(' ');
  const plantingId = 'plantingId' in change ? change.plantingId : undefined;
  return `${change.kind} ${plantingId}`;
}

function dangersOf({ sideEffects }: Remedy): number {
  return sideEffects.filter(({ severity }) => severity === 'danger').length;
}

/** Of a trade, what it costs of what it saves. */
function costOf({ trade }: Remedy): number {
  return trade === undefined ? 0 : trade.lostLitres / trade.savedLitres;
}
