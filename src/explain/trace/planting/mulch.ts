/** What mulch leaves of a planting's coefficients. */
import type { PlantCoefficient } from '../../../engine/garden.ts';
import { PLASTIC_MULCH_MEAN } from '../../../engine/plants/mulch.data.ts';
import type { Mulch } from '../../../engine/plants/mulch.ts';
import type { KcStage } from '../step-kinds.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { factor, input, share } from '../trace-value.ts';
import type { PlantingCell } from './planting-cell.ts';

const ORGANIC = ['FAO-56 ch. 10, p. 197', { id: 'choice' }] as const;
const PLASTIC = ['FAO-56 ch. 10, Table 25 (p. 196)', { id: 'choice' }] as const;

export function mulchSteps({ planting: { mulch, coefficient } }: PlantingCell): readonly TraceStep[] {
  if (mulch === undefined) return [];
  return coefficient.kind === 'landscape'
    ? landscapeSteps(mulch, coefficient.mulchFactor ?? 1)
    : cropSteps(mulch, coefficient);
}

function landscapeSteps(mulch: Mulch, left: number): readonly TraceStep[] {
  return [
    {
      id: 'mulch-factor',
      variant: mulch.kind,
      source: mulch.kind === 'organic' ? ORGANIC : PLASTIC,
      inputs: [mulch.kind === 'organic' ? coverInput(mulch) : lessInput(PLASTIC_MULCH_MEAN.kcLess)],
      result: factor(left),
    },
  ];
}

function cropSteps(
  mulch: Mulch,
  { bareKc, kcInitial, kcMid, kcEnd }: Extract<PlantCoefficient, { kind: 'crop' }>,
): readonly TraceStep[] {
  if (bareKc === undefined) return [];
  const [initial, mid, end] = bareKc;
  const less = 1 - kcMid / mid;
  return [
    stageStep(mulch, 'initial', { bare: initial, mulched: kcInitial, less }),
    stageStep(mulch, 'mid', { bare: mid, mulched: kcMid, less }),
    stageStep(mulch, 'end', { bare: end, mulched: kcEnd, less }),
  ];
}

function stageStep(
  mulch: Mulch,
  stage: KcStage,
  { bare, mulched, less }: { readonly bare: number; readonly mulched: number; readonly less: number },
): TraceStep {
  const isFirst = stage === 'initial';
  const of = { id: 'mulched-kc', stage, result: factor(mulched) } as const;
  const bareKc = input('kc-bare', factor(bare));
  if (mulch.kind === 'organic') {
    return {
      ...of,
      variant: isFirst ? 'organic-first' : 'organic',
      source: ORGANIC,
      inputs: [bareKc, coverInput(mulch)],
    };
  }
  return {
    ...of,
    variant: isFirst ? 'plastic-first' : 'plastic',
    source: PLASTIC,
    inputs: isFirst ? [bareKc] : [bareKc, lessInput(less)],
  };
}

function coverInput({ cover }: Extract<Mulch, { kind: 'organic' }>): TraceValue {
  return input('mulch-cover', share(cover));
}

function lessInput(less: number): TraceValue {
  return input('mulch-less', share(less));
}
