import { addTallies, summaryLine, type Tally } from './tally.ts';

/** Ends the process: first what no runner said itself, last the sum of all of them. */
export function reportAndExit(tallies: readonly Tally[]): never {
  const sum = addTallies(tallies);
  console.log(['', ...sum.remarks, summaryLine(sum)].join('\n'));
  process.exit(sum.failed === 0 && sum.passed > 0 ? 0 : 1);
}
