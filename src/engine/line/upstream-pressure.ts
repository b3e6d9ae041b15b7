import type { EmitterLaw } from './emitter.ts';
import { frictionLossKpa } from './friction.ts';
import type { Reaches } from './reaches.ts';

export interface DeadEndInput {
  readonly reaches: Reaches;
  readonly law: EmitterLaw;
  readonly outlets: number;
  /**
   * Share of the last outlet's flow that comes along this line, 0..1; below 1 where a loop's other arm brings the rest.
   */
  readonly lastShare: number;
  readonly feedPressureKpa: number;
}

export interface DeadEnd {
  /** At each outlet; 0 where no water arrives. */
  readonly pressuresKpa: Float64Array;
  /** What each outlet takes from this line. */
  readonly flowsLph: Float64Array;
  /** In the tube before each outlet. */
  readonly reachFlowsLph: Float64Array;
}

/** The part of a line from its feed to an outlet. */
export interface FedPart {
  /** Its outlets, counted from the feed. */
  readonly count: number;
  /** Flow that goes on behind its last outlet, L/h. */
  readonly onLph: number;
  /** More than any pressure in it: a guess that comes to more is too great, and is followed no further. */
  readonly mostKpa: number;
}

/** Of each outlet, in place of one that no water reaches. */
export function noFlow(outlets: number): DeadEnd {
  return {
    pressuresKpa: new Float64Array(outlets),
    flowsLph: new Float64Array(outlets),
    reachFlowsLph: new Float64Array(outlets),
  };
}

/**
 * The pressure that the feed must have for the last outlet of a part to have `lastPressureKpa`; fills `along` where it is given, up to
 * where a pressure is beyond the most.
 */
export function upstreamPressure(
  { reaches, law, outlets, lastShare }: DeadEndInput,
  { count, onLph, mostKpa }: FedPart,
  lastPressureKpa: number,
  along?: DeadEnd,
): number {
  let pressure = lastPressureKpa;
  let carried = onLph;
  for (let outlet = count - 1; outlet >= 0; outlet -= 1) {
    const taken = law(pressure) * (outlet === outlets - 1 ? lastShare : 1);
    carried += taken;
    if (along) {
      along.pressuresKpa[outlet] = pressure;
      along.flowsLph[outlet] = taken;
      along.reachFlowsLph[outlet] = carried;
    }
    const frictionKpa = frictionLossKpa(reaches.frictions[outlet] as number, carried);
    pressure += frictionKpa + (reaches.climbs[outlet] as number);
    if (pressure > mostKpa) break;
  }
  return pressure;
}
