/** The workbook as a spreadsheet computes it. */
import { beforeAll, describe, expect, it } from 'vitest';
import { runThrough } from '../../../src/engine/run-through.ts';
import { times } from '../../../src/exchange/workbook/formula.ts';
import { workbookSteps } from '../../../src/exchange/workbook/season-to-workbook.ts';
import {
  type CellContent,
  formula,
  inSheet,
  mine,
  type SheetContent,
  sheetName,
  text,
  type WorkbookContent,
} from '../../../src/exchange/workbook/sheet-content.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { DEMO_PLANS } from '../../support/demo-plans.ts';
import { oneBed } from '../../support/small-plans.ts';
import { formulaCount, type Recalculated, recalculated, unlike } from './recalculated.ts';

const contentOf = (plan: Plan, today?: number): WorkbookContent =>
  runThrough(workbookSteps(computeSeason(plan), { planName: plan.name, units: plan.units, today }));

const [demo] = DEMO_PLANS as [Plan, ...Plan[]];
const written = contentOf(demo);

/** 120 sq ft of tomatoes, with half an inch of rain in the second of four weeks. */
const small = oneBed({ log: { days: { '2027-06-16': { rain: 0.5 } } } });

function named({ sheets }: WorkbookContent, name: string): SheetContent {
  const sheet = sheets.find((each) => each.name === name);
  if (sheet === undefined) throw new Error(name);
  return sheet;
}

const words = (cell: CellContent): string => (cell !== undefined && 'text' in cell ? cell.text : '');

/** Row, from 0, of a measure of the first zone or planting that has it. */
const rowOf = (sheet: SheetContent, measure: string, zone?: string): number =>
  sheet.rows.findIndex((row) => words(row[2]) === measure && (zone === undefined || words(row[0]) === zone));

const FIRST_WEEK = 8;
/** Rain is changed in the second week. */
const CHANGED = FIRST_WEEK + 1;
const MORE_INCHES = 0.2;

/** The same workbook after a person has typed more rain. */
function withMoreRain(content: WorkbookContent): WorkbookContent {
  const weather = named(content, 'Weather');
  const at = rowOf(weather, 'Rain');
  const changed = (cell: CellContent): CellContent =>
    cell !== undefined && 'value' in cell ? { ...cell, value: cell.value + MORE_INCHES } : cell;
  const rows = weather.rows.map((row, index) =>
    row.map((cell, column) => (index === at && column === CHANGED ? changed(cell) : cell)),
  );
  return { ...content, sheets: content.sheets.map((sheet) => (sheet === weather ? { ...sheet, rows } : sheet)) };
}

const HOSTILE = [
  '=HYPERLINK("http://example.org","x")',
  'A name of thirty-one letters, so',
  '🥕🍅 carrots & <tomatoes>',
  'חדר הגינה',
  "'=1+1",
  '_x0041_ bed',
  '#REF!',
  '[Beds]: *which* / ? \\',
  "O'Neill's bed'",
];

/** Sheets that are called so, with the name in a cell; the last one adds up a cell of each. */
function hostile(): WorkbookContent {
  const names: string[] = [];
  for (const each of HOSTILE) names.push(sheetName(each, names));
  const frozen = { rows: 1, columns: 1 };
  const sheets = names.map(
    (name, at): SheetContent => ({
      name,
      widths: [20],
      frozen,
      rows: [[text(HOSTILE[at] as string)], [mine(at + 1, 'count')]],
    }),
  );
  const sums = names.map((name, at): CellContent[] => [
    formula(times({ text: `${inSheet(name)}$A$2`, value: at + 1 }, { text: '10', value: 10 }), 'count'),
  ]);
  return { title: HOSTILE[0] as string, sheets: [...sheets, { name: 'Sum', widths: [9], frozen, rows: sums }] };
}

const withNames: Plan = {
  ...demo,
  zones: demo.zones.map((zone, at) => ({
    ...zone,
    name: HOSTILE[at] as string,
    plantings: zone.plantings.map((planting) => ({ ...planting, name: HOSTILE[at] as string })),
  })),
};

describe('a workbook opened in LibreOffice', () => {
  const one = contentOf(small);
  const names = contentOf(withNames);
  let open: (name: string) => Recalculated;

  beforeAll(async () => {
    open = await recalculated({ demo: written, one, rain: withMoreRain(one), names, sheets: hostile() });
  });

  it('has every formula come to the result that stands beside it', () => {
    expect(formulaCount(written)).toBeGreaterThan(3000);
    expect(unlike(written, open('demo'))).toEqual([]);
    expect(unlike(one, open('one'))).toEqual([]);
  });

  it('moves what hangs on the rain of a week, and nothing else', () => {
    const before = open('one');
    const after = open('rain');
    const moved = (sheet: string, row: number, column: number) =>
      Number(after.get(sheet)?.[row]?.[column]) - Number(before.get(sheet)?.[row]?.[column]);
    const plantings = named(one, 'Plantings');
    const fact = (measure: string, column: number) =>
      Number(before.get('Plantings')?.[rowOf(plantings, measure)]?.[column]);
    const share = fact('Share of rain that counts', CHANGED);
    const efficiency = fact('Irrigation efficiency', 5);
    const flow = fact('Flow while it runs', CHANGED);
    expect(share).toBeGreaterThan(0.3);
    // 0.2 in on 120 sq ft: 0.2 x 120 x 144 = 3456 cubic inches, of which 231 are a gallon; the roots keep a share of it.
    const kept = (3456 / 231) * share;
    const at = (measure: string) => moved('Plantings', rowOf(plantings, measure), CHANGED);
    expect(at('Rain counted')).toBeCloseTo(kept, 9);
    expect(at('Needed at the roots')).toBeCloseTo(-kept, 9);
    expect(at('Needed at the meter')).toBeCloseTo(-kept / efficiency, 9);
    expect(at('Time needed')).toBeCloseTo(-kept / efficiency / flow, 9);
    const season = named(one, 'Season');
    expect(moved('Season', rowOf(season, 'Time needed'), CHANGED)).toBeCloseTo(-kept / efficiency / flow, 9);
    expect(moved('Season', rowOf(season, 'Rain counted', 'All zones'), CHANGED)).toBeCloseTo(kept, 9);
    expect(moved('Season', rowOf(season, 'Water to apply', 'All zones'), CHANGED)).toBe(0);
    for (const week of [0, 1, 2, 3]) {
      expect(moved('Supply', week + 1, 6)).toBeCloseTo(week < 1 ? 0 : kept, 9);
      if (week !== 1) expect(moved('Plantings', rowOf(plantings, 'Needed at the meter'), FIRST_WEEK + week)).toBe(0);
    }
  });

  it('keeps names as they are, in cells and in the names of sheets', () => {
    expect(unlike(names, open('names'))).toEqual([]);
    expect(unlike(hostile(), open('sheets'))).toEqual([]);
    for (const name of open('sheets').keys()) expect(name.length).toBeLessThanOrEqual(31);
  });
});

describe('the formulas of the season', () => {
  it('lie within a twentieth of the daily calculation', () => {
    const season = named(written, 'Season');
    const sums = season.rows.filter((row) => words(row[0]) === 'All zones');
    expect(sums).toHaveLength(3);
    const plants = named(written, 'Plantings').rows.at(-1);
    for (const row of [...sums, plants ?? []]) {
      const [here, there] = [row[5], row[6]].map((cell) => (cell !== undefined && 'value' in cell ? cell.value : NaN));
      expect(Math.abs((here as number) / (there as number) - 1)).toBeLessThan(0.05);
    }
    for (const row of named(written, 'Supply').rows.slice(1, -1)) {
      const [supplied, demand, suppliedByDay, demandByDay] = [6, 7, 10, 12].map((column) => {
        const cell = row[column];
        return cell !== undefined && 'value' in cell ? cell.value : Number.NaN;
      }) as [number, number, number, number];
      expect(Math.abs(supplied / suppliedByDay - 1)).toBeLessThan(0.05);
      expect(Math.abs(demand / demandByDay - 1)).toBeLessThan(0.05);
    }
  });
});
