/** Dripline whose emitters stand closer: the widest spacing that is sold and joins in this soil, or a closer one. */
import { noticedLine } from '../noticed-line.ts';
import type { NoticeInPlan, RemedyCandidate } from '../remedy.ts';
import { otherSpacings } from '../spacings.ts';

export function emittersFarApartCandidates(of: NoticeInPlan): readonly RemedyCandidate[] {
  const found = noticedLine(of);
  if (found === undefined) return [];
  return otherSpacings(of.plan, found, 'closer-spacing', (spacingM, laidM) => spacingM < laidM).toReversed();
}
