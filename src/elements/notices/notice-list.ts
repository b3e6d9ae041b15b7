import type { Season } from '../../engine/season/season.ts';
import { type Notice, plantingsOf } from '../../explain/notices/notice.ts';
import { noticesOf } from '../../explain/notices/notices-of.ts';

/** A notice in the list. */
export interface ListedNotice {
  readonly notice: Notice;
  /** By which it is known again in the next season: no two are alike. */
  readonly key: string;
  readonly index: number;
}

const cache = new WeakMap<Season, readonly ListedNotice[]>();

/** A season's notices, worst first; looked for once. */
export function noticeList(season: Season): readonly ListedNotice[] {
  const list = cache.get(season) ?? listed(noticesOf(season));
  cache.set(season, list);
  return list;
}

function listed(notices: readonly Notice[]): readonly ListedNotice[] {
  const counts = new Map<string, number>();
  return notices.map((notice, index) => {
    const { kind, zoneId, lineIndex } = notice;
    const subject = JSON.stringify([kind, zoneId, ...plantingsOf(notice), lineIndex]);
    const count = (counts.get(subject) ?? 0) + 1;
    counts.set(subject, count);
    return { notice, key: `${subject} ${count}`, index };
  });
}
