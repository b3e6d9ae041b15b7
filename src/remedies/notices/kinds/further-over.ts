/** What is tried where no one change keeps water from draining without harm. */
import { plantingsOf } from '../../../explain/notices/notice.ts';
import type { NoticeInPlan, RemedyCandidate, RemedyCandidates, RemedyKind } from '../remedy.ts';
import { shutWeeks } from '../shut-weeks.ts';
import { noLongerWith, together } from '../together.ts';
import { evenDays, moreDays } from '../weekdays.ts';

/** Changes of watering days or of single weeks, to which other days are not added. */
const OF_DAYS: readonly RemedyKind[] = ['other-days', 'more-days', 'fewer-minutes'];

/** So many of the changes that help are tried with another. */
const MOST_TRIED = 8;

/**
 * Shut off in single weeks; each change that helps with other watering days, or with zones that run no longer than now: what a neighbour
 * lacks is brought on another day, and what is spared is not asked for elsewhere.
 */
export function* furtherOverCandidates(of: NoticeInPlan, tried: readonly RemedyCandidate[]): RemedyCandidates {
  const zone = of.season.garden.zones.find(({ id }) => id === of.notice.zoneId);
  if (zone === undefined) return;
  const single = tried.slice(0, MOST_TRIED);
  for (const candidate of shutWeeks(of, plantingsOf(of.notice))) {
    if (candidate !== undefined) single.push(candidate);
    yield candidate;
  }
  const days = [...evenDays(of, zone), ...moreDays(of, zone)];
  for (const candidate of single) {
    if (OF_DAYS.includes(candidate.kind)) continue;
    for (const onDays of days) yield together(candidate, onDays);
  }
  for (const candidate of single) yield* noLongerWith(of, candidate);
}
