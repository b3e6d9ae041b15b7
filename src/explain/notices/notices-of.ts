import type { Season } from '../../engine/season/season.ts';
import { allowanceExceeded } from './kinds/allowance-exceeded.ts';
import { closed } from './kinds/closed.ts';
import { cropEarly } from './kinds/crop-early.ts';
import { cropPast } from './kinds/crop-past.ts';
import { emittersFarApart } from './kinds/emitters-far-apart.ts';
import { flowTogether } from './kinds/flow-together.ts';
import { flowTooGreat } from './kinds/flow-too-great.ts';
import { goingShort } from './kinds/going-short.ts';
import { handSet } from './kinds/hand-set.ts';
import { lineDownhill } from './kinds/line-downhill.ts';
import { linePressure } from './kinds/line-pressure.ts';
import { neverEnough } from './kinds/never-enough.ts';
import { noClimate } from './kinds/no-climate.ts';
import { noLine } from './kinds/no-line.ts';
import { outOfSeason } from './kinds/out-of-season.ts';
import { over } from './kinds/over.ts';
import { refillWeekly } from './kinds/refill-weekly.ts';
import { tankDry } from './kinds/tank-dry.ts';
import { tooLong } from './kinds/too-long.ts';
import { windowTooShort } from './kinds/window-too-short.ts';
import type { Notice } from './notice.ts';
import { ranked } from './rank.ts';

/** One module a kind, or two that are told apart in one place; a further kind is one more entry, and its weight in `rank.ts`. */
const FINDERS: readonly ((season: Season) => readonly Notice[])[] = [
  noClimate,
  noLine,
  tooLong,
  goingShort,
  neverEnough,
  closed,
  cropEarly,
  cropPast,
  outOfSeason,
  over,
  refillWeekly,
  handSet,
  linePressure,
  flowTooGreat,
  windowTooShort,
  tankDry,
  allowanceExceeded,
  flowTogether,
  emittersFarApart,
  lineDownhill,
];

/** What in a season needs attention, worst first (`ranked` says how); empty where all is met. */
export function noticesOf(season: Season): readonly Notice[] {
  return ranked(FINDERS.flatMap((find) => find(season)));
}
