/** For every kind of notice that changes of the plan may mend: which changes are tried, and how great its problem is. */
import type { NoticeFigures, OverFigures } from '../../explain/notices/notice.ts';
import type { Shortage } from '../../explain/notices/shortage.ts';
import { allowanceExceededCandidates } from './kinds/allowance-exceeded.ts';
import { emittersFarApartCandidates } from './kinds/emitters-far-apart.ts';
import { flowTogetherCandidates } from './kinds/flow-together.ts';
import { flowTooGreatCandidates } from './kinds/flow-too-great.ts';
import { furtherOverCandidates } from './kinds/further-over.ts';
import { lineDownhillCandidates } from './kinds/line-downhill.ts';
import { lineTooLongCandidates } from './kinds/line-too-long.ts';
import { tankDryCandidates } from './kinds/tank-dry.ts';
import { windowTooShortCandidates } from './kinds/window-too-short.ts';
import {
  beyondTimerCandidates,
  fewDaysCandidates,
  leftBehindCandidates,
  overCandidates,
  potDriesOutCandidates,
  stepTooLongCandidates,
  tooLongCandidates,
  wettedTooLittleCandidates,
} from './kinds/zone-kinds.ts';
import type { RemediedKind } from './remedied-kinds.ts';
import type { NoticeInPlan, RemedyCandidate, RemedyCandidates } from './remedy.ts';
import { type LitresOf, lackingLitres, unmetLitres, wastedLitres } from './trouble.ts';

export interface NoticeRemediesRow<Kind extends RemediedKind> {
  readonly candidates: (of: NoticeInPlan<Kind>) => RemedyCandidates;
  /** Tried where none of those mends it without harm; `tried`: the best of each change that helps. */
  readonly further?: (of: NoticeInPlan<Kind>, tried: readonly RemedyCandidate[]) => RemedyCandidates;
  /** In a measure of the kind; above 0, and grows with the problem. */
  readonly problem: (figures: NoticeFigures[Kind]) => number;
  /** Of a problem of plantings, whose cause may change and leave it as great: the same measure over all weeks of one. */
  readonly ofPlanting?: LitresOf;
}

const LACKING = {
  problem: ({ unmetLitres: unmet, missingLitres }: Shortage) => unmet + missingLitres,
  ofPlanting: lackingLitres,
} as const;

export const NOTICE_REMEDIES: { readonly [Kind in RemediedKind]: NoticeRemediesRow<Kind> } = {
  'too-long': {
    candidates: tooLongCandidates,
    problem: ({ minutesPerDay, windowMinutes }) => minutesPerDay - windowMinutes,
  },
  'beyond-timer': { candidates: beyondTimerCandidates, ...LACKING },
  'shut-off-short': { candidates: leftBehindCandidates, ...LACKING },
  'left-behind': { candidates: leftBehindCandidates, ...LACKING },
  'few-days': {
    candidates: fewDaysCandidates,
    problem: ({ unmetLitres: unmet }) => unmet,
    ofPlanting: unmetLitres,
  },
  short: { candidates: leftBehindCandidates, ...LACKING },
  over: {
    candidates: overCandidates,
    further: furtherOverCandidates,
    problem: ({ drainedLitres: litres }: OverFigures) => litres,
    ofPlanting: wastedLitres,
  },
  'step-too-long': {
    candidates: stepTooLongCandidates,
    problem: ({ timerStepMinutes, longestCycleMinutes }) => timerStepMinutes / longestCycleMinutes - 1,
  },
  'line-too-long': { candidates: lineTooLongCandidates, problem: ({ beyondBounds }) => beyondBounds },
  'flow-too-fast': { candidates: lineTooLongCandidates, problem: ({ velocityMs, limitMs }) => velocityMs - limitMs },
  'flow-too-great': { candidates: flowTooGreatCandidates, problem: ({ excessLpm }) => excessLpm },
  'flow-together': { candidates: flowTogetherCandidates, problem: ({ days }) => days },
  'window-too-short': { candidates: windowTooShortCandidates, problem: ({ minutesOverInAll }) => minutesOverInAll },
  'allowance-exceeded': { candidates: allowanceExceededCandidates, problem: ({ overLitres }) => overLitres },
  'tank-dry': { candidates: tankDryCandidates, problem: ({ mainsLitres }) => mainsLitres },
  'emitters-far-apart': {
    candidates: emittersFarApartCandidates,
    problem: ({ spacingM, widestSpacingM }) => spacingM - widestSpacingM,
  },
  'pot-dries-out': {
    candidates: potDriesOutCandidates,
    problem: ({ usedLitres, heldLitres }) => usedLitres - heldLitres,
  },
  'wetted-too-little': {
    candidates: wettedTooLittleCandidates,
    problem: ({ wantedShare, wettedShare }) => wantedShare - wettedShare,
  },
  'line-downhill': { candidates: lineDownhillCandidates, problem: () => 1 },
};
