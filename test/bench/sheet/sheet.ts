/**
 * The same garden as a person would keep it in a spreadsheet: a week a column, and the weekly relations as formulas.
 * Weeks instead of days, no cycles, no states, no totals of the garden: the sheet has less to do than the engine.
 */
import type { Garden } from '../../../src/engine/garden.ts';
import { type FormulaEngine, HyperFormula } from './formula-engine.ts';
import { PARAMETER_COLUMNS, WEATHER_ROW, ZONE_ROW } from './places.ts';
import { type SheetRows, sheetRows } from './sheet-rows.ts';

export class Sheet {
  readonly #rows: SheetRows;
  #engine: FormulaEngine | undefined;

  constructor(garden: Garden) {
    this.#rows = sheetRows(garden);
  }

  /** Once before anything is set or read. */
  build(): void {
    const { cells } = this.#rows;
    const sheets = Object.entries(cells).map(([name, rows]) => [name, rows.map((row) => [...row])]);
    this.#engine = HyperFormula.buildFromSheets(Object.fromEntries(sheets), { licenseKey: 'gpl-v3' });
  }

  /** Rain of a week, as read from a gauge. */
  setRain(week: number, rainMm: number): void {
    this.#set('Weather', WEATHER_ROW.readRain, week, rainMm);
  }

  setMinutes(zone: number, week: number, minutes: number): void {
    this.#set('Season', this.#zoneRow(zone) + ZONE_ROW.handMinutes, week, minutes);
  }

  litres(zone: number, week: number): number {
    const value = this.#built.getCellValue(this.#place('Season', this.#zoneRow(zone) + ZONE_ROW.litres, week));
    if (typeof value !== 'number') throw new Error(`zone ${zone}, week ${week} of the sheet holds ${String(value)}`);
    return value;
  }

  get #built(): FormulaEngine {
    if (this.#engine === undefined) throw new Error('the sheet is not built yet');
    return this.#engine;
  }

  #zoneRow(zone: number): number {
    return this.#rows.zoneRows[zone] as number;
  }

  #set(name: string, row: number, week: number, value: number): void {
    this.#built.setCellContents(this.#place(name, row, week), value);
  }

  /** `row` counts from 1. */
  #place(name: string, row: number, week: number) {
    return { sheet: this.#built.getSheetId(name) as number, row: row - 1, col: PARAMETER_COLUMNS + week };
  }
}
