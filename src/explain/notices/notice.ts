/** Something in the season that needs a person's attention: kinds, ids and figures. Its words are made where it is shown. */
import type { NoticeSeverity } from './severity.ts';
import type { Shortage } from './shortage.ts';

/**
 * Every kind of notice with its figures: SI, by names that carry their unit; shares are 0..1. A kind is one entry here and one
 * row in `notice-kinds.ts`.
 */
export interface NoticeFigures {
  /**
   * No reference ET is given, or it is 0. Months of the year of which the climate says one, else its temperatures; days without it, and
   * days of the season with it.
   */
  'no-climate': {
    readonly etoMonths: number;
    readonly temperatureMonths: number;
    readonly days: number;
    readonly otherDays: number;
  };
  /** Needs water and nothing brings any. */
  'no-line': Shortage;
  /** Runs longer than a day or than the hours in which water may run. */
  'too-long': { readonly minutesPerDay: number; readonly windowMinutes: number };
  /** Minutes or open days that were set by hand bring less than would be computed. */
  'short-by-hand': Shortage;
  /** What was really run brought too little. */
  'short-as-run': Shortage;
  /** Its zone gave up water where it is cut. */
  'cut-short': Shortage;
  /** A cut asks for more than the zones can give up: of all such weeks, and of the worst. */
  'cut-not-met': {
    readonly askedLitres: number;
    readonly untakenLitres: number;
    readonly worstWeekLitres: number;
  };
  /** A watering restriction leaves no day of the week. */
  restricted: Shortage;
  /** Asks for more minutes a watering day than its timer can run, in its starts and its longest cycle or in a day. */
  'beyond-timer': Shortage & {
    readonly minutesAsked: number;
    readonly mostMinutes: number;
    /** The starts and the longest cycle by which the timer is bound; no cycle where only the day is too short. */
    readonly startsADay: number;
    readonly cycleMinutes?: number;
  };
  /** Its shut-off is open on every watering day, and its zone runs for less than it asks for. */
  'shut-off-short': Shortage & LeftBehindFigures;
  /** Its zone's rule looks to others. */
  'left-behind': Shortage & LeftBehindFigures;
  /** Gets what it asks for and passes its allowed depletion between two waterings. */
  'few-days': Shortage & {
    /** Watering days of those weeks: of the one with the fewest, of the one with the most. */
    readonly fewestDays: number;
    readonly mostDays: number;
  };
  /** Days that were read used more, or brought less rain, than was expected of them. */
  'dry-spell': Shortage;
  /** Gets less than it needs, or is not filled up, for no cause that is told by itself. */
  short: Shortage;
  /** Closed by hand while its plantings go short. */
  closed: Shortage;
  /** In the ground before it is planted. */
  'crop-early': { readonly daysEarly: number };
  /** In the ground after its last stage. */
  'crop-past': { readonly daysPast: number };
  /** In the ground on no day of the season; days to its first or since its last. */
  'out-of-season': { readonly daysBefore: number; readonly daysAfter: number };
  /** Irrigation drains past the roots. */
  over: OverFigures;
  /** The same, where more was set by hand than would be computed. */
  'over-by-hand': OverFigures;
  /** One step of the timer is longer than the soil takes in at once: some of every run runs off. */
  'step-too-long': { readonly timerStepMinutes: number; readonly longestCycleMinutes: number };
  /** Minutes set by hand unlike the computed ones, with nobody the worse for it. */
  'hand-set': { readonly minutes: number; readonly computedMinutes: number };
  /** The pressure does not carry to the line's last emitter, or its plain emitters differ too much. */
  'line-too-long': LinePressureFigures;
  /** Not even the first emitter of the line has the pressure that it needs. */
  'pressure-low': LinePressureFigures;
  /** Its lines give less than their label says, at the pressure that is there. */
  'flow-below-label': { readonly flowLph: number; readonly labelLph: number; readonly pressureKpa: number };
  /** Water runs too fast in one of its tubes; in one of `widerDiameterMm` it would not. */
  'flow-too-fast': {
    readonly velocityMs: number;
    readonly limitMs: number;
    readonly flowLph: number;
    readonly insideDiameterMm: number;
    readonly widerDiameterMm: number;
  };
  /** A zone asks for more than the source gives. */
  'flow-too-great': { readonly flowLpm: number; readonly sourceLpm: number; readonly excessLpm: number };
  /** A watering day takes longer than the hours in which water may run: the worst day, and all such days. */
  'window-too-short': {
    readonly minutesNeeded: number;
    readonly windowMinutes: number;
    readonly minutesOver: number;
    readonly days: number;
    readonly minutesOverInAll: number;
    /** That all watering of the season takes. */
    readonly minutesInAll: number;
  };
  /** The tank does not last. `sizeLitres` would; where none does, `missingLitres` would be missing with any. */
  'tank-dry': {
    /** All that is drawn over the season, and what of it the tank does not have. */
    readonly drawnLitres: number;
    readonly mainsLitres: number;
    readonly overflowLitres: number;
    readonly capacityLitres: number;
    readonly sizeLitres?: number;
    readonly missingLitres?: number;
    /** Counted from the season's first. */
    readonly firstDryDay: number;
  };
  /** Of a week (`usedLitres` in the worst of them) or of the season. */
  'allowance-exceeded': {
    readonly usedLitres: number;
    readonly overLitres: number;
    readonly weekAllowanceLitres?: number;
    readonly seasonAllowanceLitres?: number;
  };
  /** Zones that water on the same day cannot all run at once: the worst day's flow, the number of such days and of groups. */
  'flow-together': {
    readonly flowLpm: number;
    readonly sourceLpm: number;
    readonly days: number;
    readonly groups: number;
  };
  /** For the soil. */
  'emitters-far-apart': { readonly spacingM: number; readonly widestSpacingM: number };
  /** Its lines wet too little of its ground; how far rows stand apart, where it has some. */
  'wetted-too-little': {
    readonly wettedShare: number;
    readonly wantedShare: number;
    /** What one emitter wets at the depth of the roots. */
    readonly widthM: number;
    readonly apartM?: number;
  };
  /** What a container holds readily does not last from one watering to the next: of one container, in the worst week. */
  'pot-dries-out': {
    readonly heldLitres: number;
    readonly usedLitres: number;
    /** From the last run of a day to the next run. */
    readonly hours: number;
    readonly runsADay: number;
    readonly wateringDays: number;
  };
  /** The line lies on the downhill side of its plants. */
  'line-downhill': { readonly slopePercent: number };
}

/** Minutes a watering day, in the week in which they are furthest apart. */
export type LeftBehindFigures = { readonly minutesAsked: number; readonly minutesPerDay: number };

/** Of the plantings concerned in the weeks concerned. */
export type OverFigures = {
  readonly drainedLitres: number;
  readonly appliedLitres: number;
  readonly drainedShare: number;
  /** Applied over the whole season. */
  readonly seasonLitres: number;
};

/** Of a line at the worst of the sources that feed it. */
export type LinePressureFigures = {
  readonly runLengthM: number;
  readonly longestRunM: number;
  readonly runs: number;
  readonly inletPressureKpa: number;
  readonly endPressureKpa: number;
  readonly leastPressureKpa: number;
  /** 0 where no emitter asks for any. */
  readonly neededPressureKpa: number;
  readonly flowVariation: number;
  readonly uniformity: number;
  readonly dryShare: number;
  readonly velocityMs: number;
  /** How far it is out of its bounds, as a share. */
  readonly beyondBounds: number;
};

export type NoticeKind = keyof NoticeFigures;

/** What would help; the words, and the edit if there is one, are made where it is shown. */
export type NoticeRemedy =
  | 'lay-line'
  | 'change-line'
  | 'nothing-now'
  | 'open-zone'
  | 'use-computed'
  | 'cut-order'
  | 'cut-kept'
  | 'ask-restriction'
  | 'split-run'
  | 'smaller-step'
  | 'check-days'
  | 'shorten-run'
  | 'more-pressure'
  | 'wider-tube'
  | 'split-zone'
  | 'stagger'
  | 'more-days'
  | 'use-less'
  | 'larger-tank'
  | 'closer-emitters'
  | 'wet-more'
  | 'bigger-pot'
  | 'uphill-side'
  | 'fill-climate';

/** What a notice concerns. */
export interface NoticeSubject {
  /** Absent where the whole garden is concerned. */
  readonly zoneId?: string;
  /** The one planting that is concerned; absent where several are, or the whole zone. */
  readonly plantingId?: string;
  /** Several plantings of the zone, in its order. */
  readonly plantingIds?: readonly string[];
  /** Index in the planting's lines; absent where no one line is concerned. */
  readonly lineIndex?: number;
  /** Ids of zones that can run together, group by group; only of `flow-together`. */
  readonly groups?: readonly (readonly string[])[];
  /** First and last week concerned; absent where no week is. */
  readonly firstWeek?: number;
  readonly lastWeek?: number;
  /** The weeks concerned, in order; not every week from first to last need be among them. */
  readonly weeks?: readonly number[];
}

export interface Notice<Kind extends NoticeKind = NoticeKind> extends NoticeSubject {
  readonly kind: Kind;
  readonly severity: NoticeSeverity;
  readonly remedy: NoticeRemedy;
  readonly figures: NoticeFigures[Kind];
}

/** Whether a notice is of a kind, so that its figures are known. */
export function isOfKind<Kind extends NoticeKind>(notice: Notice, kind: Kind): notice is Notice<Kind> {
  return notice.kind === kind;
}

/** A notice as its kind's finder tells of it: severity and remedy are those of the kind unless it says otherwise. */
export interface FoundNotice<Kind extends NoticeKind = NoticeKind> extends NoticeSubject {
  readonly kind: Kind;
  readonly severity?: NoticeSeverity;
  readonly remedy?: NoticeRemedy;
  readonly figures: NoticeFigures[Kind];
}

/** Ids of the plantings that a notice names. */
export function plantingsOf({ plantingId, plantingIds }: NoticeSubject): readonly string[] {
  return plantingId === undefined ? (plantingIds ?? []) : [plantingId];
}
