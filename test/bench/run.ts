/** `npm run bench`, or with the names of suites: `npm run bench -- season`. Prints a table, writes latest.json beside. */
import { writeFileSync } from 'node:fs';
import { gridSuite } from './grid-suite.ts';
import { growthSuite } from './growth-suite.ts';
import { heavySuite } from './heavy-suite.ts';
import { lineOf, type Outcome, type Suite } from './outcome.ts';
import { seasonSuite } from './season-suite.ts';
import { cellsOf, tableOf } from './table.ts';
import { yearsSuite } from './years-suite.ts';

const SUITES: readonly Suite[] = [seasonSuite, growthSuite, gridSuite, heavySuite, yearsSuite];

const names = process.argv.slice(2);
const unknown = names.filter((name) => !SUITES.some((suite) => suite.name === name));
if (unknown.length > 0) {
  console.error(`No suite ${unknown.join(', ')}. There are: ${SUITES.map(({ name }) => name).join(', ')}.`);
  process.exit(1);
}

const outcomes: Outcome[] = [];
for (const suite of SUITES.filter(({ name }) => names.length === 0 || names.includes(name))) {
  for await (const outcome of suite.outcomes()) {
    outcomes.push(outcome);
    console.log(cellsOf(outcome).join('  '));
  }
}
console.log(`\nMedians, of processor time where nothing else is said.\n\n${tableOf(outcomes)}`);
writeFileSync(new URL('latest.json', import.meta.url), `${JSON.stringify(outcomes.map(lineOf), null, 2)}\n`);
