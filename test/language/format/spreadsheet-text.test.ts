import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import {
  FORMULA_START,
  fromSpreadsheetText,
  toSpreadsheetText,
} from '../../../src/language/format/spreadsheet-text.ts';

// The first letters that OWASP, "CSV Injection", names; those of full width, which spreadsheets read as the narrow ones (from
// memory); and names that begin with an apostrophe of their own.
const FORMULAS = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\rx', ' =1', '＝1+1', '＋1', '－1', '＠A1', "'=1", "''=1"];
const NAMES = ['Beds', '<b>Beds</b> = 3-4', "'Roma' tomatoes", '', "'", '3 - 4'];

describe('a text for a spreadsheet', () => {
  it.each(FORMULAS)('gets an apostrophe where it begins like a formula: %s', (text) => {
    expect(toSpreadsheetText(text)).toBe(`'${text}`);
  });

  it.each(NAMES)('stays as it is elsewhere: %s', (text) => {
    expect(toSpreadsheetText(text)).toBe(text);
  });

  it.each([...FORMULAS, ...NAMES])('comes back as it was: %s', (text) => {
    expect(fromSpreadsheetText(toSpreadsheetText(text))).toBe(text);
  });

  it.each([...FORMULAS, ...NAMES])('is the same by copy and in a CSV file: %s', (text) => {
    const file = Papa.unparse([[text, 'x']], { escapeFormulae: FORMULA_START });
    expect(Papa.parse<string[]>(file).data[0]?.[0]).toBe(toSpreadsheetText(text));
  });
});
