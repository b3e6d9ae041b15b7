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
  const laid = planting.lines.filter(({ from, to }) => from <= day && (to === undefined || day <= to));
  const source = sources.filter(({ from }) => from <= day).at(-1);
  if (source?.pressureKpa === undefined) return laid.map((line) => ({ line, flowLph: line.flowLph }));
  const inletKpa = inletOf(planting, laid, source.pressureKpa);
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

/** A season asks for the same pressure day after day. */
const KNOWN = new WeakMap<GardenLine, Map<string, number>>();

function flowAt(line: GardenLine, planting: GardenPlanting, inletKpa: number): number {
  const known = KNOWN.get(line) ?? new Map<string, number>();
  KNOWN.set(line, known);
  const name = `${inletKpa} ${planting.areaM2} ${planting.plants}`;
  const flowLph = known.get(name) ?? lineFlowLph(line, planting, inletKpa);
  known.set(name, flowLph);
  // A trickle is none: its minutes would run into infinity.
  return flowLph < TRICKLE * line.flowLph ? 0 : flowLph;
}
