/** Records by week: each week once, and choices and runs inside the season, of zones and plantings that are there. */
import type { DayNumber } from '../../../engine/calendar.ts';
import { dateInWords } from '../../words/day-words.ts';
import type { Finding, Path } from '../finding.ts';
import { dayIn, fieldsIn, type Loose, listIn, numberIn } from '../loose.ts';

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
export function zoneWeekRelations(weeks: unknown, at: Path, span: Span | undefined): readonly Finding[] {
  return [...insideFindings(weeks, at, span), ...onceFindings(weeks, at, span)];
}

/** Two entries of the same week say two things about it. */
export function onceFindings(weeks: unknown, at: Path, span: Span | undefined): readonly Finding[] {
  if (span === undefined) return [];
  const seen = new Map<number, string>();
  return Object.keys(fieldsIn(weeks)).flatMap((key): readonly Finding[] => {
    const day = dayIn(key);
    if (day === undefined) return [];
    const week = Math.floor((day - span.first) / 7);
    const other = seen.get(week);
    if (other === undefined) {
      seen.set(week, key);
      return [];
    }
    return [{ path: [...at, key], value: key, expected: `one entry a week: ${other} lies in the same week` }];
  });
}

function insideFindings(weeks: unknown, at: Path, span: Span | undefined): readonly Finding[] {
  if (span === undefined) return [];
  const last = span.first + 7 * span.weeks - 1;
  return Object.keys(fieldsIn(weeks)).flatMap((key): readonly Finding[] => {
    const day = dayIn(key);
    if (day === undefined || (day >= span.first && day <= last)) return [];
    const expected = `a day of the season, ${dateInWords(span.first)} to ${dateInWords(last)}`;
    return [{ path: [...at, key], value: key, expected }];
  });
}

/** Open days are of plantings of the zone. */
export function openDaysRelations(choices: unknown, at: Path, zone: Loose | undefined): readonly Finding[] {
  const ids = new Set(listIn(zone?.['plantings']).map((planting) => fieldsIn(planting)['id']));
  return Object.entries(fieldsIn(choices)).flatMap(([day, choice]) =>
    Object.entries(fieldsIn(fieldsIn(choice)['openDays'])).flatMap(([planting, days]): readonly Finding[] =>
      ids.has(planting)
        ? []
        : [{ path: [...at, day, 'openDays', planting], value: days, expected: 'a planting of this zone' }],
    ),
  );
}
