/** What the plantings of a zone are at on their way through its season, in the bare loop: by slot, their place in the zone. */
import { draws } from './ahead.ts';

const MOST_PLANTINGS = 8;
const numbers = () => new Float64Array(MOST_PLANTINGS);
const wholes = () => new Int32Array(MOST_PLANTINGS);

/** Carried from week to week, mm: of the ground that lines wet, of the rest; of a refill that is due, what was missing when it became so. */
export const depletions = numbers();
export const dries = numbers();
export const fillings = numbers();

/** Of the ground, what lines wet this week; 1 where it is a part in any week. */
export const shares = numbers();
export const isPartly = wholes();
/** Where a week's days begin in what `needsOf` gives. */
export const needBases = wholes();

/** Minutes that stand, net litres of a minute, 1 once it was asked in this week. */
export const request = numbers();
export const flow = numbers();
export const wasAsked = wholes();
export const openMask = wholes();
export const isOpened = wholes();
/** The morning on which a refill behind a shut-off is expected to be due (-1: none), and what it is expected to miss. */
export const fillDay = wholes();
export const fillMissing = numbers();
/** By day of the week. */
export const minutes = new Float64Array(7);

/** What the ground that lines wet is expected to give, by day. */
export function needsOf(slot: number, etc: Float64Array): Float64Array {
  return isPartly[slot] === 1 ? draws : etc;
}
