import { increasingRoot } from './increasing-root.ts';
import { fillThroughDips } from './through-dips.ts';
import { type DeadEnd, type DeadEndInput, noFlow, upstreamPressure } from './upstream-pressure.ts';

/**
 * Pressure, kPa, below which an outlet at the end of a line counts as dry: so small that its flow is nothing for any
 * exponent.
 */
const DRY_KPA = 1e-250;

/** Far more than any feed has: what a guess that asks for it comes to further up would pass all numbers. */
const BEYOND_KPA = 1e100;

/** The feed's pressure is met to this share of it. */
const CLOSENESS = 1e-12;

/** Where no number at the far end meets it to this share, the least pressure lies on the way. */
const UNMET = 1e-10;

/**
 * Pressures and flows along a line fed at one end. From a guessed pressure at its last outlet the line is followed up
 * to the feed, reach by reach, each with the friction of the flow that remains in it; the guess is mended until the
 * feed's own pressure is met. The feed's pressure rises with the guess, at least one for one, so that there is one
 * answer and it is always found. Where even a last outlet that barely drips would ask for more than the feed has, water
 * does not come that far: those outlets are dry, and the line is solved without them. Downhill the least pressure may lie on the way,
 * where the last one does not tell it: then the line is solved in parts, see `fillThroughDips`.
 */
export function solveDeadEnd(input: DeadEndInput): DeadEnd {
  const { outlets, feedPressureKpa } = input;
  const along = noFlow(outlets);
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
  const fill = () => feedPressure(input, wet, Math.exp(logOfLast), along);
  const isMet = Math.abs(fill() - feedPressureKpa) <= UNMET * feedPressureKpa;
  // A line that is left has what its last pressure leads to.
  if (!isMet && !fillThroughDips(input, wet, along)) fill();
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

/** The pressure that the feed must have for the last of `count` outlets to have `lastPressureKpa`, with nothing behind it. */
function feedPressure(input: DeadEndInput, count: number, lastPressureKpa: number, along?: DeadEnd): number {
  return upstreamPressure(input, { count, onLph: 0, mostKpa: BEYOND_KPA }, lastPressureKpa, along);
}
