/** Dripline whose emitters stand closer: the widest spacing that is sold and joins in this soil, or a closer one. */
import { noticedLine } from '../noticed-line.ts';
import type { Candidate, Noticed } from '../remedy.ts';
import { otherSpacings } from '../spacings.ts';

export function emittersFarApartCandidates(of: Noticed): readonly Candidate[] {
  const found = noticedLine(of);
  if (found === undefined) return [];
  return otherSpacings(of.plan, found, 'closer-spacing', (spacingM, laidM) => spacingM < laidM).toReversed();
}
