import type { EmitterLaw } from './emitter.ts';
import { frictionLossKpa } from './friction.ts';
import { increasingRoot } from './increasing-root.ts';
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

/**
 * Pressure, kPa, below which an outlet at the end of a line counts as dry: so small that its flow is nothing for any
 * exponent.
 */
const DRY_KPA = 1e-250;

/** The feed's pressure is met to this share of it. */
const CLOSENESS = 1e-12;

/**
 * Pressures and flows along a line fed at one end. From a guessed pressure at its last outlet the line is followed up
 * to the feed, reach by reach, each with the friction of the flow that remains in it; the guess is mended until the
 * feed's own pressure is met. The feed's pressure rises with the guess, at least one for one, so that there is one
 * answer and it is always found. Where even a last outlet that barely drips would ask for more than the feed has, water
 * does not come that far: those outlets are dry, and the line is solved without them.
 */
export function solveDeadEnd(input: DeadEndInput): DeadEnd {
  const { outlets, feedPressureKpa } = input;
  const along: DeadEnd = {
    pressuresKpa: new Float64Array(outlets),
    flowsLph: new Float64Array(outlets),
    reachFlowsLph: new Float64Array(outlets),
  };
  if (!(feedPressureKpa > DRY_KPA)) return along;
  const wet = wetOutlets(input);
  if (wet === 0) return along;
  const high = stillPressure(input, wet);
  // Friction only falls as the last pressure falls, so the answer is no lower than this.
  const low = Math.max(DRY_KPA, high - (feedPressure(input, wet, high) - feedPressureKpa));
  const logOfLast = increasingRoot({
    of: (log) => feedPressure(input, wet, Math.exp(log)) - feedPressureKpa,
    low: Math.log(Math.min(low, high)),
    high: Math.log(high),
    tolerance: CLOSENESS * feedPressureKpa,
  });
  feedPressure(input, wet, Math.exp(logOfLast), along);
  for (let outlet = 0; outlet < outlets; outlet += 1) {
    if ((along.pressuresKpa[outlet] as number) < 0) along.pressuresKpa[outlet] = 0;
  }
  return along;
}

/** Pressure at outlet number `count` if nothing flowed. */
function stillPressure({ reaches, feedPressureKpa }: DeadEndInput, count: number): number {
  let pressure = feedPressureKpa;
  for (let reach = 0; reach < count; reach += 1) pressure -= reaches.climbs[reach] as number;
  return pressure;
}

/** How many outlets, counted from the feed, water reaches. */
function wetOutlets(input: DeadEndInput): number {
  const arrives = (count: number) =>
    stillPressure(input, count) > DRY_KPA && feedPressure(input, count, DRY_KPA) <= input.feedPressureKpa;
  if (arrives(input.outlets)) return input.outlets;
  let wet = 0;
  let dry = input.outlets;
  while (dry - wet > 1) {
    const middle = Math.floor((wet + dry) / 2);
    if (arrives(middle)) wet = middle;
    else dry = middle;
  }
  return wet;
}

/**
 * The pressure that the feed must have for the last of `count` outlets to have `lastPressureKpa`; fills `along` where
 * it is given.
 */
function feedPressure(input: DeadEndInput, count: number, lastPressureKpa: number, along?: DeadEnd): number {
  const { reaches, law, outlets, lastShare } = input;
  let pressure = lastPressureKpa;
  let carried = 0;
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
  }
  return pressure;
}
