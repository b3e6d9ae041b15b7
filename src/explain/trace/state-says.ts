/** What each state means, in a sentence. */
import type { State } from '../../engine/season/season.ts';

export const STATE_SAYS: Readonly<Record<State, string>> = {
  dry: 'Dry: the week ends with the soil drier than the plants can bear.',
  short: 'Short: on some day the plants could not use all they would, or the week’s end missed its target.',
  over: 'Over: irrigation drained away, more than rounding the minutes explains.',
  met: 'Met: the plants had what they need and nothing to speak of was wasted.',
  closed: 'Closed: the zone was shut for the week by hand.',
  off: 'Off: nothing is in the ground.',
};
