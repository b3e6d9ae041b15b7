import type { LateralProfile } from './lateral.ts';

/** What a line breaks: an emitter below its least pressure (or dry), or plain emitters that differ too much. */
export type LineLimit = 'least-pressure' | 'flow-variation';

export interface LineBounds {
  readonly leastPressureKpa: number;
  /** Most that emitters may differ, 0..1. */
  readonly mostFlowVariation: number;
}

/** What a solved line breaks of its bounds, if anything; to meet a bound exactly is within it. */
export function lineLimit(profile: LateralProfile, bounds: LineBounds): LineLimit | undefined {
  // The solver's own rounding must not decide at the border.
  const ROUNDING = 1e-9;
  if (profile.wetOutlets < profile.pressuresKpa.length) return 'least-pressure';
  if (profile.leastPressureKpa < bounds.leastPressureKpa * (1 - ROUNDING)) return 'least-pressure';
  return profile.flowVariation > bounds.mostFlowVariation + ROUNDING ? 'flow-variation' : undefined;
}
