/** A line on the downhill side is moved to the other (common practice, no source). */
import { noticedLine, replacingLine } from '../noticed-line.ts';
import type { NoticeInPlan, RemedyCandidate } from '../remedy.ts';

export function lineDownhillCandidates(of: NoticeInPlan): readonly RemedyCandidate[] {
  const found = noticedLine(of);
  if (found === undefined || found.line.kind === 'solid') return [];
  const edit = replacingLine(found, { ...found.line, slopeSide: 'uphill' });
  return [{ kind: 'uphill', plantingId: found.planting.id, edit }];
}
