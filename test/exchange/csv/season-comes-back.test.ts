/** What was written of a season comes back into a plan that has nothing of it: minutes, rain, reference ET, where runs come from, notes. */
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { ALL_FIGURES } from '../../../src/exchange/csv/season-figures.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { tableFromCsv, tableFromSheets } from '../../../src/exchange/csv/table-from-csv.ts';
import { seasonToWorkbook } from '../../../src/exchange/workbook/season-to-workbook.ts';
import { workbookTexts } from '../../../src/exchange/workbook/workbook-texts.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { plan as mixed } from './mixed-season.ts';

const bare: Plan = { ...mixed, log: {}, choices: {} };
const kept: Plan = {
  ...bare,
  log: {
    weeks: { '2027-06-07': { rain: 0.75 }, '2027-06-21': { eto: 1.9 } },
    runs: { beds: { '2027-06-14': 40 } },
  },
  choices: {
    beds: { '2027-06-21': { minutes: 33, note: '=Look, "here"\nand there' }, '2027-06-28': { closed: true } },
  },
};
const season = computeSeason(kept);
const everything = { units: kept.units, measures: ALL_FIGURES, withPlantings: true, withRecords: true } as const;
const table = seasonToCsv(season, everything);
const against = { plan: bare, season: computeSeason(bare) };

/** Of the weeks in which the log and the choices say something. */
function logged({ log, choices }: Plan) {
  const { note, minutes } = choices?.['beds']?.['2027-06-21'] ?? {};
  return {
    rain: log?.weeks?.['2027-06-07']?.rain,
    eto: log?.weeks?.['2027-06-21']?.eto,
    run: log?.runs?.['beds']?.['2027-06-14'],
    closed: choices?.['beds']?.['2027-06-28']?.closed,
    minutes,
    note,
  };
}

const SAID = { rain: 0.75, eto: 1.9, run: 40, closed: true, minutes: 33, note: '=Look, "here"\nand there' };

describe('a season that was written', () => {
  it('comes back from CSV', () => {
    const read = tableFromCsv(table, against);
    if (read.kind === undefined || read.edit === undefined) throw new Error('nothing was read');
    expect(read.faults).toEqual([]);
    expect(read.edit).toMatchObject({ action: 'import-season' });
    const after = applyEdit(bare, read.edit);
    expect(logged(after)).toEqual(SAID);
    expect(tableFromCsv(table, { plan: after, season: computeSeason(after) })).toMatchObject({
      changes: [],
      faults: [],
    });
  });

  it('comes back from a workbook', async () => {
    const texts = await workbookTexts(await seasonToWorkbook(season, { planName: kept.name, units: kept.units }));
    const read = tableFromSheets(texts, against);
    if (read.kind === undefined || read.edit === undefined) throw new Error('nothing was read');
    expect(read.faults).toEqual([]);
    const after = applyEdit(bare, read.edit);
    const { rain, eto, ...others } = logged(after);
    const { rain: rainSaid, eto: etoSaid, ...othersSaid } = SAID;
    expect(others).toEqual(othersSaid);
    expect(rain).toBeCloseTo(rainSaid, 9);
    expect(eto).toBeCloseTo(etoSaid, 9);
    expect(tableFromSheets(texts, { plan: after, season: computeSeason(after) })).toMatchObject({
      changes: [],
      faults: [],
    });
  });

  it('is refused where a figure cannot be, and where days have readings of their own', () => {
    const { data } = Papa.parse<string[]>(table, { skipEmptyLines: true });
    const rain = data.find((row) => row[1] === '' && row[2] === 'Rain') as string[];
    rain[4] = 'much';
    rain[5] = '3';
    const days = Object.fromEntries(
      ['12', '13', '14', '15', '16', '17', '18'].map((day) => [`2027-04-${day}`, { rain: 0 }]),
    );
    const plan = { ...kept, log: { ...kept.log, days } };
    const read = tableFromCsv(Papa.unparse(data), { plan, season: computeSeason(plan) });
    expect(read).toMatchObject({
      faults: [
        { code: 'rain', value: 'much' },
        { code: 'read-by-day', value: '3' },
      ],
    });
    if (read.kind !== undefined) expect(read.changes.map(({ reading }) => reading)).not.toContain('weekRain');
  });

  it('is read in the units that its rows name', () => {
    const { data } = Papa.parse<string[]>(table, { skipEmptyLines: true });
    const rain = data.find((row) => row[1] === '' && row[2] === 'Rain') as string[];
    rain[3] = 'mm';
    for (let week = 0; week < 30; week += 1) rain[4 + week] = week === 3 ? '25.4' : '';
    const read = tableFromCsv(Papa.unparse(data), { plan: kept, season });
    expect(read).toMatchObject({ faults: [], changes: [{ reading: 'weekRain', day: '2027-04-26' }] });
    if (read.kind !== undefined) expect(read.changes[0]?.to).toBeCloseTo(1, 12);
  });
});
