/** Something in the season that needs a person's attention. Its words are made where it is shown. */

/**
 * no-line: needs water and nothing brings any. dry: passes its allowed depletion. short: gets less than it needs.
 * never-enough: open on every watering day, in almost every week of need, and still short. over: irrigation drains away.
 * closed: closed by hand while it goes short. hand-set: minutes by hand unlike the calculation's. too-long: runs longer
 * than a day or than the hours that the supply is open. refill-weekly: deep and seldom, yet due every week.
 * crop-early: in the ground before it is planted. crop-past: in the ground after its last stage. out-of-season: in the
 * ground on no day of the season.
 *
 * line-too-long: the pressure does not carry to its last emitter, or plain emitters differ too much. pressure-low: not
 * even the first emitter has the pressure it needs. flow-too-great: a zone asks for more than the source gives.
 * flow-together: zones that water on the same day cannot all run at once. window-too-short: a watering day takes longer
 * than the hours in which water may run. allowance-exceeded: of a week or the season. tank-dry: the tank does not last.
 * emitters-far-apart: for the soil. line-downhill: the line lies on the downhill side of its plants.
 *
 * no-climate: no reference ET is given, so that nothing is known of what plants use.
 */
export type NoticeKind =
  | 'no-line'
  | 'dry'
  | 'short'
  | 'never-enough'
  | 'over'
  | 'closed'
  | 'hand-set'
  | 'too-long'
  | 'refill-weekly'
  | 'crop-early'
  | 'crop-past'
  | 'out-of-season'
  | 'line-too-long'
  | 'pressure-low'
  | 'flow-too-great'
  | 'flow-together'
  | 'window-too-short'
  | 'allowance-exceeded'
  | 'tank-dry'
  | 'emitters-far-apart'
  | 'line-downhill'
  | 'no-climate';

export type NoticeSeverity = 'danger' | 'warning' | 'note';

/** What would mend it; the words, and the edit if there is one, are made where it is shown. */
export type NoticeRemedy =
  | 'lay-line'
  | 'water-more'
  | 'change-line'
  | 'shut-off'
  | 'open-zone'
  | 'give-back'
  | 'split-run'
  | 'keep-instead'
  | 'check-days'
  | 'shorten-run'
  | 'more-pressure'
  | 'split-zone'
  | 'stagger'
  | 'more-days'
  | 'use-less'
  | 'larger-tank'
  | 'closer-emitters'
  | 'uphill-side'
  | 'fill-climate';

export interface Notice {
  readonly kind: NoticeKind;
  readonly severity: NoticeSeverity;
  readonly remedy: NoticeRemedy;
  /** Absent where the whole garden is concerned. */
  readonly zoneId?: string;
  /** Absent where the whole zone is concerned. */
  readonly plantingId?: string;
  /** Place in the planting's lines; absent where no one line is concerned. */
  readonly lineIndex?: number;
  /** Ids of zones that can run together, group by group; only of `flow-together`. */
  readonly groups?: readonly (readonly string[])[];
  /** First and last week concerned; absent where no week is. */
  readonly firstWeek?: number;
  readonly lastWeek?: number;
  /** The weeks concerned, in order; not every week from first to last need be among them. */
  readonly weeks?: readonly number[];
  /** SI, by names that carry their unit: `unmetLitres`, `minutesPerDay`, `drainedShare` (0..1). */
  readonly figures: Readonly<Record<string, number>>;
}
