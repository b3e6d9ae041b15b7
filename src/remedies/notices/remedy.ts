/** What can be done about a notice, as data: the words are made where it is shown. */

import type { Season } from '../../engine/season/season.ts';
import type { CautionId } from '../../explain/notices/cautions.ts';
import type { Notice, NoticeKind } from '../../explain/notices/notice.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan, Weekday } from '../../plan/schema/plan-schema.ts';
import type { MixChange } from '../mix/remedy.ts';

/** One change of the plan: ids, and figures in SI by names that carry their unit. */
export type RemedyChange =
  /** The line's end is joined to its feed. */
  | { readonly kind: 'close-loop'; readonly plantingId: string }
  /** Each run is fed in its middle, and so is two of half the length. */
  | { readonly kind: 'feed-middle'; readonly plantingId: string; readonly runs: number; readonly runLengthM: number }
  /** Half of the planting with half of each run gets a zone of its own. */
  | { readonly kind: 'cut-in-two'; readonly plantingId: string; readonly newZoneId: string }
  /** Other dripline. */
  | { readonly kind: 'wider-spacing' | 'closer-spacing'; readonly plantingId: string; readonly spacingM: number }
  /** Some of the zone's plantings get a zone of their own. */
  | {
      readonly kind: 'split-zone';
      readonly zoneId: string;
      readonly newZoneId: string;
      readonly plantingIds: readonly string[];
    }
  /** Other emitters or sprays, another number of runs, a shut-off, a zone of its own, or another rule: a change of a mixed zone. */
  | {
      readonly kind: 'other-emitters' | 'other-runs' | 'shut-off' | 'own-zone' | 'zone-rule';
      /** Absent where no one planting is concerned. */
      readonly plantingId?: string;
      readonly change: MixChange;
    }
  /** A zone of their own, and on days of its own. */
  | {
      readonly kind: 'own-zone-and-days';
      readonly change: MixChange;
      readonly wateringDays: readonly ZoneWateringDays[];
    }
  /** Its shut-off is taken out. */
  | { readonly kind: 'no-shut-off'; readonly plantingId: string }
  /** Watered a little every week instead of deep and infrequently. */
  | { readonly kind: 'keep-watered'; readonly plantingId: string }
  /** Left a little drier by each watering, so that there is room: a share of its allowed depletion. */
  | { readonly kind: 'more-room'; readonly plantingId: string; readonly targetDepletion: number }
  /** A timer that can be set more finely. */
  | { readonly kind: 'smaller-step'; readonly zoneId: string; readonly timerStepMinutes: number }
  /** A timer that can start the zone more often. */
  | { readonly kind: 'more-starts'; readonly zoneId: string; readonly startsADay: number }
  /** A zone waters more often in some months. */
  | { readonly kind: 'days-by-month'; readonly zoneId: string; readonly months: readonly MonthDays[] }
  /** Zones water on other weekdays, or a zone waters on more of them. */
  | { readonly kind: 'other-days' | 'more-days'; readonly wateringDays: readonly ZoneWateringDays[] }
  /** Less water in some weeks: their number, and the minutes of all zones over the season that fall away. */
  | {
      readonly kind: 'fewer-minutes';
      readonly zoneIds: readonly string[];
      readonly weeks: number;
      readonly minutesLess: number;
    }
  /** Shut off in so many weeks, behind a shut-off of their own, and open as they were in the others. */
  | { readonly kind: 'shut-weeks'; readonly plantingIds: readonly string[]; readonly weeks: number }
  /** Zones run no longer than without the change beside it: their minutes by hand, in so many weeks. */
  | { readonly kind: 'minutes-as-now'; readonly zoneIds: readonly string[]; readonly weeks: number }
  /** Several changes at once, none of them of this kind. */
  | { readonly kind: 'together'; readonly parts: readonly RemedyChange[] }
  | { readonly kind: 'larger-tank'; readonly capacityLitres: number; readonly capacityLitresBefore: number }
  /** The line is moved to the uphill side. */
  | { readonly kind: 'uphill'; readonly plantingId: string };

export type RemedyKind = RemedyChange['kind'];

export interface MonthDays {
  /** 0 = January. */
  readonly month: number;
  /** Watering days a week. */
  readonly days: number;
}

export interface ZoneWateringDays {
  readonly zoneId: string;
  /** Monday first. */
  readonly weekdays: readonly Weekday[];
  /** In these alone, 0 = January; left out: all season. */
  readonly months?: readonly number[];
}

/** A change that may help; whether it does is found out by making it. */
export type RemedyCandidate<Kind extends RemedyKind = RemedyKind> = Extract<RemedyChange, { readonly kind: Kind }> & {
  readonly edit: Edit;
};

/** One after another; undefined stands for a step of looking for the next one. */
export type RemedyCandidates = Iterable<RemedyCandidate | undefined>;

/** What comes of a change. */
export interface RemedyOutcome {
  readonly candidate: RemedyCandidate;
  /** No other of the same notice has it. */
  readonly id: string;
  /** How much of the problem is left, as a share of what there was; 0 where the notice is gone. At most `MOST_REMAINING`. */
  readonly remaining: number;
  /** What it costs over the season: gross irrigation more (negative: less), and demand unmet more, L. */
  readonly litresMore: number;
  readonly unmetLitresMore: number;
  /** Minutes more of all zones over the season, one after another. */
  readonly minutesMore: number;
  /** At the line's weakest emitter, where its pressure is the problem. */
  readonly leastPressureKpa?: number;
  /** The season with it: it has the names that the side effects speak of. */
  readonly seasonWith: Season;
  /** What its work calls for, most pressing first. */
  readonly cautions: readonly CautionId[];
}

/** A remedy before its side effects are looked for. */
export type TriedRemedy = RemedyCandidate & RemedyOutcome;

export type Remedy = TriedRemedy & {
  /** Warnings and dangers that the season has with it and not without. */
  readonly sideEffects: readonly Notice[];
  /** Of one that saves more than it costs and does not do without: what plantings lose. */
  readonly trade?: Trade;
};

export interface Trade {
  /** Less past the roots, L. */
  readonly savedLitres: number;
  /** Demand unmet more of all that lose, L: not more than is saved. */
  readonly lostLitres: number;
  readonly plantingIds: readonly string[];
}

/** A notice, the season that it is of, and that season's plan. */
export interface NoticeInPlan<Kind extends NoticeKind = NoticeKind> {
  readonly plan: Plan;
  readonly season: Season;
  readonly notice: Notice<Kind>;
}
