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
  const inletKpa = inletOf(planting, laid, sourceKpa);
  return laid.map((line) => ({ line, flowLph: flowAt(line, planting, inletKpa) }));
}

/** Behind the solid tube; below 0 where the pressure does not lift water to its end. */
function inletOf(planting: GardenPlanting, laid: readonly GardenLine[], sourceKpa: number): number {
  const tubes = laid.flatMap(({ kind, lengthM, insideDiameterMm, riseMPerM }) => {
    return kind === 'solid' && lengthM !== undefined ? [{ lengthM, boreMm: insideDiameterMm, riseMPerM }] : [];
  });
  if (tubes.length === 0) return sourceKpa;
  const frictions = tubes.map(frictionOf);
  const climbKpa = tubes.reduce((sum, { lengthM, riseMPerM }) => sum + lengthM * riseMPerM * KPA_PER_METRE, 0);
  const stillKpa = sourceKpa - climbKpa;
  if (stillKpa <= 0) return stillKpa;
  const excess = (inletKpa: number) => {
    const flowLph = laid.reduce((sum, line) => sum + flowAt(line, planting, inletKpa), 0);
    return inletKpa + frictions.reduce((sum, lossKpa) => sum + lossKpa(flowLph), 0) - stillKpa;
  };
  return rootNear(0, stillKpa, excess);
}

/** Share of what is printed on a line. */
const TRICKLE = 1e-6;

function flowAt(line: GardenLine, planting: GardenPlanting, inletKpa: number): number {
  const flowLph = lineFlowLph(line, planting, inletKpa);
  // A trickle is none: its minutes would run into infinity.
  return flowLph < TRICKLE * line.flowLph ? 0 : flowLph;
}
