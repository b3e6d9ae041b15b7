/**
 * Whatever is handed over, nothing throws, neither the calculation nor what is said of it (`reports.ts`); nothing takes longer than a
 * second, no figure is no number, and every refusal names its place. FUZZ_TIMES makes the run so many times as large, FUZZ_SEED
 * another one; `npm run fuzz` is the full size.
 */
import { deflateRawSync, gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Season } from '../../src/engine/season/season.ts';
import { describeRowFault } from '../../src/exchange/csv/describe-row-fault.ts';
import type { RowFault } from '../../src/exchange/csv/imported.ts';
import { seasonToCsv } from '../../src/exchange/csv/season-to-csv.ts';
import { tableFromCsv } from '../../src/exchange/csv/table-from-csv.ts';
import { linkTo, withoutYears } from '../../src/exchange/link/link-to.ts';
import { LinkError, planTextFromLink } from '../../src/exchange/link/plan-text-from-link.ts';
import { readDailyWeather } from '../../src/exchange/weather-file/read-daily-weather.ts';
import { describeEdit } from '../../src/language/describe-edit.ts';
import { describeFault } from '../../src/language/describe-fault.ts';
import { readerFor } from '../../src/language/reader.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { type EditResult, tryEdit } from '../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import { checkPlan, type ReadResult } from '../../src/plan/reading/check-plan.ts';
import type { Fault } from '../../src/plan/reading/fault.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { allFigures } from '../laws/weeks-of.ts';
import { arbitraryEdit } from '../support/arbitrary-edit.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { metricGarden, mixedGarden, oneBed } from '../support/small-plans.ts';
import { type Chance, chanceOf, garbled, mangle } from './mangled.ts';
import { expectReports } from './reports.ts';

const TIMES = Number(process.env['FUZZ_TIMES'] ?? 1);
const SEED = Number(process.env['FUZZ_SEED'] ?? 17);
const LONGEST_MS = 1000;

const reader = readerFor('en-US', 'us');
const plans: readonly Plan[] = [
  ...[oneBed(), mixedGarden(), metricGarden()],
  ...fc.sample(arbitraryPlan({ mostZones: 3, mostPlantings: 3, mostWeeks: 30 }), { numRuns: 40, seed: SEED }),
];

/** How often each thing came about, to show that the run reaches what it is about. */
const seen: Record<string, number> = {};
const count = (what: string) => {
  seen[what] = (seen[what] ?? 0) + 1;
};

/** One trial after another, each with chance of its own; a throw and a trial that takes too long name its number. */
async function each(trials: number, trial: (chance: Chance) => void | Promise<void>): Promise<void> {
  for (let number = 0; number < trials * TIMES; number++) {
    // Time of this process alone: others may keep the machine busy.
    const before = process.cpuUsage();
    const began = performance.now();
    try {
      await trial(chanceOf(SEED * 1_000_003 + number));
    } catch (error) {
      throw new Error(`trial ${number} of seed ${SEED}: ${String(error)}`, { cause: error });
    }
    const { user, system } = process.cpuUsage(before);
    const ms = Math.min(performance.now() - began, (user + system) / 1000);
    if (ms > LONGEST_MS) throw new Error(`trial ${number} of seed ${SEED} took ${ms} ms`);
  }
}

function expectPlaces(faults: readonly Fault[]): void {
  expect(faults.length).toBeGreaterThan(0);
  for (const fault of faults) {
    const { where, value, expected } = describeFault(fault, reader);
    if (where === '' || value === '' || expected === '') throw new Error(`nothing is said of ${JSON.stringify(fault)}`);
    // An edit of plain JavaScript may name no planting: “undefined” is what it names.
    if (/(?<!“)undefined/.test(`${where}${value}${expected}`)) throw new Error(`${where}: ${value}; ${expected}`);
  }
}

function expectNumbers(season: Season): void {
  for (const block of allFigures(season)) {
    for (const figure of block) if (!Number.isFinite(figure)) throw new Error(`a figure is ${figure}`);
  }
}

function expectAnswer(result: ReadResult | EditResult, of: string, chance: Chance): void {
  count(`${of} ${result.ok ? 'taken' : 'refused'}`);
  if (!result.ok) {
    expectPlaces(result.faults);
    return;
  }
  const { plan } = result;
  const season = computeSeason(plan);
  expectNumbers(season);
  expectReports({ plan, season, reader, chance, count });
}

it('a plan', { timeout: 600_000 * TIMES }, async () => {
  await each(2000, (chance) => {
    const plan: object = { ...structuredClone(chance.pick(plans)), version: chance.nat(3) === 0 ? 1 : 2 };
    if (chance.nat(4) > 0) mangle(plan, chance);
    const text = JSON.stringify(plan);
    expectAnswer(chance.nat(3) === 0 ? readPlan(garbled(text, chance)) : readPlan(text), 'plan', chance);
    if (chance.nat(8) === 0) expectAnswer(checkPlan(plan), 'plan as an object', chance);
  });
});

const TABLES: readonly string[] = [
  'Date,Rain\n2027-06-14,0.5\n2027-06-15,0\n2027-06-16,1.25\n',
  'Date;Rain (mm);Low;High\n14/06/2027;12,5;8,1;21\n15/06/2027;0,8;;\n',
  '\ufeff"Station";"Date";"Rainfall, inches"\r\n"a;b";"2027-06-14";"0.5"\r\n',
  'day\ttmin\ttmax\n2027-06-14T00:00\t50\t70\n2027-06-15T00:00\t51\t71\n',
  'Zone,2027-06-07,2027-06-14\nBeds,45,"1,204"\n',
  ...[oneBed(), mixedGarden()].map((plan) =>
    seasonToCsv(computeSeason(plan), { units: 'us', measures: ['volume', 'minutes', 'rain'], withPlantings: true }),
  ),
];

function expectLines(faults: readonly RowFault[]): void {
  for (const fault of faults) expect(describeRowFault(fault, 'en-US')).toMatch(/^Line [1-9]/);
}

it('a table', { timeout: 600_000 * TIMES }, async () => {
  const of = [oneBed(), mixedGarden()].map((plan) => ({ plan, season: computeSeason(plan) }));
  await each(300, (chance) => {
    const text = garbled(chance.pick(TABLES), chance);
    const against = chance.pick(of);
    const preview = tableFromCsv(text, against);
    const weather = readDailyWeather(text, chance.pick(['us', 'metric']));
    count(`table of ${preview.kind}`);
    const readings = weather.days.flatMap((day) => [day.rainMm, day.minTemperatureC, day.maxTemperatureC]);
    expect(readings.every((reading) => reading === undefined || Number.isFinite(reading))).toBe(true);
    expectLines(weather.faults);
    if (preview.kind === undefined) return;
    expectLines(preview.faults);
    expect(preview.changes.every(({ to }) => Number.isFinite(to))).toBe(true);
    if (preview.edit !== undefined) expectAnswer(tryEdit(against.plan, preview.edit), 'edit of a table', chance);
  });
});

it('an edit', { timeout: 600_000 * TIMES }, async () => {
  const makers = fc.sample(arbitraryEdit, { numRuns: 200, seed: SEED });
  await each(500, (chance) => {
    const plan = chance.pick(plans);
    const edit = chance.pick(makers)(plan);
    // As one comes from elsewhere: no functions, nothing that is undefined.
    const other = JSON.parse(JSON.stringify(edit)) as Edit & object;
    if (chance.nat(3) > 0) mangle(other, chance);
    const result = tryEdit(plan, other);
    expectAnswer(result, 'edit', chance);
    if (result.ok) {
      expect(describeEdit(plan, other, reader)).not.toBe('');
      expect(readPlan(JSON.stringify(result.plan))).toMatchObject({ ok: true });
    }
  });
});

it('a link', { timeout: 600_000 * TIMES }, async () => {
  const links = await Promise.all(plans.slice(0, 12).map((plan) => linkTo(plan, 'https://garden.example/')));
  const fragment = (bytes: Buffer) => `#runnel=${bytes.toString('base64url')}`;
  await each(200, async (chance) => {
    const index = chance.nat(links.length);
    const own = JSON.stringify(plans[index] && withoutYears(plans[index]));
    const way = chance.nat(4);
    const link =
      way === 0
        ? fragment(deflateRawSync(garbled(own, chance)))
        : way === 1
          ? fragment(gzipSync(garbled(own, chance)))
          : garbled(links[index] ?? '', chance);
    const text = await planTextFromLink(link).catch((error: unknown) => {
      if (!(error instanceof LinkError)) throw error;
      count(`link ${error.code}`);
      return undefined;
    });
    if (text === undefined) return;
    // What was changed on its way never is another plan.
    if (way > 1) expect(text).toBe(own);
    expectAnswer(readPlan(text), 'plan of a link', chance);
  });
});

it('reaches what is taken and what is refused', () => {
  const atLeast = {
    ...{ 'plan taken': 300, 'plan refused': 1000, 'edit taken': 80, 'edit refused': 200 },
    ...{ 'edit of a table taken': 30, 'table of minutes': 60, 'table of rain': 20, 'table of weather': 20 },
    ...{ notice: 500, 'trace step': 2000, 'remedies searched': 15, remedy: 5, 'mix searched': 10 },
    ...{ 'link damaged': 50, 'plan of a link taken': 3, 'plan of a link refused': 50 },
  };
  for (const [what, times] of Object.entries(atLeast)) expect(seen[what], what).toBeGreaterThan(times * TIMES * 0.9);
});
