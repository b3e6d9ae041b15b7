/** A line that its pressure does not carry: shorter ways for the water, or less of it. */
import type { PlanLine } from '../../../plan/schema/plan-schema.ts';
import { cutPlanting } from '../cut-planting.ts';
import { type NoticedLine, noticedLine, replacingLine } from '../noticed-line.ts';
import type { NoticeInPlan, RemedyCandidate } from '../remedy.ts';
import { otherSpacings } from '../spacings.ts';

export function lineTooLongCandidates(of: NoticeInPlan): readonly RemedyCandidate[] {
  const found = noticedLine(of);
  if (found === undefined || found.line.kind === 'solid') return [];
  return [
    ...closeLoop(found, found.line),
    ...feedMiddle(found, found.line),
    ...otherSpacings(of.plan, found, 'wider-spacing', (spacingM, laidM) => spacingM > laidM),
    ...[cutPlanting(of.plan, found.zone, found.planting)].filter((candidate) => candidate !== undefined),
  ];
}

type EmittingLine = Exclude<PlanLine, { kind: 'solid' }>;

function closeLoop(of: NoticedLine, line: EmittingLine): readonly RemedyCandidate[] {
  if (line.topology === 'loop') return [];
  const edit = replacingLine(of, { ...line, topology: 'loop' });
  return [{ kind: 'close-loop', plantingId: of.planting.id, edit }];
}

/** Two runs of half the length where there was one. Loops round plants are short already. */
function feedMiddle(of: NoticedLine, line: EmittingLine): readonly RemedyCandidate[] {
  if (line.kind !== 'dripline' || line.layout.kind === 'loops') return [];
  const { layout } = line;
  const runs = 2 * (layout.kind === 'rows' ? layout.rows : 1);
  const runLengthM = (of.garden.line.lengthM ?? 0) / runs;
  const halved: PlanLine = { ...line, layout: { kind: 'rows', rows: runs, length: layout.length / 2 } };
  return [{ kind: 'feed-middle', plantingId: of.planting.id, runs, runLengthM, edit: replacingLine(of, halved) }];
}
