/** Read back by papaparse, whose rules of quotes are those of RFC 4180, section 2, with a tab for the comma. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, it } from 'vitest';
import { blockText } from '../../../src/sheet/entry/block-text.ts';

it('is read as the cells that it was made of, whatever stands in them', () => {
  const text = fc.string({ unit: fc.constantFrom('"', '\t', '\n', '\r', '=', 'a', '1', ' ', '♥') });
  const block = fc.integer({ min: 1, max: 4 }).chain((width) => {
    const line = fc.array(text, { minLength: width, maxLength: width });
    // One empty cell alone is an empty file to a reader of CSV.
    return fc.array(line, { minLength: 1, maxLength: 4 }).map((lines) => [[...(lines[0] ?? []), 'end'], ...lines]);
  });
  fc.assert(
    fc.property(block, (cells) => {
      expect(Papa.parse(blockText(cells), { delimiter: '\t', newline: '\n' }).data).toEqual(cells);
    }),
    { numRuns: 300 },
  );
});

it('quotes nothing that needs no quotes', () => {
  expect(
    blockText([
      ['Beds', '12.5'],
      ['5" pots', undefined],
    ]),
  ).toBe('Beds\t12.5\n5" pots\t');
  expect(blockText([['Beds\t=1+1', '"Sun" bed']])).toBe('"Beds\t=1+1"\t"""Sun"" bed"');
});
