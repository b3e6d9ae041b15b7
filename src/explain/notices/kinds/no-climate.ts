import { ETO_METHODS } from '../../../engine/climate/daily-eto.ts';
import type { Season } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const NORMALS = ETO_METHODS.indexOf('normals');

/**
 * Weeks whose normals give no reference ET at all: one notice for the garden. No water is then planned as if plants needed none. A
 * danger where nothing is filled in, so that nothing is known of what they use, else a warning: a month may be missing, or be too cold.
 * What was observed counts, even where it is 0.
 */
export function noClimate(season: Season): readonly FoundNotice<'no-climate'>[] {
  const { span } = season.garden;
  const weeks = weeksWithoutEto(season);
  const given = givenMonths(season);
  return oneRunOf(weeks).map(
    (run): FoundNotice<'no-climate'> => ({
      kind: 'no-climate',
      ...(lacksClimate(season) ? { severity: 'danger' } : {}),
      ...run,
      figures: { ...given, days: 7 * weeks.length, otherDays: 7 * (span.weeks - weeks.length) },
    }),
  );
}

/** Weeks of the season, from 0, of which no reference ET is known: temperatures that are given say that there is none. */
export function weeksWithoutClimate(season: Known): readonly number[] {
  return givenMonths(season).temperatureMonths > 0 ? [] : weeksWithoutEto(season);
}

/** Whether nothing at all is known of what plants use in the season. */
export function lacksClimate(season: Known): boolean {
  const { etoMonths, temperatureMonths } = givenMonths(season);
  return etoMonths + temperatureMonths === 0 && weeksWithoutEto(season).length === season.garden.span.weeks;
}

type Known = Pick<Season, 'weather' | 'garden'>;

/** Months of the climate that have a reference ET; where none is typed, those with temperatures other than 0 °C. */
function givenMonths({ garden }: Known): { readonly etoMonths: number; readonly temperatureMonths: number } {
  const { etoMm, minTemperatureC = [], maxTemperatureC = [] } = garden.site.climate;
  const isGiven = (celsius: number, month: number) => celsius !== 0 || maxTemperatureC[month] !== 0;
  return {
    etoMonths: etoMm?.filter((mm) => mm > 0).length ?? 0,
    temperatureMonths: etoMm === undefined ? minTemperatureC.filter(isGiven).length : 0,
  };
}

function weeksWithoutEto({ weather: { eto }, garden: { span } }: Known) {
  const isUnknown = (day: number) => eto.mm[day] === 0 && eto.method[day] === NORMALS;
  const days = [0, 1, 2, 3, 4, 5, 6];
  return weeksWhere(span.weeks, (week) => days.every((day) => isUnknown(7 * week + day)));
}
