import { expect, it } from 'vitest';
import { describeVersionChange } from '../../src/language/describe-version-change.ts';
import { readerFor } from '../../src/language/reader.ts';
import type { VersionChange } from '../../src/plan/versions/version-change.ts';

it.each<[VersionChange, string]>([
  [
    { code: 'rain-method', values: { from: 'tr21', to: 'balance' } },
    'Rain from monthly normals is counted another way: what each soil keeps, no longer USDA SCS, TR-21. To count as before, choose that way in the garden’s place.',
  ],
  [
    { code: 'target-depletion', values: { plantings: 1, from: 0, to: 0.3 } },
    '1 planting now keeps 30% of the allowed depletion free for rain. To water as before, set a target depletion of 0.',
  ],
  [
    { code: 'rain-read-through', values: { weeks: 2 } },
    '2 weekly rain totals count as read through the last day of the week.',
  ],
  [
    { code: 'wetted-anew', values: { plantings: 2 } },
    'Where later lines wet more or less of the ground, that share changes in their week: 2 plantings have such lines.',
  ],
  [
    { code: 'names-cleaned', values: { names: 1 } },
    '1 name was cleaned: tabs and line breaks became spaces, and a name that showed nothing is now the id or the number of what it names. Rename it in the garden.',
  ],
])('%o', (change, words) => {
  expect(describeVersionChange(change, readerFor('en-US', 'us')).replaceAll('\u00a0', ' ')).toBe(words);
});
