/** The printed examples of lines, pipes and barrels; the table that is printed stands in ../README.md. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectRoot } from '../../tools/source-files.ts';
import { PRINTED_EXAMPLES, type PrintedGroup } from './printed-examples.ts';

function tableOf({ what, source, trust, unit, digits, rows }: PrintedGroup): string {
  const figure = (value: number) => value.toFixed(digits).padStart(9);
  const heading = `${what}${unit === '' ? '' : `, ${unit}`}`;
  const lines = rows.map(({ of, printed, here }) => `  ${of.padEnd(44)}${figure(printed)}${figure(here)}`);
  return [heading, `  ${source}; ${trust}`, ...lines].join('\n');
}

const TABLE = [`${''.padEnd(48)}printed     here`, ...PRINTED_EXAMPLES.map(tableOf)].join('\n');

process.stdout.write(`${TABLE}\n`);

describe.each(PRINTED_EXAMPLES)('$what', ({ rows }) => {
  it.each(rows)('$of: $printed', ({ printed, here, tolerance }) => {
    expect(Math.abs(here - printed)).toBeLessThanOrEqual(tolerance);
  });
});

it('the page of published checks shows them as they are', () => {
  expect(readFileSync(join(projectRoot, 'test/published/README.md'), 'utf8')).toContain(TABLE);
});
