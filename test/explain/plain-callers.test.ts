/** What is said of a season, asked for by plain JavaScript: what is no season at all is a mistake of the caller's, named. */
import { expect, it } from 'vitest';
import { noticesOf } from '../../src/explain/notices/notices-of.ts';
import { traceCell } from '../../src/explain/trace/trace-cell.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { oneBed } from '../support/small-plans.ts';

it.each([
  ['noticesOf', 'season is undefined; it must be an object.', () => noticesOf(undefined as never)],
  ['noticesOf', 'season.garden is missing.', () => noticesOf({} as never)],
  ['traceCell', 'season.garden is missing.', () => traceCell({} as never, { week: 0 })],
  [
    'traceCell',
    'cell is undefined; it must be an object.',
    () => traceCell(computeSeason(oneBed()), undefined as never),
  ],
])('%s says: %s', (_, message, call) => {
  expect(call).toThrow(new TypeError(message));
});
