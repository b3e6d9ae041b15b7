// `npm test`: the checks, the tests in Node, those of random gardens with what they reach, the tests in each browser, those by the clock, and the sum of them in the last line.
import { runChecks } from './checks.ts';
import { chromium, firefox, icalendar, libreOffice, type ProgramKind } from './find-program.ts';
import { ensurePrograms, thisMachine } from './install-programs.ts';
import { reportAndExit } from './report.ts';
import { runBrowserTests, runOtherUnitTests, runReach, runTimedUnitTests, runUnitTestsWithBrowser } from './runners.ts';
import { failure, type Tally } from './tally.ts';

const missing = ensurePrograms([chromium, firefox, libreOffice, icalendar], thisMachine);

async function runIn(kind: ProgramKind, config: string): Promise<Tally> {
  const advice = missing.get(kind);
  return advice === undefined ? runBrowserTests(kind.label, config) : failure(advice);
}

// A browser leaves cores idle while it waits. Each line runs one after the other and the lines beside one another, so that no more than
// two browsers are open at a time.
const lines: readonly (() => Promise<readonly Tally[]>)[] = [
  async () => [...(await runChecks()), await runOtherUnitTests()],
  async () => [await runIn(chromium, 'test/wtr.config.js'), await runUnitTestsWithBrowser()],
  async () => [await runIn(firefox, 'test/wtr.firefox.config.js'), await runReach()],
];

console.log('Checks, tests in Node and tests in each browser run beside one another; each is printed when it ends.');
const tallies = (await Promise.all(lines.map((line) => line()))).flat();
// What asks how long something takes has the machine to itself.
tallies.push(await runTimedUnitTests(), await runIn(chromium, 'test/wtr.timed.config.js'));
reportAndExit(tallies);
