/** Every kind of notice: how it is found, how much it matters, and what its remedy calls for. A further kind is one more row. */
import type { Season } from '../../engine/season/season.ts';
import type { CautionId } from './cautions.ts';
import { allowanceExceeded } from './kinds/allowance-exceeded.ts';
import { cropEarly } from './kinds/crop-early.ts';
import { cropPast } from './kinds/crop-past.ts';
import { emittersFarApart } from './kinds/emitters-far-apart.ts';
import { flowTogether } from './kinds/flow-together.ts';
import { flowTooGreat } from './kinds/flow-too-great.ts';
import { handSet } from './kinds/hand-set.ts';
import { lineDownhill } from './kinds/line-downhill.ts';
import { linePressure } from './kinds/line-pressure.ts';
import { noClimate } from './kinds/no-climate.ts';
import { outOfSeason } from './kinds/out-of-season.ts';
import { over } from './kinds/over.ts';
import { shortOfWater, unmetShare } from './kinds/short-of-water.ts';
import { stepTooLong } from './kinds/step-too-long.ts';
import { tankDry } from './kinds/tank-dry.ts';
import { tooLong } from './kinds/too-long.ts';
import { windowTooShort } from './kinds/window-too-short.ts';
import type { FoundNotice, Notice, NoticeFigures, NoticeKind, NoticeRemedy, OverFigures } from './notice.ts';
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
  /** Finds its notices, in the garden's order. Kinds that are told apart in one place share a finder. */
  readonly find: (season: Season) => readonly FoundNotice[];
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
  find: shortOfWater,
  weight: broken,
  share: unmetShare,
  severity: 'note',
  cautions: ['promise'],
} as const;

const OVER = {
  find: over,
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
    find: noClimate,
    weight: nothingKnown,
    share: ({ days, otherDays }) => days / (days + otherDays),
    severity: 'warning',
    remedy: 'fill-climate',
    cautions: [],
  },
  'no-line': { ...LACKING, severity: 'warning', remedy: 'lay-line', cautions: NEW_PIPE },
  'too-long': {
    find: tooLong,
    weight: broken,
    share: ({ minutesPerDay, windowMinutes }) => 1 - windowMinutes / minutesPerDay,
    severity: 'warning',
    remedy: 'split-run',
    cautions: ['codes'],
  },
  closed: { ...LACKING, remedy: 'open-zone' },
  'short-by-hand': { ...LACKING, remedy: 'use-computed' },
  'beyond-timer': { ...LACKING, remedy: 'change-line' },
  'shut-off-short': { ...LACKING, remedy: 'change-line' },
  'left-behind': { ...LACKING, remedy: 'change-line' },
  'few-days': { ...LACKING, remedy: 'more-days' },
  short: { ...LACKING, remedy: 'change-line' },
  'short-as-run': { ...LACKING, weight: goodToKnow, remedy: 'nothing-now' },
  'dry-spell': { ...LACKING, weight: goodToKnow, remedy: 'nothing-now' },
  'crop-early': {
    find: cropEarly,
    weight: broken,
    share: ({ daysEarly }) => Math.min(1, daysEarly / MONTH_DAYS),
    severity: 'warning',
    remedy: 'check-days',
    cautions: [],
  },
  'crop-past': {
    find: cropPast,
    weight: broken,
    share: ({ daysPast }) => Math.min(1, daysPast / MONTH_DAYS),
    severity: 'warning',
    remedy: 'check-days',
    cautions: [],
  },
  'out-of-season': {
    find: outOfSeason,
    weight: broken,
    share: () => 1,
    severity: 'warning',
    remedy: 'check-days',
    cautions: [],
  },
  over: { ...OVER, remedy: 'change-line' },
  'over-by-hand': { ...OVER, remedy: 'use-computed' },
  'step-too-long': {
    find: stepTooLong,
    weight: wastesWater,
    share: ({ timerStepMinutes, longestCycleMinutes }) => 1 - longestCycleMinutes / timerStepMinutes,
    severity: 'warning',
    remedy: 'smaller-step',
    cautions: ['promise'],
  },
  'hand-set': {
    find: handSet,
    weight: goodToKnow,
    share: ({ minutes, computedMinutes }) => Math.abs(minutes - computedMinutes) / Math.max(minutes, computedMinutes),
    severity: 'note',
    remedy: 'use-computed',
    cautions: [],
  },
  'line-too-long': {
    find: linePressure,
    weight: broken,
    share: ({ beyondBounds }) => Math.min(1, beyondBounds),
    severity: 'warning',
    remedy: 'shorten-run',
    cautions: NEW_PIPE,
  },
  'pressure-low': {
    find: linePressure,
    weight: broken,
    share: () => 1,
    severity: 'warning',
    remedy: 'more-pressure',
    cautions: ['backflow', 'codes'],
  },
  'flow-too-great': {
    find: flowTooGreat,
    weight: broken,
    share: ({ excessLpm, flowLpm }) => excessLpm / flowLpm,
    severity: 'warning',
    remedy: 'split-zone',
    cautions: NEW_PIPE,
  },
  'window-too-short': {
    find: windowTooShort,
    weight: broken,
    share: ({ minutesOverInAll, minutesInAll }) => minutesOverInAll / minutesInAll,
    severity: 'warning',
    remedy: 'more-days',
    cautions: ['codes'],
  },
  'tank-dry': {
    find: tankDry,
    weight: broken,
    share: ({ mainsLitres, drawnLitres }) => mainsLitres / drawnLitres,
    severity: 'danger',
    remedy: 'larger-tank',
    cautions: ['tank', 'backflow', 'codes'],
  },
  'allowance-exceeded': {
    find: allowanceExceeded,
    weight: broken,
    share: ({ usedLitres, weekAllowanceLitres, seasonAllowanceLitres = 0 }) =>
      1 - (weekAllowanceLitres ?? seasonAllowanceLitres) / usedLitres,
    severity: 'warning',
    remedy: 'use-less',
    cautions: ['codes'],
  },
  'flow-together': {
    find: flowTogether,
    weight: broken,
    share: ({ flowLpm, sourceLpm }) => 1 - sourceLpm / flowLpm,
    severity: 'note',
    remedy: 'stagger',
    cautions: [],
  },
  'emitters-far-apart': {
    find: emittersFarApart,
    weight: wastesWater,
    share: ({ spacingM, widestSpacingM }) => 1 - widestSpacingM / spacingM,
    severity: 'note',
    remedy: 'closer-emitters',
    cautions: ['promise'],
  },
  'line-downhill': {
    find: lineDownhill,
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
