import type { Season } from '../../engine/season/season.ts';
import type { FoundNotice, Notice } from './notice.ts';
import { NOTICE_KINDS } from './notice-kinds.ts';
import { ranked } from './rank.ts';

const FINDERS = new Set(Object.values(NOTICE_KINDS).map(({ find }) => find));

/** What in a season needs attention, worst first (`ranked` says how); empty where all is met. */
export function noticesOf(season: Season): readonly Notice[] {
  return ranked([...FINDERS].flatMap((find) => find(season).map(whole)));
}

/** With what its kind says. */
function whole(found: FoundNotice): Notice {
  const { severity, remedy } = NOTICE_KINDS[found.kind];
  return { severity, remedy, ...found };
}
