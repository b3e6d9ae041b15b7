import type { GardenPlanting } from '../../engine/garden.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import type { NoticeSubject } from './notice.ts';

/** Days of the season on which something holds of a planting. */
export interface PlantingSpan {
  readonly zone: ZoneSeason;
  readonly planting: GardenPlanting;
  /** Weeks of the season that hold the first and the last of the days. */
  readonly firstWeek: number;
  readonly lastWeek: number;
}

/** Where a notice of some spans of one planting, at least one, belongs, and when it holds. */
export function placeOfSpans(
  spans: readonly PlantingSpan[],
): Required<Pick<NoticeSubject, 'zoneId' | 'plantingId' | 'firstWeek' | 'lastWeek' | 'weeks'>> {
  const weeks = [...new Set(spans.flatMap(weeksOf))].sort((left, right) => left - right);
  const { zone, planting } = spans[0] as PlantingSpan;
  return {
    zoneId: zone.zone.id,
    plantingId: planting.id,
    firstWeek: weeks[0] as number,
    lastWeek: weeks.at(-1) as number,
    weeks,
  };
}

function weeksOf({ firstWeek, lastWeek }: PlantingSpan): readonly number[] {
  return Array.from({ length: lastWeek - firstWeek + 1 }, (_, offset) => firstWeek + offset);
}
