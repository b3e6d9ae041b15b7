/** A line on the downhill side is moved to the other (common practice, no source). */
import { noticedLine, replacingLine } from '../noticed-line.ts';
import type { Candidate, Noticed } from '../remedy.ts';

export function lineDownhillCandidates(of: Noticed): readonly Candidate[] {
  const found = noticedLine(of);
  if (found === undefined || found.line.kind === 'solid') return [];
  return [replacingLine(found, 'uphill', { ...found.line, slopeSide: 'uphill' })];
}
