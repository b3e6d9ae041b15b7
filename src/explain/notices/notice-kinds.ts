/** Every kind of notice: how it is found, how much it matters, and what its remedy calls for. A further kind is one more row. */
import type { Season } from '../../engine/season/season.ts';
import type { CautionId } from './cautions.ts';
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
import type { FoundNotice, NoticeKind, NoticeRemedy } from './notice.ts';
import type { NoticeSeverity } from './severity.ts';

/** Among notices of one severity the kinds with the lesser weight come first. */
export const NOTICE_WEIGHTS = {
  nothingKnown: 0,
  cannotRun: 1,
  harmsPlants: 2,
  toCheck: 3,
  wastesWater: 4,
  goodToKnow: 5,
} as const;

const { nothingKnown, cannotRun, harmsPlants, toCheck, wastesWater, goodToKnow } = NOTICE_WEIGHTS;

export interface NoticeKindRow {
  /** Finds its notices, in the garden's order. Kinds that are told apart in one place share a finder. */
  readonly find: (season: Season) => readonly FoundNotice[];
  readonly weight: (typeof NOTICE_WEIGHTS)[keyof typeof NOTICE_WEIGHTS];
  /** Of its notices, unless the finder says otherwise of one. */
  readonly severity: NoticeSeverity;
  readonly remedy: NoticeRemedy;
  /** Beside its remedy, most pressing first. */
  readonly cautions: readonly CautionId[];
}

/** Pipe that is laid or fed anew joins the drinking water and goes into the ground. */
const NEW_PIPE = ['backflow', 'digging', 'codes'] as const;

/** In the order in which they are looked for, which orders notices of the same severity, weight and litres. */
export const NOTICE_KINDS: Readonly<Record<NoticeKind, NoticeKindRow>> = {
  'no-climate': {
    find: noClimate,
    weight: nothingKnown,
    severity: 'warning',
    remedy: 'fill-climate',
    cautions: [],
  },
  'no-line': { find: noLine, weight: cannotRun, severity: 'warning', remedy: 'lay-line', cautions: NEW_PIPE },
  'too-long': { find: tooLong, weight: cannotRun, severity: 'warning', remedy: 'split-run', cautions: ['codes'] },
  dry: { find: goingShort, weight: harmsPlants, severity: 'danger', remedy: 'water-more', cautions: ['promise'] },
  short: { find: goingShort, weight: harmsPlants, severity: 'note', remedy: 'water-more', cautions: ['promise'] },
  'never-enough': {
    find: neverEnough,
    weight: harmsPlants,
    severity: 'warning',
    remedy: 'change-line',
    cautions: ['promise'],
  },
  closed: { find: closed, weight: harmsPlants, severity: 'note', remedy: 'open-zone', cautions: ['promise'] },
  'crop-early': { find: cropEarly, weight: toCheck, severity: 'warning', remedy: 'check-days', cautions: [] },
  'crop-past': { find: cropPast, weight: toCheck, severity: 'warning', remedy: 'check-days', cautions: [] },
  'out-of-season': { find: outOfSeason, weight: toCheck, severity: 'warning', remedy: 'check-days', cautions: [] },
  over: { find: over, weight: wastesWater, severity: 'note', remedy: 'change-line', cautions: ['promise'] },
  'refill-weekly': {
    find: refillWeekly,
    weight: goodToKnow,
    severity: 'note',
    remedy: 'keep-instead',
    cautions: ['promise'],
  },
  'hand-set': { find: handSet, weight: goodToKnow, severity: 'note', remedy: 'use-computed', cautions: [] },
  'line-too-long': {
    find: linePressure,
    weight: cannotRun,
    severity: 'warning',
    remedy: 'shorten-run',
    cautions: NEW_PIPE,
  },
  'pressure-low': {
    find: linePressure,
    weight: cannotRun,
    severity: 'warning',
    remedy: 'more-pressure',
    cautions: ['backflow', 'codes'],
  },
  'flow-too-great': {
    find: flowTooGreat,
    weight: cannotRun,
    severity: 'warning',
    remedy: 'split-zone',
    cautions: NEW_PIPE,
  },
  'window-too-short': {
    find: windowTooShort,
    weight: cannotRun,
    severity: 'warning',
    remedy: 'more-days',
    cautions: ['codes'],
  },
  'tank-dry': {
    find: tankDry,
    weight: harmsPlants,
    severity: 'danger',
    remedy: 'larger-tank',
    cautions: ['tank', 'backflow', 'codes'],
  },
  'allowance-exceeded': {
    find: allowanceExceeded,
    weight: toCheck,
    severity: 'warning',
    remedy: 'use-less',
    cautions: ['codes'],
  },
  'flow-together': { find: flowTogether, weight: toCheck, severity: 'note', remedy: 'stagger', cautions: [] },
  'emitters-far-apart': {
    find: emittersFarApart,
    weight: wastesWater,
    severity: 'note',
    remedy: 'closer-emitters',
    cautions: ['promise'],
  },
  'line-downhill': {
    find: lineDownhill,
    weight: wastesWater,
    severity: 'warning',
    remedy: 'uphill-side',
    cautions: ['promise'],
  },
};
