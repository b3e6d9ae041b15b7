/** Read back by ical.js, and by icalendar of Python with the clocks of its own zoneinfo (PEP 615): neither shares code with the kit. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { isoDate } from '../../../src/engine/calendar.ts';
import { openRunMask, plantingFigure } from '../../../src/engine/season/planting-week.ts';
import type { Season, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneRuns } from '../../../src/engine/season/zone-runs.ts';
import { type CalendarChoice, seasonToCalendar } from '../../../src/exchange/calendar/season-to-calendar.ts';
import { weekStarts } from '../../../src/explain/schedule/week-starts.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { hostileGarden } from '../../support/hostile-plan.ts';
import { ICAL } from '../../support/ical.ts';
import { icalendar, requireProgram } from '../../tools/find-program.ts';
import { projectRoot } from '../../tools/source-files.ts';
import { plan as mixedPlan, season as mixedSeason } from '../csv/mixed-season.ts';

interface Entry {
  readonly uid: string;
  /** Seconds since 1970. */
  readonly start: number;
  readonly end: number;
  readonly title: string;
  readonly says: string;
  readonly sequence: number;
}

type Moment = readonly [timeZone: string, day: string, minute: number];

function readByPython(files: readonly string[], moments: readonly Moment[]) {
  const script = join(projectRoot, 'test/exchange/calendar/read-calendars.py');
  const { stdout, stderr, status } = spawnSync(requireProgram(icalendar), [script], {
    input: JSON.stringify({ files, moments }),
    encoding: 'utf8',
    maxBuffer: 2 ** 29,
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as { files: Entry[][]; instants: number[] };
}

function readByIcal(text: string): Entry[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((each) => {
    const event = new ICAL.Event(each);
    return {
      uid: event.uid,
      start: event.startDate.toUnixTime(),
      end: event.endDate.toUnixTime(),
      title: event.summary,
      says: event.description,
      sequence: event.sequence,
    };
  });
}

/** Two that move their clocks in the north, one of them by the half hour in the south, and one that never does. */
const ZONES = ['America/New_York', 'Europe/Berlin', 'Australia/Lord_Howe', 'Asia/Kolkata'] as const;

const WRITTEN_AT = Date.UTC(2027, 2, 1, 12, 34, 56);

const choiceOf = (plan: Plan, timeZone: string): CalendarChoice => ({
  planName: plan.name,
  units: plan.units,
  timeZone,
  opensAt: computeSeason(plan).garden.supply.windowOpensAtMinute ?? 300,
  writtenAt: WRITTEN_AT,
});

/** What the week's list has to run: a line for each zone and day, with the day, minutes and cycles. */
function listed(season: Season): string[] {
  const { firstDay, weeks } = season.garden.span;
  return Array.from({ length: weeks }, (_, week) => week).flatMap((week) =>
    season.zones.flatMap((zone) =>
      zoneRuns(zone, week).flatMap(({ mask, minutes, cycles }) =>
        [0, 1, 2, 3, 4, 5, 6]
          .filter((day) => (mask >> day) & 1)
          .map((day) => `${isoDate(firstDay + 7 * week + day)} ${zone.zone.id} ${minutes.toFixed(6)} ${cycles}`),
      ),
    ),
  );
}

interface Written {
  readonly season: Season;
  readonly choice: CalendarChoice;
  readonly text: string;
  readonly entries: readonly Entry[];
}

let written: readonly Written[];
let byPython: ReturnType<typeof readByPython>;
let moments: readonly Moment[];
let year: Season;

beforeAll(() => {
  const plans = fc.sample(arbitraryPlan({ mostZones: 3, mostWeeks: 9 }), {
    numRuns: 200,
    seed: 21,
  });
  written = plans.map((plan, index) => {
    const season = computeSeason(plan);
    const choice = choiceOf(plan, ZONES[index % ZONES.length] as string);
    const text = seasonToCalendar(season, choice);
    return { season, choice, text, entries: readByIcal(text) };
  });
  moments = written.flatMap(({ season, choice }) => {
    const { firstDay, weeks } = season.garden.span;
    return Array.from(
      { length: 7 * weeks },
      (_, day): Moment => [choice.timeZone, isoDate(firstDay + day), choice.opensAt],
    );
  });
  byPython = readByPython(
    written.map(({ text }) => text),
    moments,
  );
  year = wholeYear();
});

describe('a season as a calendar', () => {
  it('is read alike by both readers, for 200 random plans', () => {
    written.forEach(({ entries }, index) => {
      expect(entries).toEqual(byPython.files[index]);
    });
  });

  it('has an entry for each zone and day of the week’s list, at the start times of the window by the garden’s clock', () => {
    let at = 0;
    let count = 0;
    for (const [index, { season, entries }] of written.entries()) {
      const opening = byPython.instants.slice(at, at + 7 * season.garden.span.weeks);
      at += opening.length;
      count += entries.length;
      const found = entries.map(({ uid, start, end, says }) => {
        const [, day = '', zone = ''] = /^(\d{4}-\d\d-\d\d)-run-(.*)-[0-9a-f]{16}@runnel$/.exec(uid) ?? [];
        const offset = Math.round((Date.parse(day) - Date.parse(isoDate(season.garden.span.firstDay))) / 86_400_000);
        const cycles = Number(/^(\d+)\s+cycles? of /m.exec(says)?.[1] ?? 1);
        const run = zoneRuns(season.zones.find((each) => each.zone.id === zone) as never, Math.floor(offset / 7)).find(
          ({ mask }) => (mask >> (offset % 7)) & 1,
        );
        const minutes = run?.minutes ?? Number.NaN;
        const { zones, opensAtMinute } = weekStarts(season, Math.floor(offset / 7));
        const starts = zones.get(zone)?.startMinutes ?? [];
        const first = starts[0] ?? Number.NaN;
        const last = starts[cycles - 1] ?? Number.NaN;
        expect(start).toBe((opening[offset] as number) + Math.round(60 * (first - opensAtMinute)));
        expect(Math.abs(end - start - 60 * (last - first + minutes / cycles))).toBeLessThan(2);
        return `${day} ${zone} ${minutes.toFixed(6)} ${cycles}`;
      });
      expect(found.toSorted(), `plan ${index}`).toEqual(listed(season).toSorted());
    }
    expect(count).toBeGreaterThan(1500);
  });

  it.each(ZONES)(
    'keeps to the garden’s clock through both of its moves in %s',
    (zone) => {
      const choice = choiceOf(mixedPlan, zone);
      const entries = readByIcal(seasonToCalendar(year, { ...choice, zones: new Set(['beds']) }));
      const { instants } = readByPython(
        [],
        entries.map(({ uid }): Moment => [zone, uid.slice(0, 10), choice.opensAt]),
      );
      const waited = entries.map(({ start }, index) => start - (instants[index] as number));
      expect(entries.length).toBeGreaterThan(100);
      expect(waited.every((seconds) => seconds >= 0 && seconds < 86_400)).toBe(true);
      // Clocks that move are an hour, or half of one, off UTC otherwise for a part of the year.
      const clock = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'medium' });
      const offsets = entries.map(({ start }) => offsetOf(clock, start));
      const moves = offsets.filter((offset, index) => index > 0 && offset !== offsets[index - 1]).length;
      expect(moves).toBe(zone === 'Asia/Kolkata' ? 0 : 2);
    },
    60_000,
  );

  it('has no line over 75 octets, and ends every line as the standard asks', () => {
    for (const { text } of written) {
      const lines = text.split('\r\n');
      expect(lines.pop()).toBe('');
      expect(lines.every((line) => !/[\r\n]/.test(line))).toBe(true);
      expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
    }
  });

  it('keeps its ids from save to save, and counts each save on', () => {
    for (const { season, choice, entries: before } of written.slice(0, 40)) {
      const after = readByIcal(seasonToCalendar(season, { ...choice, writtenAt: WRITTEN_AT + 61_000 }));
      expect(after.map(({ uid }) => uid)).toEqual(before.map(({ uid }) => uid));
      expect(new Set(before.map(({ uid }) => uid)).size).toBe(before.length);
      after.forEach(({ sequence }, index) => {
        expect(sequence).toBeGreaterThan(before[index]?.sequence as number);
        expect(sequence).toBeLessThan(2 ** 31);
      });
    }
  });
});

/** A whole year in which the beds run on every watering day. */
function wholeYear(): Season {
  const firstDay = Date.parse('2027-01-04') / 86_400_000;
  const days = Array.from({ length: 53 * 7 }, (_, day) => isoDate(firstDay + day));
  const byHand = Object.fromEntries(days.filter((_, day) => day % 7 === 0).map((day) => [day, { minutes: 60 }]));
  return computeSeason({
    ...mixedPlan,
    season: { firstDay: '2027-01-04', weeks: 53 },
    log: {},
    choices: { beds: byHand },
  });
}

/** Minutes by which clocks of a place are ahead of UTC. */
function offsetOf(shownIn: Intl.DateTimeFormat, seconds: number): number {
  const shown = shownIn.format(seconds * 1000);
  return Math.round((Date.parse(`${shown.replace(' ', 'T')}Z`) - seconds * 1000) / 60_000);
}

/** Days on which a shut-off of the zone stands otherwise than at its run before. */
function daysOfTurns(zone: ZoneSeason): string[] {
  const days = Array.from({ length: 7 * zone.weeks }, (_, day) => day).filter((day) =>
    zoneRuns(zone, Math.floor(day / 7)).some(({ mask }) => (mask >> (day % 7)) & 1),
  );
  const turned = zone.plantings
    .filter(({ planting }) => planting.hasShutOff)
    .flatMap((planting) => {
      const there = days.filter((day) => plantingFigure(planting, 'groundDays', Math.floor(day / 7)) > 0);
      const isOpen = (day: number) => (openRunMask(zone, planting, Math.floor(day / 7)) >> (day % 7)) & 1;
      return there.filter((day, at) => at === 0 || isOpen(day) !== isOpen(there[at - 1] as number));
    });
  const dayOf = (day: number) => isoDate(mixedSeason.garden.span.firstDay + day);
  return [...new Set(turned)].map((day) => `${dayOf(day)}-turn-${zone.zone.id}`);
}

describe('what a calendar holds', () => {
  const choice = { ...choiceOf(mixedPlan, 'America/Los_Angeles') };

  it('says minutes, cycles, shut-offs, the note of the week and the cautions', () => {
    const noted = computeSeason({
      ...mixedPlan,
      choices: { beds: { '2027-06-07': { note: 'Look at the tomatoes; then, water.' } } },
    } as Plan);
    const zone = noted.zones.find((each) => each.zone.id === 'beds') as (typeof noted.zones)[number];
    expect(zoneRuns(zone, 9).length).toBeGreaterThan(0);
    const entries = readByIcal(seasonToCalendar(noted, { ...choice, weeks: { first: 9, last: 9 } }));
    const ofBeds = entries.filter(({ uid }) => uid.includes('-beds-'));
    expect(ofBeds.length).toBeGreaterThan(0);
    for (const { title, says } of ofBeds) {
      expect(title).toMatch(/^Water Beds: [\d.,]+\u00a0min$/);
      expect(says).toContain('Look at the tomatoes; then, water.');
      expect(says).toContain('America/Los_Angeles');
      expect(says).toContain('Local codes, watering restrictions');
    }
  });

  it('is of the weeks and zones that are chosen', () => {
    const zones = new Set([mixedSeason.zones[0]?.zone.id as string]);
    const all = readByIcal(seasonToCalendar(mixedSeason, choice));
    const some = readByIcal(seasonToCalendar(mixedSeason, { ...choice, zones, weeks: { first: 8, last: 10 } }));
    const first = isoDate(mixedSeason.garden.span.firstDay + 56);
    const after = isoDate(mixedSeason.garden.span.firstDay + 77);
    const [id] = zones;
    expect(some.length).toBeGreaterThan(0);
    expect(some).toEqual(
      all.filter(({ uid }) => uid.slice(0, 10) >= first && uid.slice(0, 10) < after && uid.includes(`-${id}-`)),
    );
  });

  it('tells the turns of shut-offs where one stands otherwise than at the run before, and ends each when its zone runs', () => {
    const runs = new Map(readByIcal(seasonToCalendar(mixedSeason, choice)).map((entry) => [entry.uid, entry]));
    const turns = readByIcal(seasonToCalendar(mixedSeason, { ...choice, contents: 'turns' }));
    const expected = mixedSeason.zones.flatMap(daysOfTurns);
    expect(expected.length).toBeGreaterThan(3);
    expect(turns.map(({ uid }) => uid.replace(/-[0-9a-f]{16}@runnel$/, '')).toSorted()).toEqual(expected.toSorted());
    for (const { uid, end, start } of turns) {
      expect(end).toBe(runs.get(uid.replace('-turn-', '-run-'))?.start);
      expect(end - start).toBe(15 * 60);
    }
  });

  it('rings when it is asked to', () => {
    const text = seasonToCalendar(mixedSeason, { ...choice, weeks: { first: 9, last: 9 }, alarmMinutes: 15 });
    const alarms = new ICAL.Component(ICAL.parse(text))
      .getAllSubcomponents('vevent')
      .map((event) => String(event.getFirstSubcomponent('valarm')?.getFirstPropertyValue('trigger')));
    expect(new Set(alarms)).toEqual(new Set(['-PT15M']));
    expect(seasonToCalendar(mixedSeason, choice)).not.toContain('VALARM');
  });

  it('takes names that mean something to a calendar for names', () => {
    const plan = hostileGarden();
    const text = seasonToCalendar(computeSeason(plan), choiceOf(plan, 'UTC'));
    const [entries = []] = readByPython([text], []).files;
    expect(readByIcal(text)).toEqual(entries);
    for (const zone of computeSeason(plan).zones) {
      const runs = Array.from({ length: zone.weeks }, (_, week) => zoneRuns(zone, week)).flat();
      if (runs.length > 0) expect(entries.some(({ uid }) => uid.includes(`-${zone.zone.id}-`))).toBe(true);
    }
  });

  it('throws for a time zone that is none', () => {
    expect(() => seasonToCalendar(mixedSeason, { ...choice, timeZone: 'Mars/Olympus' })).toThrow(RangeError);
  });
});
