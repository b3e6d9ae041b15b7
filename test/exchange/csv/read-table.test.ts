import { describe, expect, it } from 'vitest';
import { numberIn, readTable } from '../../../src/exchange/csv/read-table.ts';
import { rowSteps } from '../../../src/exchange/csv/row-steps.ts';

describe('readTable', () => {
  it('counts blank lines, and the lines inside a quoted cell (RFC 4180, section 2, rule 6)', () => {
    const { header, rows } = readTable('\uFEFFa,b\r\n\r\n"x\r\ny",1\r\n2,3\n');
    expect(header).toEqual(['a', 'b']);
    expect(rows).toEqual([
      { line: 3, cells: ['x\ny', '1'] },
      { line: 5, cells: ['2', '3'] },
    ]);
  });

  it.each([',', ';', '\t'])('tells the separator %j by itself', (separator) => {
    const { rows } = readTable(['a', 'b', '\n1', '2', '\n'].join(separator).replaceAll(`${separator}\n`, '\n'));
    expect(rows[0]?.cells.slice(0, 2)).toEqual(['1', '2']);
  });

  it.each(['=1+1', ' =1+1', '+1', '-1', '@a', '＝1', '=1\n2'])('takes the mark off %j that kept it a name', (name) => {
    expect(readTable(`a,b\n"'${name}",1\n`).rows[0]?.cells[0]).toBe(name.trim());
  });

  it('ends a row whose quote is never closed before it takes the whole file', () => {
    const days = Array.from({ length: 40_000 }, (_, index) => `2027-06-14,${index}`);
    const { rows } = readTable(['Date,Rain', `"${days[0]}`, ...days.slice(1)].join('\n'));
    const [open, next] = rows;
    expect(open?.line).toBe(2);
    expect(open?.cells[0]?.length).toBeLessThan(300_000);
    expect(next?.cells).toEqual(days[(next?.line ?? 0) - 2]?.split(','));
    expect(rows.at(-1)).toEqual({ line: 40_001, cells: ['2027-06-14', '39999'] });
  });

  it('takes no more headings than any table has that is known, and goes through a long line in parts', () => {
    const many = Array.from({ length: 100_000 }, (_, index) => `h${index}`).join(',');
    const { header } = readTable(`${many}\n1,2\n`);
    expect(header).toHaveLength(1000);
    expect(header[999]).toBe('h999');
    for (const rows of rowSteps(`${many}\n`)) expect(rows[0]?.cells.length).toBeLessThan(60_000);
  });

  it('leaves any other apostrophe where it stands', () => {
    expect(readTable(`a,b\n'til May,1\n`).rows[0]?.cells[0]).toBe(`'til May`);
  });
});

it.each([
  ['', undefined],
  ['1.5', 1.5],
  ['-.5e1', -5],
  ['1,5', Number.NaN],
  ['=1', Number.NaN],
  ['0x10', Number.NaN],
])('reads %j as the number %s', (text, value) => {
  expect(numberIn(text)).toEqual(value);
});
