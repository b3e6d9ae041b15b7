/** Workbooks as LibreOffice Calc computes them: every formula anew, whatever result stands in the file. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readXlsx } from 'hucre/xlsx';
import type { CellContent, SheetContent, WorkbookContent } from '../../../src/exchange/workbook/sheet-content.ts';
import { writeWorkbook } from '../../../src/exchange/workbook/write-workbook.ts';
import { libreOffice, requireProgram } from '../../tools/find-program.ts';

type Cells = readonly (readonly unknown[])[];

/** What stands in the cells, by the sheet's name. */
export type Recalculated = ReadonlyMap<string, Cells>;

/** LibreOffice's setting: 0 = a workbook is always computed when it is opened. */
const ALWAYS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** Said of the machine, not of a file. */
const NO_JAVA = 'failed to launch javaldx';

/** A result that no formula comes to, so that one which is not computed shows. */
const WRONG = -987_654_321;

const wrong = (cell: CellContent): CellContent => {
  if (cell !== undefined && 'result' in cell) return { ...cell, result: 'wrong' };
  return cell !== undefined && 'value' in cell && cell.formula !== undefined ? { ...cell, value: WRONG } : cell;
};

const withWrongResults = (content: WorkbookContent): WorkbookContent => ({
  ...content,
  sheets: content.sheets.map((sheet) => ({ ...sheet, rows: sheet.rows.map((row) => row.map(wrong)) })),
});

/** All in one run of LibreOffice, which takes a few seconds to start. Throws where it says anything against a file. */
export async function recalculated(
  workbooks: Readonly<Record<string, WorkbookContent>>,
): Promise<(name: string) => Recalculated> {
  const folder = mkdtempSync(join(tmpdir(), 'runnel-recalculated-'));
  try {
    mkdirSync(join(folder, 'profile', 'user'), { recursive: true });
    writeFileSync(join(folder, 'profile', 'user', 'registrymodifications.xcu'), ALWAYS);
    const files: string[] = [];
    for (const [name, content] of Object.entries(workbooks)) {
      files.push(join(folder, `${name}.xlsx`));
      writeFileSync(join(folder, `${name}.xlsx`), await writeWorkbook(withWrongResults(content)));
    }
    const options = [`-env:UserInstallation=file://${folder}/profile`, '--headless', '--convert-to', 'xlsx'];
    const run = spawnSync(requireProgram(libreOffice), [...options, '--outdir', join(folder, 'out'), ...files], {
      encoding: 'utf8',
    });
    const said = run.stderr.split('\n').filter((line) => line !== '' && !line.includes(NO_JAVA));
    if (run.status !== 0 || said.length > 0) throw new Error(said.join('\n'));
    const read = new Map<string, Recalculated>();
    for (const name of Object.keys(workbooks)) {
      const { sheets } = await readXlsx(new Uint8Array(readFileSync(join(folder, 'out', `${name}.xlsx`))));
      read.set(name, new Map(sheets.map((sheet) => [sheet.name, sheet.rows])));
    }
    return (name) => read.get(name) ?? new Map<string, Cells>();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Cells whose formula comes to something else than what stands beside it in the content. */
export function unlike(content: WorkbookContent, computed: Recalculated): readonly string[] {
  return content.sheets.flatMap((sheet) => unlikeIn(sheet, computed.get(sheet.name) ?? []));
}

function unlikeIn(sheet: SheetContent, cells: Cells): readonly string[] {
  return sheet.rows.flatMap((row, at) =>
    row.flatMap((cell, column) => {
      const found = cells[at]?.[column];
      return isAsWritten(cell, found) ? [] : [`${sheet.name} ${at + 1}/${column + 1}: ${String(found)}`];
    }),
  );
}

function isAsWritten(cell: CellContent, found: unknown): boolean {
  if (cell === undefined) return found === null || found === undefined || found === '';
  if ('text' in cell) return found === cell.text;
  if ('result' in cell) return (found ?? '') === cell.result;
  const value = found instanceof Date ? found.getTime() / 86_400_000 + 25_569 : found;
  return typeof value === 'number' && Math.abs(value - cell.value) <= 1e-9 * Math.max(1, Math.abs(cell.value));
}

export function formulaCount({ sheets }: WorkbookContent): number {
  const cells = sheets.flatMap(({ rows }) => rows.flat());
  return cells.filter((cell) => cell !== undefined && 'formula' in cell && cell.formula !== undefined).length;
}
