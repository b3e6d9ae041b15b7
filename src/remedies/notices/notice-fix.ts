/** The one change that mends a notice at one press. */
import type { Season } from '../../engine/season/season.ts';
import { type Notice, type NoticeRemedy, plantingsOf } from '../../explain/notices/notice.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { weekFirstDay } from '../../plan/season-weeks.ts';

export interface NoticeFix {
  readonly kind: Extract<NoticeRemedy, 'open-zone' | 'use-computed'>;
  readonly edit: Edit;
}

/** Undefined where a person has to think about what to change. `season` is the plan's own, `notice` one of its notices. */
export function noticeFix(notice: Notice, plan: Plan, season: Season): NoticeFix | undefined {
  const { remedy, zoneId } = notice;
  if (zoneId === undefined) return undefined;
  if (remedy !== 'open-zone' && remedy !== 'use-computed') return undefined;
  const edits = weekEdits(notice, zoneId, plan, season);
  if (edits.length === 0) return undefined;
  const action = remedy === 'open-zone' ? 'open-weeks' : 'use-computed';
  return { kind: remedy, edit: { type: 'together', action, edits } };
}

/** Takes back what was decided by hand in the notice's weeks; what really ran stays. */
function weekEdits(notice: Notice, zoneId: string, plan: Plan, season: Season): readonly Edit[] {
  const { remedy, weeks = [] } = notice;
  const choices = season.zones.find(({ zone }) => zone.id === zoneId)?.zone.choices;
  return weeks.flatMap((index): readonly Edit[] => {
    const choice = choices?.get(index);
    const week = weekFirstDay(plan.season, index);
    if (remedy === 'open-zone') {
      return choice?.closed === true ? [{ type: 'close-week', zone: zoneId, week, closed: false }] : [];
    }
    const edits: Edit[] = [];
    if (choice?.minutes !== undefined) edits.push({ type: 'set-minutes', zone: zoneId, week, minutes: undefined });
    for (const planting of plantingsOf(notice)) {
      if (choice?.openDays?.has(planting) !== true) continue;
      edits.push({ type: 'set-open-days', zone: zoneId, planting, week, days: undefined });
    }
    return edits;
  });
}
