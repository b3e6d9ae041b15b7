/**
 * Workbooks as LibreOffice Calc writes them: a table of the season is opened there and saved as .xlsx, as a person would. Further ones as
 * another writer makes them.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { writeXlsx } from 'hucre/xlsx';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ALL_FIGURES } from '../../../src/exchange/csv/season-figures.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { tableFromCsv } from '../../../src/exchange/csv/table-from-csv.ts';
import { WorkbookError, workbookTexts } from '../../../src/exchange/workbook/workbook-texts.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { libreOffice, requireProgram } from '../../tools/find-program.ts';
import { plan, season } from '../csv/mixed-season.ts';

const ZONES = ['America/Los_Angeles', 'UTC', 'Pacific/Auckland'] as const;
const before = process.env['TZ'];
let folder: string;

/** Opens CSV files in LibreOffice, English, with a comma between columns and UTF-8, and saves each as .xlsx. */
function savedByLibreOffice(tables: Readonly<Record<string, string>>): (name: string) => Uint8Array {
  for (const [name, text] of Object.entries(tables)) writeFileSync(join(folder, `${name}.csv`), `\uFEFF${text}`);
  const { status, stderr } = spawnSync(
    requireProgram(libreOffice),
    [
      `-env:UserInstallation=file://${folder}/profile`,
      '--headless',
      '--infilter=CSV:44,34,76,1,,1033,false,true',
      '--convert-to',
      'xlsx',
      '--outdir',
      folder,
      ...Object.keys(tables).map((name) => join(folder, `${name}.csv`)),
    ],
    { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(stderr);
  return (name) => new Uint8Array(readFileSync(join(folder, `${name}.xlsx`)));
}

const everything = { units: plan.units, measures: ALL_FIGURES, withPlantings: true, withRecords: true } as const;

/** As a spreadsheet saves them, each cell by what it holds. */
async function workbookOf(sheets: Readonly<Record<string, readonly (readonly unknown[])[]>>): Promise<Uint8Array> {
  return writeXlsx({
    sheets: Object.entries(sheets).map(([name, rows]) => ({ name, rows: rows.map((row) => [...row]) as never })),
  });
}

/** Numbers as numbers. */
function cellsOf(text: string): (string | number)[][] {
  return Papa.parse<string[]>(text, { skipEmptyLines: true }).data.map((row) =>
    row.map((cell) => (/^\d+(\.\d+)?$/.test(cell) ? Number(cell) : cell)),
  );
}

let saved: (name: string) => Uint8Array;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'runnel-workbooks-'));
  const table = seasonToCsv(season, everything);
  const rows = Papa.parse<string[]>(table, { skipEmptyLines: true }).data;
  const minutes = rows.find((row) => row[0] === 'Beds' && row[1] === '' && row[2] === 'Minutes to run') as string[];
  minutes[4 + 20] = '77.5';
  saved = savedByLibreOffice({
    season: table,
    changed: Papa.unparse(rows),
    rain: 'Date,Rain (in)\r\n2027-05-01,0.25\r\n2027-05-02,0\r\n2027-10-31,1.5\r\n',
    weather: 'Date,Low (°F),High (°F)\r\n5/14/2027,48,71\r\n5/15/2027,50,74\r\n',
  });
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  if (before === undefined) delete process.env['TZ'];
  else process.env['TZ'] = before;
});

describe.each(ZONES)('a workbook that LibreOffice saved, read in %s', (zone) => {
  beforeAll(() => {
    process.env['TZ'] = zone;
  });

  it('changes nothing where nothing was changed', async () => {
    const [text = ''] = await workbookTexts(saved('season'));
    expect(tableFromCsv(text, { plan, season })).toMatchObject({ kind: 'minutes', asked: [], changes: [], faults: [] });
  });

  it('changes the one figure that was changed', async () => {
    const [text = ''] = await workbookTexts(saved('changed'));
    expect(tableFromCsv(text, { plan, season })).toMatchObject({
      faults: [],
      changes: [{ reading: 'minutes', zone: 'Beds', day: '2027-08-23', written: 77.5, to: 78 }],
    });
  });

  it('has the days of a rain log and of daily weather, whichever way they were typed', async () => {
    const [rain = ''] = await workbookTexts(saved('rain'));
    expect(tableFromCsv(rain, { plan, season })).toMatchObject({
      kind: 'rain',
      faults: [],
      changes: [
        { day: '2027-05-01', to: 0.25 },
        { day: '2027-05-02', to: 0 },
        { day: '2027-10-31', to: 1.5 },
      ],
    });
    const [weather = ''] = await workbookTexts(saved('weather'));
    expect(tableFromCsv(weather, { plan, season })).toMatchObject({
      kind: 'weather',
      faults: [],
      changes: [
        { reading: 'minTemperature', day: '2027-05-14', to: 48 },
        { reading: 'maxTemperature', day: '2027-05-14', to: 71 },
        { reading: 'minTemperature', day: '2027-05-15', to: 50 },
        { reading: 'maxTemperature', day: '2027-05-15', to: 74 },
      ],
    });
  });
});

describe('a workbook', () => {
  it('reports no change of what was written, for 200 random plans, a sheet each', async () => {
    const plans = fc.sample(arbitraryPlan({ mostZones: 3, mostWeeks: 12 }), { numRuns: 200, seed: 21 }).map((drawn) => {
      // Two zones of one name cannot be told apart, and are refused.
      const zones = drawn.zones.map((zone, at) => ({ ...zone, name: `${at} ${zone.name}`.slice(0, 120) }));
      return { ...drawn, zones };
    });
    const whole = plans.filter(({ zones }) => zones.length > 0);
    const seasons = whole.map((each) => computeSeason(each));
    const tables = seasons.map((each, at) =>
      cellsOf(seasonToCsv(each, { ...everything, units: whole[at]?.units ?? 'us' })),
    );
    for (let first = 0; first < whole.length; first += 20) {
      const sheets = tables.slice(first, first + 20).map((rows, at) => [`Plan ${first + at}`, rows] as const);
      const texts = await workbookTexts(await workbookOf(Object.fromEntries(sheets)));
      expect(texts.length).toBe(sheets.length);
      texts.forEach((text, at) => {
        const read = tableFromCsv(text, { plan: whole[first + at] ?? plan, season: seasons[first + at] });
        expect(read).toMatchObject({ kind: 'minutes', asked: [], changes: [], faults: [] });
      });
    }
    expect(whole.length).toBeGreaterThan(120);
  });

  it('has its sheets in order, without those that are empty, and names as they were typed', async () => {
    const names = ['=1+1', '+1', "'quoted", '<b>bold</b>', 'a,"b"\nc', 'ערוגה', '👩‍🌾', ' blanks '];
    const file = await workbookOf({
      Empty: [],
      Names: names.map((name) => [name]),
      Other: [['Zone'], [null, 12.5, true]],
    });
    const [first = '', second = ''] = await workbookTexts(file);
    expect(Papa.parse<string[]>(first).data.flat()).toEqual(names);
    expect(Papa.parse<string[]>(second).data).toEqual([['Zone'], ['', '12.5', 'true']]);
  });

  it.each([
    ['a text', new TextEncoder().encode('Zone,2027-04-05\n')],
    ['an archive of something else', new Uint8Array([0x50, 0x4b, 0x05, 0x06, ...Array<number>(18).fill(0)])],
    ['half a file', undefined],
  ])('is refused where it is %s', async (_, bytes) => {
    await expect(workbookTexts(bytes ?? saved('season').slice(0, 3000))).rejects.toThrow(WorkbookError);
  });
});
