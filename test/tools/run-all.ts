// `npm test`: the checks, the tests in Node, those of random gardens with what they reach, and the tests in each browser, and the sum of them in the last line.
import { runChecks } from './checks.ts';
import { type BrowserKind, chromium, firefox } from './find-browser.ts';
import { ensureBrowsers, thisMachine } from './install-browsers.ts';
import { reportAndExit } from './report.ts';
import { runBrowserTests, runOtherUnitTests, runReach } from './runners.ts';
import { failure, type Tally } from './tally.ts';

const browserRuns = [
  { kind: chromium, config: 'test/wtr.config.js' },
  { kind: firefox, config: 'test/wtr.firefox.config.js' },
] as const;

const missing = ensureBrowsers(
  browserRuns.map((run) => run.kind),
  thisMachine,
);

function runIn(kind: BrowserKind, config: string): Tally {
  const advice = missing.get(kind);
  return advice === undefined ? runBrowserTests(kind.label, config) : failure(advice);
}

reportAndExit([
  ...runChecks(),
  runOtherUnitTests(),
  runReach(),
  ...browserRuns.map(({ kind, config }) => runIn(kind, config)),
]);
