import { describe, expect, it } from 'vitest';
import { describeEdit } from '../../../src/language/describe-edit.ts';
import { describeFault } from '../../../src/language/describe-fault.ts';
import { isolated } from '../../../src/language/format/isolated.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { oneBed, zone } from '../../support/small-plans.ts';

const reader = readerFor('en-US', 'us');

describe('a name in a sentence', () => {
  it.each(['Beds', '花壇 3', 'Παρτέρι', 'O’Neill “north” 2'])('stays as it is where it turns nothing: %s', (name) => {
    expect(isolated(name)).toBe(name);
  });

  it.each([
    ['ערוגה 3', '\u2068ערוגה 3\u2069'],
    ['حديقة', '\u2068حديقة\u2069'],
    ['\u202eBeds', '\u2068Beds\u2069'],
    ['Beds\u2069\u2067', '\u2068Beds\u2069'],
    // On a page that runs from right to left the bracket would go to the other end.
    ['Beds (north)', '\u2068Beds (north)\u2069'],
    ['=1+1', '\u2068=1+1\u2069'],
  ])('is isolated where it would turn what stands around it: %j', (name, shown) => {
    expect(isolated(name)).toBe(shown);
  });

  it('is isolated in what undo and a refusal say', () => {
    const plan = oneBed({ zones: [zone({ name: '\u202eערוגה 3' })] });
    const edit = { type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: -1 } as const;
    expect(describeEdit(plan, edit, reader)).toContain('\u2068ערוגה 3\u2069');
    const result = tryEdit(plan, edit);
    const [fault] = result.ok ? [] : result.faults;
    if (fault === undefined) throw new Error('the edit is refused');
    expect(describeFault(fault, reader).where).toContain('\u2068ערוגה 3\u2069');
  });
});
