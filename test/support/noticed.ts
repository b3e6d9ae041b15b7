/** A plan's notice of a kind, and what its remedies come to. */

import type { Season } from '../../src/engine/season/season.ts';
import { isOfKind, type Notice, type NoticeKind } from '../../src/explain/notices/notice.ts';
import { noticesOf } from '../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { applyEdit } from '../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { remediesOf } from '../../src/remedies/notices/remedies-of.ts';
import type { Remedy, RemedyKind } from '../../src/remedies/notices/remedy.ts';

export interface WithRemedies<Kind extends NoticeKind = NoticeKind> {
  readonly season: Season;
  readonly notice: Notice<Kind>;
  readonly remedies: readonly Remedy[];
  /** The plan after one of them. */
  readonly mended: (kind: RemedyKind) => Plan;
}

/** Throws where the plan has no such notice, or it no such remedy. */
export function noticed<Kind extends NoticeKind>(plan: Plan, kind: Kind): WithRemedies<Kind> {
  const season = computeSeason(plan);
  const notice = noticesOf(season).find((each) => isOfKind(each, kind));
  if (notice === undefined) throw new Error(`the plan has no notice ${kind}`);
  const remedies = remediesOf(plan, season, notice);
  const mended = (wanted: RemedyKind) => {
    const remedy = remedies.find((each) => each.kind === wanted);
    if (remedy === undefined) throw new Error(`${kind} has no remedy ${wanted}`);
    return applyEdit(plan, remedy.edit);
  };
  return { season, notice, remedies, mended };
}

export function kindsOf(plan: Plan): readonly NoticeKind[] {
  return noticesOf(computeSeason(plan)).map(({ kind }) => kind);
}
