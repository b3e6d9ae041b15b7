/** Where a zone's minutes of a week come from, in a few words. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { csvWords } from '../../language/en/csv.ts';
import type { Format } from '../../language/format/format.ts';

export interface MarkedWeek {
  readonly zone: ZoneSeason;
  /** Of the season, from 0. */
  readonly week: number;
  /** Its first day. */
  readonly firstDay: DayNumber;
  /** Left out: no week counts as past. */
  readonly today?: DayNumber | undefined;
}

/** Empty where nothing is in the ground and nothing was set. A past week of which nothing is logged is assumed to have run as computed. */
export function markOf({ zone, week, firstDay, today }: MarkedWeek, format: Format): string {
  const { marks } = csvWords(format.reader.language);
  const origin = zoneOrigin(zone, week);
  const minutes = zoneFigure(zone, 'minutes', week);
  if (origin === 'computed' && minutes === 0 && zoneState(zone, week) === 'off') return '';
  const isAssumed = origin === 'computed' && minutes > 0 && today !== undefined && firstDay + 7 <= today;
  const skipped = zoneFigure(zone, 'skippedMask', week);
  return format.list([
    isAssumed ? marks.assumed : marks[origin],
    ...(skipped === 0 ? [] : [marks.skipped(format, firstDay, skipped)]),
  ]);
}
