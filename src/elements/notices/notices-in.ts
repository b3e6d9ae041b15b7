import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import { noticesOf } from '../../explain/notices/notices-of.ts';

const known = new WeakMap<Season, readonly Notice[]>();

/** A season's notices, looked for once. */
export function noticesIn(season: Season): readonly Notice[] {
  const notices = known.get(season) ?? noticesOf(season);
  known.set(season, notices);
  return notices;
}
