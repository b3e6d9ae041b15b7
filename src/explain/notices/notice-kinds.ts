/** Every kind of notice: how it is found, how much it matters, and what its remedy calls for. A further kind is one more row. */
import type { CautionId } from './cautions.ts';
import { unmetShare } from './kinds/short-of-water.ts';
import type { Notice, NoticeFigures, NoticeKind, NoticeRemedy, OverFigures } from './notice.ts';
import type { NoticeFinder } from './notice-finder.ts';
import { FINDERS } from './notice-finders.ts';
import type { NoticeSeverity } from './severity.ts';

/** Among notices of one severity the kinds with the lesser weight come first; of one weight those with the greater share. */
export const NOTICE_WEIGHTS = {
  nothingKnown: 0,
  /** What cannot be run, what harms plants, what is to be checked. */
  broken: 1,
  wastesWater: 2,
  goodToKnow: 3,
} as const;

const { nothingKnown, broken, wastesWater, goodToKnow } = NOTICE_WEIGHTS;

export interface NoticeKindRow<Kind extends NoticeKind = NoticeKind> {
  /** Finds its notices. Kinds that are told apart in one place share a finder. */
  readonly find: NoticeFinder;
  readonly weight: (typeof NOTICE_WEIGHTS)[keyof typeof NOTICE_WEIGHTS];
  /** How much of what it concerns goes wrong, 0 to 1: of demand what is unmet, of litres what drains, of days or minutes what does not fit. */
  readonly share: (figures: NoticeFigures[Kind]) => number;
  /** Of its notices, unless the finder says otherwise of one. */
  readonly severity: NoticeSeverity;
  readonly remedy: NoticeRemedy;
  /** Beside its remedy, most pressing first. */
  readonly cautions: readonly CautionId[];
}

/** Pipe that is laid or fed anew joins the drinking water and goes into the ground. */
const NEW_PIPE = ['backflow', 'digging', 'codes'] as const;

/** A lack of water. */
const LACKING = {
  find: FINDERS.shortOfWater,
  weight: broken,
  share: unmetShare,
  severity: 'note',
  cautions: ['promise'],
} as const;

const OVER = {
  find: FINDERS.over,
  weight: wastesWater,
  share: ({ drainedLitres, seasonLitres }: OverFigures) => drainedLitres / seasonLitres,
  severity: 'note',
  cautions: ['promise'],
} as const;

/** So many days out of place count whole. */
const MONTH_DAYS = 30;

/** In the order in which they are looked for, which orders notices of the same severity, weight and share. */
export const NOTICE_KINDS: { readonly [Kind in NoticeKind]: NoticeKindRow<Kind> } = {
  'no-climate': {
    find: FINDERS.noClimate,
    weight: nothingKnown,
    share: ({ days, otherDays }) => days / (days + otherDays),
    severity: 'warning',
    remedy: 'fill-climate',
    cautions: [],
  },
  'no-line': { ...LACKING, severity: 'warning', remedy: 'lay-line', cautions: NEW_PIPE },
  'too-long': {
    find: FINDERS.tooLong,
    weight: broken,
    share: ({ minutesPerDay, windowMinutes }) => 1 - windowMinutes / minutesPerDay,
    severity: 'warning',
    remedy: 'split-run',
    cautions: ['codes'],
  },
  closed: { ...LACKING, remedy: 'open-zone' },
  'short-by-hand': { ...LACKING, remedy: 'use-computed' },
  'cut-short': { ...LACKING, remedy: 'cut-order', cautions: ['codes'] },
  'cut-not-met': {
    find: FINDERS.cutNotMet,
    weight: broken,
    share: ({ askedLitres, untakenLitres }) => untakenLitres / askedLitres,
    severity: 'warning',
    remedy: 'cut-kept',
    cautions: ['codes'],
  },
  restricted: { ...LACKING, remedy: 'ask-restriction', cautions: ['codes'] },
  'beyond-timer': { ...LACKING, remedy: 'change-line' },
  'shut-off-short': { ...LACKING, remedy: 'change-line' },
  'left-behind': { ...LACKING, remedy: 'change-line' },
  'few-days': { ...LACKING, remedy: 'more-days' },
  short: { ...LACKING, remedy: 'change-line' },
  'short-as-run': { ...LACKING, weight: goodToKnow, remedy: 'nothing-now' },
  'dry-spell': { ...LACKING, weight: goodToKnow, remedy: 'nothing-now' },
  'crop-early': {
    find: FINDERS.cropEarly,
    weight: broken,
    share: ({ daysEarly }) => Math.min(1, daysEarly / MONTH_DAYS),
    severity: 'warning',
    remedy: 'check-days',
    cautions: [],
  },
  'crop-past': {
    find: FINDERS.cropPast,
    weight: broken,
    share: ({ daysPast }) => Math.min(1, daysPast / MONTH_DAYS),
    severity: 'warning',
    remedy: 'check-days',
    cautions: [],
  },
  'out-of-season': {
    find: FINDERS.outOfSeason,
    weight: broken,
    share: () => 1,
    severity: 'warning',
    remedy: 'check-days',
    cautions: [],
  },
  over: { ...OVER, remedy: 'change-line' },
  'over-by-hand': { ...OVER, remedy: 'use-computed' },
  'step-too-long': {
    find: FINDERS.stepTooLong,
    weight: wastesWater,
    share: ({ timerStepMinutes, longestCycleMinutes }) => 1 - longestCycleMinutes / timerStepMinutes,
    severity: 'warning',
    remedy: 'smaller-step',
    cautions: ['promise'],
  },
  'hand-set': {
    find: FINDERS.handSet,
    weight: goodToKnow,
    share: ({ minutes, computedMinutes }) => Math.abs(minutes - computedMinutes) / Math.max(minutes, computedMinutes),
    severity: 'note',
    remedy: 'use-computed',
    cautions: [],
  },
  'line-too-long': {
    find: FINDERS.linePressure,
    weight: broken,
    share: ({ beyondBounds }) => Math.min(1, beyondBounds),
    severity: 'warning',
    remedy: 'shorten-run',
    cautions: NEW_PIPE,
  },
  'pressure-low': {
    find: FINDERS.linePressure,
    weight: broken,
    share: () => 1,
    severity: 'warning',
    remedy: 'more-pressure',
    cautions: ['backflow', 'codes'],
  },
  'flow-below-label': {
    find: FINDERS.flowBelowLabel,
    weight: broken,
    share: ({ flowLph, labelLph }) => 1 - flowLph / labelLph,
    severity: 'warning',
    remedy: 'more-pressure',
    cautions: ['backflow', 'codes'],
  },
  'flow-too-fast': {
    find: FINDERS.flowTooFast,
    weight: broken,
    share: ({ velocityMs, limitMs }) => 1 - limitMs / velocityMs,
    severity: 'warning',
    remedy: 'wider-tube',
    cautions: NEW_PIPE,
  },
  'flow-too-great': {
    find: FINDERS.flowTooGreat,
    weight: broken,
    share: ({ excessLpm, flowLpm }) => excessLpm / flowLpm,
    severity: 'warning',
    remedy: 'split-zone',
    cautions: NEW_PIPE,
  },
  'window-too-short': {
    find: FINDERS.windowTooShort,
    weight: broken,
    share: ({ minutesOverInAll, minutesInAll }) => minutesOverInAll / minutesInAll,
    severity: 'warning',
    remedy: 'more-days',
    cautions: ['codes'],
  },
  'tank-dry': {
    find: FINDERS.tankDry,
    weight: broken,
    share: ({ mainsLitres, drawnLitres }) => mainsLitres / drawnLitres,
    severity: 'danger',
    remedy: 'larger-tank',
    cautions: ['tank', 'backflow', 'codes'],
  },
  'allowance-exceeded': {
    find: FINDERS.allowanceExceeded,
    weight: broken,
    share: ({ usedLitres, weekAllowanceLitres, seasonAllowanceLitres = 0 }) =>
      1 - (weekAllowanceLitres ?? seasonAllowanceLitres) / usedLitres,
    severity: 'warning',
    remedy: 'use-less',
    cautions: ['codes'],
  },
  'flow-together': {
    find: FINDERS.flowTogether,
    weight: broken,
    share: ({ flowLpm, sourceLpm }) => 1 - sourceLpm / flowLpm,
    severity: 'note',
    remedy: 'stagger',
    cautions: [],
  },
  'emitters-far-apart': {
    find: FINDERS.emittersFarApart,
    weight: wastesWater,
    share: ({ spacingM, widestSpacingM }) => 1 - widestSpacingM / spacingM,
    severity: 'note',
    remedy: 'closer-emitters',
    cautions: ['promise'],
  },
  'pot-dries-out': {
    find: FINDERS.potDriesOut,
    weight: broken,
    share: ({ heldLitres, usedLitres }) => 1 - heldLitres / usedLitres,
    severity: 'warning',
    remedy: 'bigger-pot',
    cautions: ['codes'],
  },
  'wetted-too-little': {
    find: FINDERS.wettedTooLittle,
    weight: wastesWater,
    share: ({ wettedShare, wantedShare }) => 1 - wettedShare / wantedShare,
    severity: 'note',
    remedy: 'wet-more',
    cautions: ['promise'],
  },
  'line-downhill': {
    find: FINDERS.lineDownhill,
    weight: wastesWater,
    share: ({ slopePercent }) => Math.min(1, slopePercent / 100),
    severity: 'warning',
    remedy: 'uphill-side',
    cautions: ['promise'],
  },
};

/** The share of a notice's own kind. */
export function shareOf<Kind extends NoticeKind>({ kind, figures }: Pick<Notice<Kind>, 'kind' | 'figures'>): number {
  const row: NoticeKindRow<Kind> = NOTICE_KINDS[kind];
  return row.share(figures);
}
