import { describe, expect, it } from 'vitest';
import { numberIn, readTable } from '../../../src/exchange/csv/read-table.ts';

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
