/** A season as a calendar file (iCalendar, RFC 5545) for phones and calendar programs. */
import { isoDate } from '../../engine/calendar.ts';
import { runThrough } from '../../engine/run-through.ts';
import type { PlantingSeason, Season } from '../../engine/season/season.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { CautionId } from '../../explain/notices/cautions.ts';
import { calendarWords } from '../../language/en/calendar.ts';
import { cautionWords } from '../../language/en/cautions.ts';
import { formatClock } from '../../language/format/clock.ts';
import { type Format, formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { readerFor } from '../../language/reader.ts';
import { contentLine, textValue } from './content-line.ts';
import { eventText } from './event-text.ts';
import { eventUids, type UidOf } from './event-uid.ts';
import { type CalendarExtent, type WateringRun, wateringRuns } from './watering-events.ts';
import { ZonedClock } from './zoned-instant.ts';

export interface CalendarChoice extends CalendarExtent {
  /** Names the calendar. */
  readonly planName: string;
  /** `identity` of the plan, by which its entries are known however it is called now. Left out: its name. */
  readonly planIdentity?: string | undefined;
  readonly units: UnitSystem;
  /** BCP 47; the language of what the entries say. Left out: English. */
  readonly locale?: string | undefined;
  /** Of the garden, by its IANA name. */
  readonly timeZone: string;
  /** When the watering window opens, minutes after midnight by the garden's clock. */
  readonly opensAt: number;
  /** Every run, or only the turns of shut-offs. Left out: runs. */
  readonly contents?: 'runs' | 'turns' | undefined;
  /** Rings so many minutes before an entry begins, 0 = when it does. Left out: not at all. */
  readonly alarmMinutes?: number | undefined;
  /** When it is written, ms since 1970: a later file of the same plan takes the place of an earlier one. */
  readonly writtenAt: number;
}

/**
 * The text of an `.ics` file. Times are instants in UTC, so that they are right on any phone. Throws a RangeError for a time zone that
 * the JavaScript engine does not know.
 */
export function seasonToCalendar(season: Season, choice: CalendarChoice): string {
  return runThrough(calendarSteps(season, choice));
}

/** The same a day, then an entry, at a time. */
export function* calendarSteps(season: Season, choice: CalendarChoice): Generator<undefined, string> {
  const reader = readerFor(choice.locale ?? 'en', choice.units);
  const writing: Writing = {
    choice,
    uidOf: eventUids(choice.planIdentity ?? choice.planName),
    clock: new ZonedClock(choice.timeZone),
    format: formatFor(reader),
    notes: new Map(season.zones.map(({ zone }) => [zone.id, zone.choices])),
    cautions: cautionsOf(season.garden.supply.tank !== undefined, reader.language),
  };
  const lines = [
    contentLine('BEGIN', 'VCALENDAR'),
    contentLine('VERSION', '2.0'),
    contentLine('PRODID', '-//Runnel//runnel-kit//EN'),
    contentLine('CALSCALE', 'GREGORIAN'),
    contentLine('METHOD', 'PUBLISH'),
    contentLine('X-WR-CALNAME', textValue(calendarWords(reader.language).named(choice.planName))),
  ];
  const isTurns = choice.contents === 'turns';
  for (const run of yield* wateringRuns(season, choice)) {
    if (!isTurns) lines.push(runEvent(run, writing));
    else if (run.toOpen.length + run.toShut.length > 0) lines.push(turnEvent(run, writing));
    yield;
  }
  lines.push(contentLine('END', 'VCALENDAR'));
  return lines.join('');
}

interface Writing {
  readonly choice: CalendarChoice;
  readonly uidOf: UidOf;
  readonly clock: ZonedClock;
  readonly format: Format;
  readonly notes: ReadonlyMap<string, ReadonlyMap<number, { readonly note?: string | undefined }>>;
  readonly cautions: readonly string[];
}

/** Of the cautions those that concern whoever waters; the others stand where lines are laid. */
function cautionsOf(hasTank: boolean, language: Parameters<typeof cautionWords>[0]): readonly string[] {
  const ids: readonly CautionId[] = hasTank ? ['codes', 'promise', 'tank'] : ['codes', 'promise'];
  return ids.map((id) => cautionWords(language).full[id]);
}

const MINUTE_MS = 60_000;

/** A turn of shut-offs is an entry of so many minutes that ends when its zone begins to run. */
const TURN_MINUTES = 15;

function runEvent(run: WateringRun, writing: Writing): string {
  const { format, choice, notes } = writing;
  const { event: say } = calendarWords(format.reader.language);
  const { name, id } = run.zone.zone;
  const starts = startsOf(run, writing);
  const times = starts.map((start) => clockText(start, writing));
  const note = notes.get(id)?.get(run.week)?.note;
  const [first = 0] = starts;
  const last = starts.at(-1) ?? first;
  return eventText(
    {
      uid: writing.uidOf({ zone: id, day: isoDate(run.day), kind: 'run' }),
      start: first,
      end: last + run.minutesPerCycle * MINUTE_MS,
      title: say.title(format, isolated(name), run.minutes),
      says: [
        say.run(format, run.minutes, run.litres),
        times.length > 1 ? say.cycles(format, run.minutesPerCycle, times) : say.start(times[0] ?? ''),
        say.clock(choice.timeZone),
        ...(run.open.length > 0 ? [say.open(format, namesOf(run.open))] : []),
        ...(run.shut.length > 0 ? [say.shut(format, namesOf(run.shut))] : []),
        ...(run.fits ? [] : [say.tooLong]),
        ...(note === undefined ? [] : [note]),
        '',
        ...writing.cautions,
      ],
    },
    choice,
  );
}

function turnEvent(run: WateringRun, writing: Writing): string {
  const { format, choice } = writing;
  const { turn: say, event } = calendarWords(format.reader.language);
  const { name, id } = run.zone.zone;
  const [start = 0] = startsOf(run, writing);
  return eventText(
    {
      uid: writing.uidOf({ zone: id, day: isoDate(run.day), kind: 'turn' }),
      start: start - TURN_MINUTES * MINUTE_MS,
      end: start,
      title: say.title(isolated(name)),
      says: [
        say.before(clockText(start, writing)),
        ...(run.toOpen.length > 0 ? [event.open(format, namesOf(run.toOpen))] : []),
        ...(run.toShut.length > 0 ? [event.shut(format, namesOf(run.toShut))] : []),
        event.clock(choice.timeZone),
        '',
        ...writing.cautions,
      ],
    },
    choice,
  );
}

const namesOf = (plantings: readonly PlantingSeason[]): string[] =>
  plantings.map(({ planting }) => isolated(planting.name));

/** Instants of a run's cycles. The window opens by the clock; from then on minutes pass as they do. */
function startsOf(run: WateringRun, { clock, choice }: Writing): readonly number[] {
  const opening = clock.instantOf(run.day, choice.opensAt);
  return run.startMinutes.map((minute) => opening + Math.round(minute * 60) * 1000);
}

function clockText(instant: number, { choice, format }: Writing): string {
  return formatClock(instant, choice.timeZone, format.reader.locale);
}
