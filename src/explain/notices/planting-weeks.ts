/** Plantings of a zone with weeks of theirs, told together. */
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import type { NoticeSubject } from './notice.ts';
import type { Run } from './runs.ts';

export interface PlantingWeeks {
  readonly own: PlantingSeason;
  /** At least one, in order. */
  readonly weeks: readonly number[];
}

/** Where a notice of plantings of one zone belongs, at least one, and when it holds. */
export function togetherOf(
  { zone }: ZoneSeason,
  members: readonly PlantingWeeks[],
): Pick<NoticeSubject, 'zoneId' | 'plantingId' | 'plantingIds'> & Run {
  const weeks = weeksOfAll(members);
  const ids = members.map(({ own }) => own.planting.id);
  const [plantingId] = ids;
  return {
    zoneId: zone.id,
    ...(ids.length === 1 && plantingId !== undefined ? { plantingId } : { plantingIds: ids }),
    firstWeek: weeks[0] as number,
    lastWeek: weeks.at(-1) as number,
    weeks,
  };
}

/** In order, each once. */
export function weeksOfAll(members: readonly PlantingWeeks[]): readonly number[] {
  return [...new Set(members.flatMap(({ weeks }) => weeks))].sort((left, right) => left - right);
}
