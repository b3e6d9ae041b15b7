/** A table so long that it is read in steps. */
import { describe, expect, it } from 'vitest';
import { dayNumber, isoDate } from '../../../src/engine/calendar.ts';
import { csvSteps } from '../../../src/exchange/csv/table-from-csv.ts';
import { weatherFileSteps } from '../../../src/exchange/weather-file/read-weather-file.ts';
import { plan, season } from './mixed-season.ts';

const against = { plan, season };

/** None of °C. */
const DEGREES = 71;

describe('a long table', () => {
  const ROWS = 60_000;
  /** Each twice. */
  const days = Array.from({ length: ROWS }, (_, row) => isoDate(dayNumber('1990-01-01') + (row % (ROWS / 2))));

  it.each([
    ['of weather', `Date,Rain (in)\r\n${days.join(',0.5\r\n')},0.5`, 'date-twice', ROWS / 2],
    ['of minutes', `Zone,2027-04-12\n${'Beds,45\n'.repeat(ROWS)}`, 'zone-twice', ROWS - 1],
    ['of names in lines', `Zone,2027-04-12\n${'"Beds\nby a ""wall""",45\n'.repeat(ROWS)}`, 'zone-unknown', ROWS],
  ])('%s is read in steps, none of which takes long', (_name, text, code, faults) => {
    const { times, result } = timed(csvSteps(text, against));
    expect(result).toMatchObject({ rows: ROWS, faults: { length: faults } });
    expect('faults' in result && result.faults.every((fault) => fault.code === code)).toBe(true);
    expectSteps(times, ROWS);
  });

  it.each([
    ['of a log', 'log', `Date,Rain,Low,High\n${days.map((day) => `${day},0.5,50,${DEGREES}\n`).join('')}`],
    [
      'of an office',
      'ncei-search',
      `STATION,NAME,DATE,PRCP,TMAX,TMIN\n${days.map((day) => `S,N,${day},0.5,${DEGREES},50\n`).join('')}`,
    ],
    ['of a service', 'open-meteo-csv', `time,precipitation_sum (mm)\n${days.map((day) => `${day},1\n`).join('')}`],
  ])('%s is a record in such steps', (_name, kind, text) => {
    const { times, result } = timed(weatherFileSteps(text));
    expect(result).toMatchObject({ kind, record: { dayCount: ROWS / 2 } });
    expectSteps(times, ROWS);
  });
});

/** Processor time of each step, ms, and what came of them all. */
function timed<Result>(steps: Generator<unknown, Result>): {
  readonly times: readonly number[];
  readonly result: Result;
} {
  const times: number[] = [];
  for (;;) {
    const began = process.cpuUsage();
    const step = steps.next();
    const { user, system } = process.cpuUsage(began);
    times.push((user + system) / 1000);
    if (step.done === true) return { times, result: step.value };
  }
}

function expectSteps(times: readonly number[], rows: number): void {
  expect(times.length).toBeGreaterThan(rows / 1000);
  const whole = times.reduce((sum, ms) => sum + ms, 0);
  expect(Math.max(...times)).toBeLessThan(whole / 3);
}
