import type { GardenLine, GardenPlanting } from '../garden.ts';
import { FLOW_VARIATION_LIMIT } from './flow-variation.ts';
import { type Lateral, type LateralProfile, lateral } from './lateral.ts';
import { type LineLimit, lineLimit } from './line-limit.ts';
import { lineRun } from './line-run.ts';
import { type LongestRun, longestRun } from './longest-run.ts';
import { remembered } from './remembered.ts';
import { surelyFull } from './surely-full.ts';

/** More outlets than this on one run are solved in equal groups of neighbours: far beyond any run that works. */
const MOST_OUTLETS = 2000;

/** One run of a planting's line solved at an inlet pressure, kPa; undefined where it has no emitter. */
export const lineProfile = remembered((line, planting, inletPressureKpa): LateralProfile | undefined => {
  const run = solvableRun(line, planting, inletPressureKpa);
  return run && lateral(run);
});

/** What a planting's line breaks at an inlet pressure, kPa; undefined where all its emitters are in bounds. */
export const lineFault = remembered((line, planting, inletPressureKpa): LineLimit | undefined => {
  const run = solvableRun(line, planting, inletPressureKpa);
  if (run === undefined || surelyFull(run)) return undefined;
  const profile = lineProfile(line, planting, inletPressureKpa);
  return profile && lineLimit(profile, boundsOf(run));
});

/**
 * The longest run that works with the spacing, flow, bore and slope of a planting's line, at an inlet pressure, kPa;
 * undefined where it has no emitter. Of a line at fault it is a shorter one, even downhill, where a longer one may work.
 */
export const longestLine = remembered((line, planting, inletPressureKpa): LongestRun | undefined => {
  const run = lineRun(line, planting);
  if (run === undefined) return undefined;
  const { outlets, ...rest } = run.lateral;
  const longest = longestRun({ ...rest, inletPressureKpa, mostOutlets: MOST_OUTLETS });
  const isShorter = longest.outlets < outlets;
  if (isShorter || outlets === 1 || lineFault(line, planting, inletPressureKpa) === undefined) return longest;
  return longestRun({ ...rest, inletPressureKpa, mostOutlets: outlets - 1 });
});

/** Whether every emitter surely has its full flow, without the line being solved. */
export function isSurelyFull(line: GardenLine, planting: GardenPlanting, inletPressureKpa: number): boolean {
  const run = solvableRun(line, planting, inletPressureKpa);
  return run !== undefined && surelyFull(run);
}

function boundsOf({ emitter }: Lateral) {
  const leastPressureKpa = emitter.kind === 'compensating' ? emitter.leastPressureKpa : 0;
  return { leastPressureKpa, mostFlowVariation: FLOW_VARIATION_LIMIT };
}

function solvableRun(line: GardenLine, planting: GardenPlanting, inletPressureKpa: number): Lateral | undefined {
  const run = lineRun(line, planting)?.lateral;
  if (run === undefined || run.outlets <= MOST_OUTLETS) return run && { ...run, inletPressureKpa };
  const outlets = Math.ceil(run.outlets / Math.ceil(run.outlets / MOST_OUTLETS));
  const inGroup = run.outlets / outlets;
  return {
    ...run,
    inletPressureKpa,
    outlets,
    spacingM: run.spacingM * inGroup,
    emittersPerOutlet: (run.emittersPerOutlet ?? 1) * inGroup,
  };
}
