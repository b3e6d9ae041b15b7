import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import { noticesWords } from '../../language/en/notices.ts';
import type { Reader } from '../../language/reader.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { weekFirstDay } from '../../plan/season-weeks.ts';

export interface RemedyEdit {
  readonly label: string;
  readonly edit: Edit;
}

/** The one change that mends a notice, where there is one that a person need not think about. */
export function remedyEdit(notice: Notice, plan: Plan, season: Season, reader: Reader): RemedyEdit | undefined {
  const { remedy, zoneId, plantingId } = notice;
  if (zoneId === undefined) return undefined;
  const { fixes } = noticesWords(reader.language);
  if (remedy === 'keep-instead' && plantingId !== undefined) {
    const edit = { type: 'change-planting', zone: zoneId, planting: plantingId, change: { watering: 'keep' } } as const;
    return { label: fixes[remedy], edit };
  }
  if (remedy !== 'open-zone' && remedy !== 'use-computed') return undefined;
  const edits = weekEdits(notice, zoneId, plan, season);
  if (edits.length === 0) return undefined;
  const action = remedy === 'open-zone' ? 'open-weeks' : 'use-computed';
  return { label: fixes[remedy], edit: { type: 'together', action, edits } };
}

/** Takes back what was decided by hand in the notice's weeks; what really ran stays. */
function weekEdits(
  { remedy, plantingId, weeks = [] }: Notice,
  zoneId: string,
  plan: Plan,
  season: Season,
): readonly Edit[] {
  const choices = season.zones.find(({ zone }) => zone.id === zoneId)?.zone.choices;
  return weeks.flatMap((place): readonly Edit[] => {
    const choice = choices?.get(place);
    const week = weekFirstDay(plan.season, place);
    if (remedy === 'open-zone') {
      return choice?.closed === true ? [{ type: 'close-week', zone: zoneId, week, closed: false }] : [];
    }
    const edits: Edit[] = [];
    if (choice?.minutes !== undefined) edits.push({ type: 'set-minutes', zone: zoneId, week, minutes: undefined });
    if (plantingId !== undefined && choice?.openDays?.has(plantingId) === true) {
      edits.push({ type: 'set-open-days', zone: zoneId, planting: plantingId, week, days: undefined });
    }
    return edits;
  });
}
