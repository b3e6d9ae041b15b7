/** Forecasts: one of a day of issue, each of that day and later ones. */
import type { Issue } from '../issue.ts';
import { dayIn, fieldsIn, listIn } from '../loose.ts';
import type { Path } from '../place.ts';

/** `valid`: forecasts known to be without fault. */
export function forecastRelations(forecasts: unknown, at: Path, valid: ReadonlySet<unknown>): readonly Issue[] {
  const seen = new Map<unknown, number>();
  return listIn(forecasts).flatMap((forecast, index): readonly Issue[] => {
    const { issued, days } = fieldsIn(forecast);
    const other = seen.get(issued);
    if (other === undefined) seen.set(issued, index + 1);
    const twice: readonly Issue[] =
      other === undefined || dayIn(issued) === undefined
        ? []
        : [{ path: [...at, index, 'issued'], value: issued, code: 'issued-twice', values: { other } }];
    return valid.has(forecast) ? twice : [...twice, ...earlyIssues(days, dayIn(issued), [...at, index, 'days'])];
  });
}

function earlyIssues(days: unknown, issued: number | undefined, at: Path): readonly Issue[] {
  if (issued === undefined) return [];
  return Object.keys(fieldsIn(days)).flatMap((key): readonly Issue[] => {
    const day = dayIn(key);
    if (day === undefined || day >= issued) return [];
    return [{ path: [...at, key], value: key, code: 'before-issue', values: { issued } }];
  });
}
