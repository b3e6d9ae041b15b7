import type { Season } from '../season/season.ts';
import { closed } from './kinds/closed.ts';
import { cropPast } from './kinds/crop-past.ts';
import { goingShort } from './kinds/going-short.ts';
import { handSet } from './kinds/hand-set.ts';
import { neverEnough } from './kinds/never-enough.ts';
import { noLine } from './kinds/no-line.ts';
import { outOfSeason } from './kinds/out-of-season.ts';
import { over } from './kinds/over.ts';
import { refillWeekly } from './kinds/refill-weekly.ts';
import { tooLong } from './kinds/too-long.ts';
import type { Notice } from './notice.ts';
import { ranked } from './rank.ts';

/** One module a kind; a further kind is one more entry, and its place in `rank.ts`. */
const FINDERS: readonly ((season: Season) => readonly Notice[])[] = [
  noLine,
  tooLong,
  goingShort,
  neverEnough,
  closed,
  cropPast,
  outOfSeason,
  over,
  refillWeekly,
  handSet,
];

/** What in a season needs attention, worst first (`ranked` says how); empty where all is met. */
export function noticesOf(season: Season): readonly Notice[] {
  return ranked(FINDERS.flatMap((find) => find(season)));
}
