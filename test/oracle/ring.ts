/**
 * A tube that is fed at both ends from one place and comes back as it went: up as far as down, spaced alike from either end. Both halves are
 * the same; the streams meet in the middle.
 */
import type { Reach } from './dead-end.ts';

/** The half of it, from the reaches in front of its outlets; of an outlet in the very middle each half feeds half. */
export function halfOfRing(reaches: readonly Reach[]): readonly Reach[] {
  const half = reaches.slice(0, Math.ceil(reaches.length / 2));
  const last = half.at(-1);
  if (last === undefined || reaches.length % 2 === 0) return half;
  return [...half.slice(0, -1), { ...last, law: (kpa) => last.law(kpa) / 2 }];
}
