/** Records by week: each week once, and choices and runs inside the season, of zones and plantings that are there. */
import type { DayNumber } from '../../../engine/calendar.ts';
import { MOST_WEEKS } from '../../schema/site.ts';
import type { Issue } from '../issue.ts';
import { dayIn, fieldsIn, type Loose, listIn, numberIn } from '../loose.ts';
import type { Path } from '../place.ts';

export interface Span {
  readonly first: DayNumber;
  /** Undefined where no season is so long: its end is no day that could be named. */
  readonly weeks: number | undefined;
}

/** The season's span, where it has one. */
export function spanOf(season: unknown): Span | undefined {
  const { firstDay, weeks } = fieldsIn(season);
  const [first, count] = [dayIn(firstDay), numberIn(weeks)];
  if (first === undefined || count === undefined) return undefined;
  return { first, weeks: count >= 1 && count <= MOST_WEEKS ? count : undefined };
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

/** The day that a total was read through lies in its week, and there is a total. */
export function throughIssues(weeks: unknown, at: Path, span: Span | undefined): readonly Issue[] {
  return Object.entries(fieldsIn(weeks)).flatMap(([key, week]): readonly Issue[] => {
    const { rain, rainThrough } = fieldsIn(week);
    if (rainThrough === undefined) return [];
    const path = [...at, key, 'rainThrough'];
    if (rain === undefined) return [{ path, value: rainThrough, code: 'through-without-rain', values: {} }];
    return outsideWeek(rainThrough, weekAround(key, span), path);
  });
}

/** What ran on a day stands in the week of that day, with shut-offs of plantings of the zone. */
export function dayRunRelations(weeks: unknown, at: Path, span: Span | undefined, zone: Loose): readonly Issue[] {
  const ids = plantingIds(zone);
  return Object.entries(fieldsIn(weeks)).flatMap(([key, week]) =>
    Object.entries(fieldsIn(fieldsIn(week)['days'])).flatMap(([day, run]): readonly Issue[] => {
      const path = [...at, key, 'days', day];
      const unknown = listIn(fieldsIn(run)['open']).flatMap((planting, index): readonly Issue[] =>
        ids.has(planting)
          ? []
          : [{ path: [...path, 'open', index], value: planting, code: 'planting-unknown', values: {} }],
      );
      return [...outsideWeek(day, weekAround(key, span), path), ...unknown];
    }),
  );
}

interface WeekDays {
  readonly first: DayNumber;
  readonly last: DayNumber;
}

/** The week that holds a day; undefined where either is not known. */
function weekAround(key: string, span: Span | undefined): WeekDays | undefined {
  const day = dayIn(key);
  if (day === undefined || span === undefined) return undefined;
  const first = span.first + 7 * Math.floor((day - span.first) / 7);
  return { first, last: first + 6 };
}

function outsideWeek(value: unknown, week: WeekDays | undefined, path: Path): readonly Issue[] {
  const day = dayIn(value);
  if (day === undefined || week === undefined || (day >= week.first && day <= week.last)) return [];
  return [{ path, value, code: 'outside-week', values: { ...week } }];
}

function insideIssues(weeks: unknown, at: Path, span: Span | undefined): readonly Issue[] {
  if (span?.weeks === undefined) return [];
  const last = span.first + 7 * span.weeks - 1;
  return Object.keys(fieldsIn(weeks)).flatMap((key): readonly Issue[] => {
    const day = dayIn(key);
    if (day === undefined || (day >= span.first && day <= last)) return [];
    return [{ path: [...at, key], value: key, code: 'outside-season', values: { first: span.first, last } }];
  });
}

/** Open days are of plantings of the zone. */
export function openDaysRelations(choices: unknown, at: Path, zone: Loose | undefined): readonly Issue[] {
  const ids = plantingIds(zone);
  return Object.entries(fieldsIn(choices)).flatMap(([day, choice]) =>
    Object.entries(fieldsIn(fieldsIn(choice)['openDays'])).flatMap(([planting, days]): readonly Issue[] =>
      ids.has(planting)
        ? []
        : [{ path: [...at, day, 'openDays', planting], value: days, code: 'planting-unknown', values: {} }],
    ),
  );
}

function plantingIds(zone: Loose | undefined): ReadonlySet<unknown> {
  return new Set(listIn(zone?.['plantings']).map((planting) => fieldsIn(planting)['id']));
}
