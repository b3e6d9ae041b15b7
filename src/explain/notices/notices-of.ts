import { runThrough } from '../../engine/run-through.ts';
import type { Season } from '../../engine/season/season.ts';
import { requireObject } from '../../plan/require-argument.ts';
import { timingDays } from '../watering-times.ts';
import type { FoundNotice, Notice, NoticeKind } from './notice.ts';
import { NOTICE_KINDS } from './notice-kinds.ts';
import { ranked } from './rank.ts';

const FINDERS = new Set(Object.values(NOTICE_KINDS).map(({ find }) => find));

/** What in a season needs attention, worst first (`ranked` says how); empty where all is met. */
export function noticesOf(season: Season): readonly Notice[] {
  requireObject('season', season, 'garden', 'zones');
  return runThrough(findingNotices(season));
}

/**
 * The same in steps, so that a page can pause between any two. Yields what a step took, in zones looked at: of zones that an earlier
 * season had too, what was found then stands, and is the same object.
 */
export function* findingNotices(season: Season): Generator<number, readonly Notice[]> {
  yield* timingDays(season);
  const all: Notice[] = [];
  for (const find of FINDERS) for (const found of yield* find(season)) all.push(whole(found));
  return ranked(all);
}

/** Those of a kind's finder, which may be of other kinds too; without what their kinds say. */
export function foundLike(kind: NoticeKind, season: Season): readonly FoundNotice[] {
  return runThrough(NOTICE_KINDS[kind].find(season));
}

const known = new WeakMap<FoundNotice, Notice>();

/** With what its kind says. */
function whole(found: FoundNotice): Notice {
  const before = known.get(found);
  if (before !== undefined) return before;
  const { severity, remedy } = NOTICE_KINDS[found.kind];
  const notice = { severity, remedy, ...found };
  known.set(found, notice);
  return notice;
}
