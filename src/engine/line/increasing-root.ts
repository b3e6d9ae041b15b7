export interface RootSearch {
  /** Rises, or stays, over the interval. */
  readonly of: (x: number) => number;
  /** Where the function is at most 0. */
  readonly low: number;
  /** Where the function is at least 0. */
  readonly high: number;
  /** Stop when the function is this close to 0. */
  readonly tolerance: number;
}

const MOST_STEPS = 200;

/**
 * Where a rising function crosses 0, by Chandrupatla's method: inverse quadratic steps while they help, halving when
 * not, the root always between two ends (Chandrupatla 1997, Advances in Engineering Software 28:145-149). It always
 * ends: at the tolerance, or when no number is left between the ends.
 */
export function increasingRoot({ of, low, high, tolerance }: RootSearch): number {
  // `a` is the newest point, `b` the end across the root from it, `c` the point before.
  let a = low;
  let b = high;
  let c = high;
  let ofA = of(a);
  let ofB = of(b);
  let ofC = ofB;
  let share = 0.5;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const [best, ofBest] = Math.abs(ofA) < Math.abs(ofB) ? [a, ofA] : [b, ofB];
    const next = a + share * (b - a);
    if (Math.abs(ofBest) <= tolerance || next === a || next === b) return best;
    const ofNext = of(next);
    if (ofNext > 0 === ofA > 0) {
      c = a;
      ofC = ofA;
    } else {
      c = b;
      ofC = ofB;
      b = a;
      ofB = ofA;
    }
    a = next;
    ofA = ofNext;
    share = nextShare({ a, b, c, ofA, ofB, ofC });
  }
  return Math.abs(ofA) < Math.abs(ofB) ? a : b;
}

interface ThreePoints {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly ofA: number;
  readonly ofB: number;
  readonly ofC: number;
}

/** Where between `a` (0) and `b` (1) to look next. */
function nextShare({ a, b, c, ofA, ofB, ofC }: ThreePoints): number {
  const x = (a - b) / (c - b);
  const y = (ofA - ofB) / (ofC - ofB);
  const quadraticHelps = y ** 2 < x && (1 - y) ** 2 < 1 - x;
  if (!quadraticHelps) return 0.5;
  const share =
    (ofA / (ofB - ofA)) * (ofC / (ofB - ofC)) + ((c - a) / (b - a)) * (ofA / (ofC - ofA)) * (ofB / (ofC - ofB));
  const closest = (2 * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b))) / Math.abs(b - a);
  return Number.isFinite(share) ? Math.min(1 - closest, Math.max(closest, share)) : 0.5;
}
