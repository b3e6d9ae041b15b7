/**
 * A tube with outlets, fed at one end: reckoned from its far end. A pressure there makes the last outlet give its flow; each reach in front
 * of it adds its friction and its climb, each outlet its flow. The pressure at the far end is the one that leads to what the feed has.
 * Where a fall would make less than no pressure at an outlet, it gives nothing and the water goes on.
 */
import { rootBetween } from './numbers.ts';

/** L/h at a pressure in kPa; 0 without any. */
export type Law = (kpa: number) => number;

/** The tube in front of an outlet, and the outlet. */
export interface Reach {
  /** Friction, kPa, while it carries so many L/h. */
  readonly lossKpa: (flowLph: number) => number;
  /** Of the outlet above where the reach begins. */
  readonly climbKpa: number;
  readonly law: Law;
}

export interface Place {
  readonly kpa: number;
  /** L/h that come to it: its own and those of all outlets behind it. */
  readonly flowLph: number;
}

/** Less than this and no water comes, kPa: its root is still a number of its own. */
const LEAST_KPA = 1e-290;
/** Two pressures nearer than this, as a share of them, are the same. */
const ALIKE = 1e-9;

/**
 * The feed first, then each outlet in order. Those that water does not reach are left out. Downhill the least pressure can lie on the way,
 * so near to none that all digits of the pressure at the end do not tell it: then what lies before it is sought by itself, from there on.
 */
export function deadEnd(reaches: readonly Reach[], feedKpa: number): readonly Place[] {
  let before = feedKpa > 0 ? wetReaches(reaches, feedKpa) : [];
  let found: readonly Place[] = [];
  while (before.length > 0) {
    const onLph = found[0]?.flowLph ?? 0;
    const mostKpa = before.reduce((kpa, { climbKpa }) => kpa + Math.abs(climbKpa), feedKpa);
    const places = (lastKpa: number) => placesFor(before, lastKpa, onLph);
    const [low, high] = rootBetween(-mostKpa, mostKpa, (kpa) => feedFor(before, kpa, onLph, mostKpa) - feedKpa);
    const [below, above] = [places(low), places(high)];
    const unlike = above.findLastIndex(({ kpa }, place) => !isAlike(kpa, below[place]?.kpa ?? 0));
    // The last outlet's two are next to each other; what is unlike lies before it.
    if (unlike <= 0) return [...above, ...found];
    found = [...above.slice(unlike + 1), ...found];
    before = before.slice(0, unlike);
  }
  return [{ kpa: feedKpa, flowLph: found[0]?.flowLph ?? 0 }, ...found];
}

/** L/h that it takes from its feed. */
export function deadEndFlow(reaches: readonly Reach[], feedKpa: number): number {
  return deadEnd(reaches, feedKpa)[0]?.flowLph ?? 0;
}

/**
 * What the feed must have where the last outlet has this pressure and so much flows on behind it; Infinity where the pressure on the way is
 * above `mostKpa`, from which no fall leads down to the feed's.
 */
function feedFor(
  reaches: readonly Reach[],
  lastKpa: number,
  onLph: number,
  mostKpa = Number.POSITIVE_INFINITY,
  seen?: (place: Place) => void,
): number {
  let kpa = lastKpa;
  let flowLph = onLph;
  for (let place = reaches.length - 1; place >= 0; place--) {
    if (kpa > mostKpa) return Number.POSITIVE_INFINITY;
    const { law, lossKpa, climbKpa } = reaches[place] as Reach;
    flowLph += law(kpa);
    seen?.({ kpa, flowLph });
    kpa += lossKpa(flowLph) + climbKpa;
  }
  seen?.({ kpa, flowLph });
  return kpa;
}

function placesFor(reaches: readonly Reach[], lastKpa: number, onLph: number): readonly Place[] {
  const places: Place[] = [];
  feedFor(reaches, lastKpa, onLph, undefined, (place) => places.push(place));
  return places.reverse();
}

function isAlike(one: number, other: number): boolean {
  return Math.abs(one - other) <= ALIKE * Math.max(Math.abs(one), Math.abs(other));
}

/** The outlets that water reaches: as many as the feed's pressure lifts it to. */
function wetReaches(reaches: readonly Reach[], feedKpa: number): readonly Reach[] {
  const isReached = (count: number) => feedFor(reaches.slice(0, count), LEAST_KPA, 0) <= feedKpa;
  if (isReached(reaches.length)) return reaches;
  let wet = 0;
  let dry = reaches.length;
  while (dry - wet > 1) {
    const middle = Math.floor((wet + dry) / 2);
    if (isReached(middle)) wet = middle;
    else dry = middle;
  }
  return reaches.slice(0, wet);
}
