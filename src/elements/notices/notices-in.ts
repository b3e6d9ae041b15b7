import type { Notice } from '../../engine/notices/notice.ts';
import { noticesOf } from '../../engine/notices/notices-of.ts';
import type { Season } from '../../engine/season/season.ts';

const known = new WeakMap<Season, readonly Notice[]>();

/** A season's notices, looked for once. */
export function noticesIn(season: Season): readonly Notice[] {
  const notices = known.get(season) ?? noticesOf(season);
  known.set(season, notices);
  return notices;
}
