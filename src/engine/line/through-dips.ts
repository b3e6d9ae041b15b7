import { neighboursAt } from './neighbours-at.ts';
import { type DeadEnd, type DeadEndInput, type FedPart, noFlow, upstreamPressure } from './upstream-pressure.ts';

/** Two pressures this near, as a share of the greater, are the same. */
const ALIKE = 1e-9;

/** Outlets that are followed in all parts together: a line that asks for more is left, for it would take seconds. */
const MOST_OUTLETS_FOLLOWED = 40_000;

/**
 * Fills in a line whose least pressure lies on the way, as it can downhill: a dip so near to none that the pressure at the far end, to its
 * last digit, does not tell it. The two neighbouring numbers around the answer at the far end agree on all that lies behind the dip. That
 * is kept, with the flow that goes on to it, and what lies before is sought anew from the first outlet on which they do not agree: from
 * its own pressure, which may be below none (it gives nothing, and the water goes on). There can be more than one such step.
 *
 * @param wet outlets, counted from the feed, that water reaches
 * @returns false where the line has so many outlets and dips that it is left
 */
export function fillThroughDips(input: DeadEndInput, wet: number, along: DeadEnd): boolean {
  const { feedPressureKpa, outlets, reaches } = input;
  // Nowhere is more than the feed's pressure and all that the line falls, nor less than none and all that.
  const mostKpa = reaches.climbs.reduce((kpa, climb) => kpa + Math.abs(climb), feedPressureKpa);
  const under = noFlow(outlets);
  let part: FedPart = { count: wet, onLph: 0, mostKpa };
  let followed = 0;
  let low = -mostKpa;
  let high = mostKpa;
  while (part.count > 0) {
    const { count } = part;
    followed += count;
    if (followed > MOST_OUTLETS_FOLLOWED) return false;
    const missing = (kpa: number) => upstreamPressure(input, part, kpa) - feedPressureKpa;
    // The last digits of what goes on may have moved it out of where it was.
    if (missing(low) >= 0) low = -mostKpa;
    if (missing(high) < 0) high = mostKpa;
    const [below, above] = neighboursAt(missing, low, high);
    upstreamPressure(input, part, below, under);
    upstreamPressure(input, part, above, along);
    let apart = count - 1;
    while (apart >= 0 && isAlike(along.pressuresKpa[apart] as number, under.pressuresKpa[apart] as number)) apart -= 1;
    if (apart < 0) return true;
    // Of its own two neighbours nothing between can be told.
    if (apart === count - 1) apart -= 1;
    low = Math.max(-mostKpa, under.pressuresKpa[apart] as number);
    high = Math.min(mostKpa, along.pressuresKpa[apart] as number);
    part = { count: apart + 1, onLph: along.reachFlowsLph[apart + 1] as number, mostKpa };
  }
  return true;
}

function isAlike(one: number, other: number): boolean {
  return Math.abs(one - other) <= ALIKE * Math.max(Math.abs(one), Math.abs(other));
}
