/** What can be done about a notice, as data: the words are made where it is shown. */

import type { Season } from '../../engine/season/season.ts';
import type { CautionId } from '../../explain/notices/cautions.ts';
import type { Notice, NoticeKind } from '../../explain/notices/notice.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';

/**
 * close-loop: the line's end is joined to its feed. feed-middle: each run is fed in its middle, and so is two of half the
 * length. cut-in-two: half of the planting with half of each run gets a zone of its own. wider-spacing, closer-spacing:
 * other dripline. split-zone: some of the zone's plantings get a zone of their own. other-days: zones water on weekdays of
 * their own. more-days: a zone waters on more of them. fewer-minutes: less water in the weeks concerned. larger-tank.
 * uphill: the line is moved to the uphill side.
 */
export type RemedyKind =
  | 'close-loop'
  | 'feed-middle'
  | 'cut-in-two'
  | 'wider-spacing'
  | 'closer-spacing'
  | 'split-zone'
  | 'other-days'
  | 'more-days'
  | 'fewer-minutes'
  | 'larger-tank'
  | 'uphill';

/** A change that may help; whether it does is found out by making it. */
export interface Candidate {
  readonly kind: RemedyKind;
  /**
   * Of the change itself, in SI, by names that carry their unit; of a line whose pressure is the trouble also
   * `leastPressureKpa`, at its weakest emitter after the change.
   */
  readonly figures: Readonly<Record<string, number>>;
  /** Zones whose weekdays or minutes change, where there may be several. */
  readonly zoneIds?: readonly string[];
  readonly edit: Edit;
}

/** One after another; undefined stands for a step of looking for the next one. */
export type Candidates = Iterable<Candidate | undefined>;

export interface Remedy extends Candidate {
  /** No other of the same notice has it. */
  readonly id: string;
  /** How much of the trouble is left, as a share of what there was; 0 where the notice is gone. Below 1. */
  readonly remaining: number;
  /** What it costs over the season: gross irrigation more (negative: less), and demand unmet more, L. */
  readonly litresMore: number;
  readonly unmetLitresMore: number;
  /** Minutes more of all zones over the season, one after another. */
  readonly minutesMore: number;
  /** Notices of another kind that the season has with it and not without: warnings and dangers. */
  readonly sideEffects: readonly Notice[];
  /** That season: it has the names that those notices speak of. */
  readonly seasonWith: Season;
  /** What its work calls for, most pressing first. */
  readonly cautions: readonly CautionId[];
}

/** A notice of the plan's own season. */
export interface Noticed<Kind extends NoticeKind = NoticeKind> {
  readonly plan: Plan;
  readonly season: Season;
  readonly notice: Notice<Kind>;
}
