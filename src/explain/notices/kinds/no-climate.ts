import { ETO_METHODS } from '../../../engine/climate/daily-eto.ts';
import type { Season } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const NORMALS = ETO_METHODS.indexOf('normals');

/**
 * Weeks whose normals give no reference ET at all: one notice for the garden. Nothing is then known of what plants use,
 * and no water is planned as if they needed none. A danger where it is the whole season, else a warning: a month may be
 * missing, or be frozen. What was observed counts, even where it is 0.
 */
export function noClimate(season: Season): readonly FoundNotice<'no-climate'>[] {
  const { span } = season.garden;
  const weeks = weeksWithoutClimate(season);
  return oneRunOf(weeks).map(
    (run): FoundNotice<'no-climate'> => ({
      kind: 'no-climate',
      ...(weeks.length === span.weeks ? { severity: 'danger' } : {}),
      ...run,
      figures: { days: 7 * weeks.length, otherDays: 7 * (span.weeks - weeks.length) },
    }),
  );
}

/** Weeks of the season, from 0, of which no reference ET is known. */
export function weeksWithoutClimate({ weather: { eto }, garden: { span } }: Pick<Season, 'weather' | 'garden'>) {
  const isUnknown = (day: number) => eto.mm[day] === 0 && eto.method[day] === NORMALS;
  const days = [0, 1, 2, 3, 4, 5, 6];
  return weeksWhere(span.weeks, (week) => days.every((day) => isUnknown(7 * week + day)));
}
