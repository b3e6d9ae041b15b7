import { requireNumber } from '../require-number.ts';
import { solveDeadEnd } from './dead-end.ts';
import { type Emitter, emitterLaw } from './emitter.ts';
import { flowVariation } from './flow-variation.ts';
import { lineUniformity } from './line-uniformity.ts';
import { type LoopFlow, solveLoop } from './loop.ts';
import { reachesOf } from './reaches.ts';

/** A tube with equal emitters at equal spacing, fed at one end (dead end) or at both (loop). */
export interface Lateral {
  readonly topology: 'dead-end' | 'loop';
  readonly outlets: number;
  readonly spacingM: number;
  /**
   * Tube from the inlet to the first outlet, and in a loop from the last outlet back to the feed. Left out: one
   * spacing.
   */
  readonly leadM?: number | undefined;
  readonly insideDiameterMm: number;
  /** Left out: `hazenWilliamsC` of the diameter. */
  readonly hazenWilliamsC?: number | undefined;
  readonly inletPressureKpa: number;
  /** Climb along the tube from the inlet, m per m of tube; negative runs downhill. Left out: level. */
  readonly riseMPerM?: number | undefined;
  /**
   * Course of a loop on a slope. `ring` (left out): climbs over its first half, comes back down to the point that it
   * left. `through`: climbs all the way to a second feed from the same main, where standing water has the less pressure
   * the higher it is.
   */
  readonly course?: 'ring' | 'through' | undefined;
  readonly emitter: Emitter;
  readonly emittersPerOutlet?: number | undefined;
}

export interface LateralProfile {
  /**
   * `full`: water comes out everywhere. `partly-dry`: the pressure is used up on the way and the rest is dry. `dry`:
   * nothing comes out. An outlet with less than a thousandth of the greatest flow counts as dry.
   */
  readonly state: 'full' | 'partly-dry' | 'dry';
  /** All tube from the inlet to the last outlet, in a loop on to the feed again. */
  readonly lengthM: number;
  /** Of each outlet from the inlet, along the tube. */
  readonly distancesM: Float64Array;
  /** At each outlet; 0 where no water arrives. */
  readonly pressuresKpa: Float64Array;
  /** Of all emitters at each outlet. */
  readonly flowsLph: Float64Array;
  /** In the tube before each outlet; in a loop one more, after the last. Negative: towards the inlet. */
  readonly reachFlowsLph: Float64Array;
  /** What the line takes from its supply: the sum of all outlets. */
  readonly inletFlowLph: number;
  /** At the last outlet of a dead end; in a loop where the two streams meet. */
  readonly endPressureKpa: number;
  readonly leastPressureKpa: number;
  /** See `flowVariation`. */
  readonly flowVariation: number;
  /** Distribution uniformity of the lowest quarter: see `lineUniformity`. */
  readonly uniformity: number;
  readonly wetOutlets: number;
  /** Distance of the point where the two streams of a loop meet; the line's end where it is a dead end. */
  readonly meetingM: number;
}

/**
 * Pressure and flow at every outlet of a lateral: friction by Hazen-Williams in each reach with the flow that remains
 * in it, the climb of the ground, and emitters that give what the pressure at their own place makes them give. Fittings
 * and the emitters' own obstruction of the tube are left out. It always has an answer: a line too long for its pressure
 * is dry from where the water gives out.
 *
 * @throws RangeError with plain words where a value is no number or cannot be
 */
export function lateral(line: Lateral): LateralProfile {
  const { topology, outlets, spacingM, leadM = spacingM, inletPressureKpa, emittersPerOutlet = 1 } = line;
  requireLateral(line);
  const oneEmitter = emitterLaw(line.emitter);
  const law = (pressureKpa: number) => emittersPerOutlet * oneEmitter(pressureKpa);
  const reaches = reachesOf(line);
  const distancesM = Float64Array.from({ length: outlets }, (_, outlet) => leadM + outlet * spacingM);
  const lastM = distancesM[outlets - 1] as number;
  if (topology === 'dead-end') {
    const flow = solveDeadEnd({ reaches, law, outlets, lastShare: 1, feedPressureKpa: inletPressureKpa });
    const endPressureKpa = flow.pressuresKpa[outlets - 1] as number;
    return profile({ ...flow, distancesM, lengthM: lastM, endPressureKpa, meetingM: lastM });
  }
  const flow = solveLoop({ reaches, law, outlets, feedPressureKpa: inletPressureKpa });
  const endPressureKpa = flow.pressuresKpa[flow.meeting.outlet] as number;
  const meetingM = meetingDistance(flow.meeting, distancesM, lastM + leadM);
  return profile({ ...flow, distancesM, lengthM: lastM + leadM, endPressureKpa, meetingM });
}

function requireLateral(line: Lateral): void {
  requireNumber('number of outlets', line.outlets, { atLeast: 1 });
  if (!Number.isInteger(line.outlets))
    throw new RangeError(`The number of outlets is ${line.outlets}; it must be whole.`);
  requireNumber('spacing of outlets (m)', line.spacingM, { above: 0 });
  requireNumber('tube before the first outlet (m)', line.leadM ?? line.spacingM, { atLeast: 0 });
  requireNumber('pressure at the inlet (kPa)', line.inletPressureKpa);
  requireNumber('rise of the line (m per m)', line.riseMPerM ?? 0);
  requireNumber('emitters at an outlet', line.emittersPerOutlet ?? 1, { above: 0 });
}

function meetingDistance(
  { outlet, nearShare }: LoopFlow['meeting'],
  distancesM: Float64Array,
  lengthM: number,
): number {
  const at = distancesM[outlet] as number;
  const NOTHING = 1e-6;
  if (nearShare < NOTHING) return (at + (distancesM[outlet - 1] ?? 0)) / 2;
  return nearShare > 1 - NOTHING ? (at + (distancesM[outlet + 1] ?? lengthM)) / 2 : at;
}

type Solved = Pick<
  LateralProfile,
  'pressuresKpa' | 'flowsLph' | 'reachFlowsLph' | 'distancesM' | 'lengthM' | 'endPressureKpa' | 'meetingM'
>;

function profile(solved: Solved): LateralProfile {
  const { pressuresKpa, flowsLph } = solved;
  const greatest = flowsLph.reduce((most, flow) => Math.max(most, flow), 0);
  const wetOutlets = greatest > 0 ? flowsLph.filter((flow) => flow >= greatest / 1000).length : 0;
  return {
    ...solved,
    state: stateOf(wetOutlets, pressuresKpa.length),
    inletFlowLph: flowsLph.reduce((sum, flow) => sum + flow, 0),
    leastPressureKpa: pressuresKpa.reduce((least, pressure) => Math.min(least, pressure), Number.POSITIVE_INFINITY),
    flowVariation: flowVariation(flowsLph),
    uniformity: lineUniformity(flowsLph),
    wetOutlets,
  };
}

function stateOf(wet: number, outlets: number): LateralProfile['state'] {
  if (wet === 0) return 'dry';
  return wet < outlets ? 'partly-dry' : 'full';
}
