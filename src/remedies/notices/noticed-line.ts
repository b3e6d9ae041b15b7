/** The line of the plan that a notice is about. */
import type { ZoneLine } from '../../engine/line/zone-lines.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { lineOrder } from '../../plan/to-garden/line-order.ts';
import type { NoticeInPlan } from './remedy.ts';

export interface NoticedLine {
  readonly zone: PlanZone;
  readonly planting: PlanPlanting;
  readonly line: PlanLine;
  /** In the planting's lines of the plan. */
  readonly index: number;
  readonly garden: Pick<ZoneLine, 'planting' | 'line'>;
  /** Of the zone. */
  readonly soil: NoticeInPlan['season']['garden']['zones'][number]['soil'];
}

/** Undefined where the notice is about none. */
export function noticedLine({ plan, season, notice }: NoticeInPlan): NoticedLine | undefined {
  const zone = plan.zones.find(({ id }) => id === notice.zoneId);
  const planting = zone?.plantings.find(({ id }) => id === notice.plantingId);
  const inGarden = season.garden.zones.find(({ id }) => id === notice.zoneId);
  const inGround = inGarden?.plantings.find(({ id }) => id === notice.plantingId);
  const gardenLine = inGround?.lines[notice.lineIndex ?? -1];
  if (!zone || !planting || !inGarden || !inGround || !gardenLine) return undefined;
  const index = lineOrder(planting.lines, inGround.from)[notice.lineIndex ?? -1] ?? -1;
  const line = planting.lines[index];
  if (line === undefined) return undefined;
  return { zone, planting, line, index, garden: { planting: inGround, line: gardenLine }, soil: inGarden.soil };
}

/** Another line in its place. */
export function replacingLine({ zone, planting, index }: NoticedLine, line: PlanLine): Edit {
  return { type: 'replace-line', zone: zone.id, planting: planting.id, index, line };
}
