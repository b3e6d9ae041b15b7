/**
 * What the bench asks of HyperFormula. Its own types do not pass this project's checks, so it is required and described
 * here.
 */
import { createRequire } from 'node:module';

export interface CellPlace {
  readonly sheet: number;
  /** From 0. */
  readonly row: number;
  readonly col: number;
}

export interface FormulaEngine {
  getSheetId(name: string): number | undefined;
  getCellValue(place: CellPlace): unknown;
  /** Sets a cell and computes what hangs on it; returns the cells that changed. */
  setCellContents(place: CellPlace, content: number | string | null): readonly unknown[];
  destroy(): void;
}

interface Library {
  readonly HyperFormula: {
    buildFromSheets(
      sheets: Readonly<Record<string, (number | string | null)[][]>>,
      options: { readonly licenseKey: string },
    ): FormulaEngine;
  };
}

export const { HyperFormula } = createRequire(import.meta.url)('hyperformula') as Library;
