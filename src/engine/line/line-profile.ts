import type { GardenLine, GardenPlanting } from '../garden.ts';
import { FLOW_VARIATION_LIMIT } from './flow-variation.ts';
import { type Lateral, type LateralProfile, lateral } from './lateral.ts';
import { type LineLimit, lineLimit } from './line-limit.ts';
import { type LineGround, lineRun } from './line-run.ts';
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

/** Whether the shortest line of the kind would work: that of one outlet. */
export const firstEmitterWorks = remembered((line, planting, inletPressureKpa): boolean => {
  const run = lineRun(line, planting)?.lateral;
  if (run === undefined) return false;
  const first = { ...run, inletPressureKpa, outlets: 1 };
  return lineLimit(lateral(first), boundsOf(first)) === undefined;
});

/** A line that gives less than this share of its nominal flow gives none. */
const NOTHING = 1e-6;

/** What a line takes at an inlet pressure, all its runs together, L/h: to the last digit its nominal flow where that surely is there. */
export function lineFlowLph(line: GardenLine, ground: LineGround, inletPressureKpa: number): number {
  const run = inletPressureKpa > 0 ? solvableRun(line, ground, inletPressureKpa) : undefined;
  if (run === undefined) return 0;
  if (surelyFull(run)) return line.flowLph;
  const flowLph = (lineRun(line, ground)?.runs ?? 0) * lateral(run).inletFlowLph;
  return flowLph < NOTHING * line.flowLph ? 0 : flowLph;
}

/** Whether every emitter surely has its full flow, without the line being solved. */
export function isSurelyFull(line: GardenLine, planting: GardenPlanting, inletPressureKpa: number): boolean {
  const run = solvableRun(line, planting, inletPressureKpa);
  return run !== undefined && surelyFull(run);
}

function boundsOf({ emitter }: Lateral) {
  const leastPressureKpa = emitter.kind === 'compensating' ? emitter.leastPressureKpa : 0;
  return { leastPressureKpa, mostFlowVariation: FLOW_VARIATION_LIMIT };
}

function solvableRun(line: GardenLine, planting: LineGround, inletPressureKpa: number): Lateral | undefined {
  const run = lineRun(line, planting)?.lateral;
  if (run === undefined || run.outlets <= MOST_OUTLETS) return run && { ...run, inletPressureKpa };
  const outlets = Math.ceil(run.outlets / Math.ceil(run.outlets / MOST_OUTLETS));
  const inGroup = run.outlets / outlets;
  return {
    ...run,
    inletPressureKpa,
    outlets,
    spacingM: run.spacingM * inGroup,
    leadM: run.leadM ?? run.spacingM,
    emittersPerOutlet: (run.emittersPerOutlet ?? 1) * inGroup,
  };
}
