import { solveDeadEnd } from './dead-end.ts';
import type { EmitterLaw } from './emitter.ts';
import { increasingRoot } from './increasing-root.ts';
import type { Reaches } from './reaches.ts';
import type { DeadEnd } from './upstream-pressure.ts';

export interface LoopInput {
  /** One more than there are outlets: the last leads from the last outlet to the far feed. */
  readonly reaches: Reaches;
  readonly law: EmitterLaw;
  readonly outlets: number;
  /** At the near feed; the far one belongs to the same main and has as much, less what the line climbs between them. */
  readonly feedPressureKpa: number;
}

export interface LoopFlow {
  readonly pressuresKpa: Float64Array;
  readonly flowsLph: Float64Array;
  /** One more than there are outlets; positive away from the near feed, negative where water comes from the far one. */
  readonly reachFlowsLph: Float64Array;
  /** Index of the outlet where the two streams meet, and the share of its flow from the near side, 0..1. */
  readonly meeting: { readonly outlet: number; readonly nearShare: number };
}

interface Arms {
  readonly near: DeadEnd;
  readonly far: DeadEnd;
}

/**
 * Pressures and flows in a line fed at both ends. Somewhere the two streams meet; up to there each arm is a dead end of
 * its own. The meeting point is moved along until both arms bring the same pressure to it: the more the near arm has to
 * feed, the less pressure it brings, so there is one answer. Where the pressure is used up before the streams meet,
 * each arm feeds what it reaches.
 */
export function solveLoop(input: LoopInput): LoopFlow {
  // A ring meets itself half way round.
  const half = Math.floor(input.outlets / 2);
  const halfShare = input.outlets % 2 === 0 ? 0 : 0.5;
  const halves = armsOf(input, half, halfShare);
  if (Math.abs(leadOf(halves)) <= tolerance(input)) return joined(halves, half, halfShare);
  let meeting = 0;
  let past = input.outlets;
  while (past - meeting > 1) {
    const middle = Math.floor((meeting + past) / 2);
    if (lead(input, middle, 0) >= 0) meeting = middle;
    else past = middle;
  }
  const nearShare = nearShareAt(input, meeting);
  return joined(armsOf(input, meeting, nearShare), meeting, nearShare);
}

/** A difference in pressure, kPa, that is rounding: a line that falls runs with a feed of far less than it gains on the way. */
const ROUNDING_KPA = 1e-10;

function tolerance({ feedPressureKpa }: LoopInput): number {
  return ROUNDING_KPA * (1 + Math.abs(feedPressureKpa));
}

function nearShareAt(input: LoopInput, meeting: number): number {
  if (lead(input, meeting, 1) >= 0) return 1;
  if (lead(input, meeting, 0) <= 0) return 0;
  return increasingRoot({
    of: (share) => -lead(input, meeting, share),
    low: 0,
    high: 1,
    tolerance: tolerance(input),
  });
}

/** Both arms, with the meeting at an outlet that takes `nearShare` of its flow from the near one. */
function armsOf({ reaches, law, outlets, feedPressureKpa }: LoopInput, meeting: number, nearShare: number): Arms {
  const climbKpa = reaches.climbs.reduce((sum, climb) => sum + climb, 0);
  // A ring comes back to the very height that it left.
  const farPressureKpa = feedPressureKpa - (Math.abs(climbKpa) < ROUNDING_KPA ? 0 : climbKpa);
  const farReaches: Reaches = {
    frictions: reaches.frictions.toReversed(),
    climbs: reaches.climbs.toReversed().map((climb) => -climb),
  };
  return {
    near: solveDeadEnd({ reaches, law, outlets: meeting + 1, lastShare: nearShare, feedPressureKpa }),
    far: solveDeadEnd({
      reaches: farReaches,
      law,
      outlets: outlets - meeting,
      lastShare: 1 - nearShare,
      feedPressureKpa: farPressureKpa,
    }),
  };
}

function lead(input: LoopInput, meeting: number, nearShare: number): number {
  return leadOf(armsOf(input, meeting, nearShare));
}

/** By how much, kPa, the near arm brings more pressure to the meeting than the far arm. */
function leadOf({ near, far }: Arms): number {
  return (near.pressuresKpa.at(-1) as number) - (far.pressuresKpa.at(-1) as number);
}

function joined({ near, far }: Arms, meeting: number, nearShare: number): LoopFlow {
  // The outlet at the meeting is in both.
  const outlets = near.pressuresKpa.length + far.pressuresKpa.length - 1;
  const pressuresKpa = new Float64Array(outlets);
  const flowsLph = new Float64Array(outlets);
  const reachFlowsLph = new Float64Array(outlets + 1);
  pressuresKpa.set(near.pressuresKpa);
  flowsLph.set(near.flowsLph);
  reachFlowsLph.set(near.reachFlowsLph);
  for (let fromFar = 0; fromFar < outlets - meeting; fromFar += 1) {
    const outlet = outlets - 1 - fromFar;
    pressuresKpa[outlet] = Math.max(pressuresKpa[outlet] as number, far.pressuresKpa[fromFar] as number);
    flowsLph[outlet] = (flowsLph[outlet] as number) + (far.flowsLph[fromFar] as number);
    reachFlowsLph[outlet + 1] = -(far.reachFlowsLph[fromFar] as number);
  }
  return { pressuresKpa, flowsLph, reachFlowsLph, meeting: { outlet: meeting, nearShare } };
}
