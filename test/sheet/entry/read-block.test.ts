import { describe, expect, it } from 'vitest';
import { cellOf, sheetOf } from '../sheet-of.ts';

const sheet = sheetOf();
const entry = (row: string, at: string, text: string) => ({ cell: cellOf(sheet, row, at), text });

describe('a block', () => {
  it('is one step of history', () => {
    const entries = [entry('beds', '2027-06-07', '30'), entry('beds', '2027-06-14', '42')];
    const block = sheet.readBlock(entries, 'paste-cells');
    expect(block).toEqual({
      edit: {
        type: 'together',
        action: 'paste-cells',
        edits: [
          { type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 30 },
          { type: 'set-minutes', zone: 'beds', week: '2027-06-14', minutes: 42 },
        ],
      },
      changed: entries.map(({ cell }) => cell),
      refused: [],
      remarked: [],
    });
  });

  it('of one change is that change', () => {
    const block = sheet.readBlock([entry('beds', '2027-06-07', '30')], 'paste-cells');
    expect(block.edit).toEqual({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 30 });
  });

  it('takes over what it can and names the rest', () => {
    const bad = [entry('beds', '2027-06-14', 'abc'), entry('total', '2027-06-07', '9')];
    const block = sheet.readBlock([entry('beds', '2027-06-07', '30'), ...bad], 'paste-cells');
    expect(block.changed).toHaveLength(1);
    expect(block.refused).toEqual(bad.map((refused) => ({ ...refused, why: expect.any(String) })));
  });

  it('says what became of the volumes in it', () => {
    const cells = [entry('beds', '2027-06-07', '150 gal'), entry('beds', '2027-06-14', '30')];
    const { remarked } = sheet.readBlock(cells, 'paste-cells');
    expect(remarked).toEqual([{ cell: cells[0]?.cell, remark: expect.stringContaining('150\u00a0gallons') }]);
  });

  it('that changes nothing is no step', () => {
    const block = sheet.readBlock([entry('beds', '2027-06-07', ''), entry('beds', '2027-07-05', '120')], 'cut-cells');
    expect(block).toEqual({ edit: undefined, changed: [], refused: [], remarked: [] });
  });
});
