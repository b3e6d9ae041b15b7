import type { Season } from '../../engine/season/season.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatDays } from '../../language/format/dates.ts';
import type { Selection } from '../../store/plan-view.ts';
import { noticeWords } from '../shared/words/notice-words.ts';

/** Where a notice holds. */
export interface NoticePlace {
  /** The planting, else the zone, else the garden. */
  readonly name: string;
  /** Zone, planting and weeks, those that there are. */
  readonly where: string;
  readonly selection: Selection;
}

export function noticePlace(notice: Notice, season: Season, gardenName: string, locale: string): NoticePlace {
  const zone = season.zones.find((candidate) => candidate.zone.id === notice.zoneId);
  const planting = zone?.plantings.find((candidate) => candidate.planting.id === notice.plantingId);
  const names = [zone?.zone.name, planting?.planting.name].filter((name) => name !== undefined);
  const weeks = weekWords(notice, season, locale);
  if (notice.kind === 'no-climate') return { name: gardenName, where: weeks, selection: { part: 'climate' } };
  return {
    name: names.at(-1) ?? gardenName,
    where: [...names, weeks].filter((part) => part !== '').join(', '),
    selection: { zone: zone?.zone.id, planting: planting?.planting.id, week: notice.firstWeek },
  };
}

function weekWords({ firstWeek, lastWeek, weeks }: Notice, { garden }: Season, locale: string): string {
  if (firstWeek === undefined || lastWeek === undefined) return '';
  const { firstDay } = garden.span;
  const days = formatDays(firstDay + 7 * firstWeek, firstDay + 7 * lastWeek + 6, locale);
  const hasGaps = weeks !== undefined && weeks.length < lastWeek - firstWeek + 1;
  return hasGaps ? noticeWords.someWeeks(formatCount(weeks.length, noticeWords.weeks, locale), days) : days;
}
