/** Records by week: each week once, and choices and runs inside the season, of zones and plantings that are there. */
import type { DayNumber } from '../../../engine/calendar.ts';
import type { Issue } from '../issue.ts';
import { dayIn, fieldsIn, type Loose, listIn, numberIn } from '../loose.ts';
import type { Path } from '../place.ts';

export interface Span {
  readonly first: DayNumber;
  readonly weeks: number;
}

/** The season's span, where it has one. */
export function spanOf(season: unknown): Span | undefined {
  const { firstDay, weeks } = fieldsIn(season);
  const [first, count] = [dayIn(firstDay), numberIn(weeks)];
  return first === undefined || count === undefined ? undefined : { first, weeks: count };
}

/** Choices or runs of one zone, by a day of the week. */
export function zoneWeekRelations(weeks: unknown, at: Path, span: Span | undefined): readonly Issue[] {
  return [...insideIssues(weeks, at, span), ...onceIssues(weeks, at, span)];
}

/** Two entries of the same week say two things about it. */
export function onceIssues(weeks: unknown, at: Path, span: Span | undefined): readonly Issue[] {
  if (span === undefined) return [];
  const seen = new Map<number, string>();
  return Object.keys(fieldsIn(weeks)).flatMap((key): readonly Issue[] => {
    const day = dayIn(key);
    if (day === undefined) return [];
    const week = Math.floor((day - span.first) / 7);
    const other = seen.get(week);
    if (other === undefined) {
      seen.set(week, key);
      return [];
    }
    return [{ path: [...at, key], value: key, code: 'week-twice', values: { other } }];
  });
}

function insideIssues(weeks: unknown, at: Path, span: Span | undefined): readonly Issue[] {
  if (span === undefined) return [];
  const last = span.first + 7 * span.weeks - 1;
  return Object.keys(fieldsIn(weeks)).flatMap((key): readonly Issue[] => {
    const day = dayIn(key);
    if (day === undefined || (day >= span.first && day <= last)) return [];
    return [{ path: [...at, key], value: key, code: 'outside-season', values: { first: span.first, last } }];
  });
}

/** Open days are of plantings of the zone. */
export function openDaysRelations(choices: unknown, at: Path, zone: Loose | undefined): readonly Issue[] {
  const ids = new Set(listIn(zone?.['plantings']).map((planting) => fieldsIn(planting)['id']));
  return Object.entries(fieldsIn(choices)).flatMap(([day, choice]) =>
    Object.entries(fieldsIn(fieldsIn(choice)['openDays'])).flatMap(([planting, days]): readonly Issue[] =>
      ids.has(planting)
        ? []
        : [{ path: [...at, day, 'openDays', planting], value: days, code: 'planting-unknown', values: {} }],
    ),
  );
}
