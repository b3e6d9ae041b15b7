/** One row, loop or length of the same line more, or one less. */
import type { PlanLine } from '../../../plan/schema/plan-schema.ts';
import type { LaidPlanting, MixContext } from '../mix-context.ts';
import { type MixCandidate, NO_GOODS } from '../remedy.ts';
import { driplineLengthM } from './dripline.ts';

type Layout = Extract<PlanLine, { kind: 'dripline' }>['layout'];

export function runCountCandidates(context: MixContext): readonly MixCandidate[] {
  return context.laid.flatMap((laid) => [1, -1].flatMap((more) => relaid(context, laid, more) ?? []));
}

function relaid({ plan, zone }: MixContext, laid: LaidPlanting, more: number): MixCandidate | undefined {
  const { planting, line, index } = laid;
  if (line.kind !== 'dripline') return undefined;
  const before = runsOf(line.layout);
  const after = before + more;
  if (after < 1) return undefined;
  const { kind } = line.layout;
  const lengthM = driplineLengthM(plan, planting, index);
  const next: PlanLine = { ...line, layout: withRuns(line.layout, after) };
  return {
    changes: [{ kind: 'runs', plantingId: planting.id, layout: kind, before, after }],
    goods: { ...NO_GOODS, driplineM: Math.max(0, (lengthM * more) / before) },
    edits: [{ type: 'replace-line', zone: zone.id, planting: planting.id, index, line: next }],
  };
}

function runsOf(layout: Layout): number {
  switch (layout.kind) {
    case 'length':
      return 1;
    case 'rows':
      return layout.rows;
    case 'loops':
      return layout.perPlant;
  }
}

function withRuns(layout: Layout, runs: number): Layout {
  switch (layout.kind) {
    case 'length':
      // Two lines side by side are fed each for itself.
      return { kind: 'rows', rows: runs, length: layout.length };
    case 'rows':
      return { ...layout, rows: runs };
    case 'loops':
      return { ...layout, perPlant: runs };
  }
}
