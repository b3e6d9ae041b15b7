/**
 * What a planting's lines give on a day. They are fed side by side, each from the same inlet; in front of them lies the solid tube of the day,
 * which loses pressure to all that flows through it and to its climb.
 */
import type { GardenLine, GardenPlanting, GardenSupply } from '../../src/engine/garden.ts';
import { lineFlowLph } from './line-run.ts';
import { rootNear } from './numbers.ts';
import { frictionOf, KPA_PER_METRE } from './pipe.ts';

export interface LineFlow {
  readonly line: GardenLine;
  readonly flowLph: number;
}

/** Of the lines that lie on the day. Without a known pressure each gives what is printed on its emitters. */
export function flowsOn(planting: GardenPlanting, { sources }: GardenSupply, day: number): readonly LineFlow[] {
  const lies = planting.lines.map(({ from, to }) => from <= day && (to === undefined || day <= to));
  const pressureKpa = sources.filter(({ from }) => from <= day).at(-1)?.pressureKpa;
  const known = SOLVED.get(planting) ?? new Map<string, readonly LineFlow[]>();
  SOLVED.set(planting, known);
  const name = `${lies} ${pressureKpa}`;
  const laid = planting.lines.filter((_, place) => lies[place]);
  const flows = known.get(name) ?? flowsAt(planting, laid, pressureKpa);
  known.set(name, flows);
  return flows;
}

/** A season asks for the same lines at the same pressure day after day. */
const SOLVED = new WeakMap<GardenPlanting, Map<string, readonly LineFlow[]>>();

function flowsAt(
  planting: GardenPlanting,
  laid: readonly GardenLine[],
  sourceKpa: number | undefined,
): readonly LineFlow[] {
  if (sourceKpa === undefined) return laid.map((line) => ({ line, flowLph: line.flowLph }));
  const flowsFrom = (inletKpa: number) => laid.map((line) => flowAt(line, planting, inletKpa));
  const tubes = tubesOf(laid);
  const stillKpa = sourceKpa - tubes.reduce((sum, { climbKpa }) => sum + climbKpa, 0);
  const lostAt = (flowLph: number) => tubes.reduce((sum, { lossKpa }) => sum + lossKpa(flowLph), 0);
  const flows = behindTubes(stillKpa, lostAt, flowsFrom);
  return laid.map((line, place) => ({ line, flowLph: flows[place] ?? 0 }));
}

/** The solid tubes, one behind the other. */
function tubesOf(laid: readonly GardenLine[]) {
  return laid.flatMap(({ kind, lengthM, insideDiameterMm, riseMPerM }) => {
    if (kind !== 'solid' || lengthM === undefined) return [];
    const lossKpa = frictionOf({ lengthM, boreMm: insideDiameterMm });
    return [{ lossKpa, climbKpa: lengthM * riseMPerM * KPA_PER_METRE }];
  });
}

/** Next to no pressure: emitters at the inlet's height give nothing, those further down a slope run. */
const SLIGHT_KPA = 1e-100;

/**
 * The pressure behind the tubes is what is left of the still one after what they lose to all that flows. It is never below that of the air, which
 * comes in by the emitters (common practice, no source). So the tubes never carry more than what loses all of it: where lines that fall would
 * drain faster than that, all of that comes, and they have it as they would have taken it.
 */
function behindTubes(
  stillKpa: number,
  lostAt: (flowLph: number) => number,
  flowsFrom: (inletKpa: number) => readonly number[],
): readonly number[] {
  if (stillKpa <= 0) return flowsFrom(stillKpa);
  const drained = flowsFrom(SLIGHT_KPA);
  const drainedLph = sumOf(drained);
  if (lostAt(drainedLph) > stillKpa) {
    const carriedLph = rootNear(0, drainedLph, (flowLph) => lostAt(flowLph) - stillKpa);
    return drained.map((flowLph) => (flowLph * carriedLph) / drainedLph);
  }
  return flowsFrom(rootNear(0, stillKpa, (kpa) => kpa + lostAt(sumOf(flowsFrom(kpa))) - stillKpa));
}

function sumOf(flows: readonly number[]): number {
  return flows.reduce((sum, flowLph) => sum + flowLph, 0);
}

/** Share of what is printed on a line. */
const TRICKLE = 1e-6;

function flowAt(line: GardenLine, planting: GardenPlanting, inletKpa: number): number {
  const flowLph = lineFlowLph(line, planting, inletKpa);
  // A trickle is none: its minutes would run into infinity.
  return flowLph < TRICKLE * line.flowLph ? 0 : flowLph;
}
