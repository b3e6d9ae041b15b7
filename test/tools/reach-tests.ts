/**
 * The tests that show what random gardens reach of the engine. `npm test` runs them once, with the coverage that
 * `test/oracle/coverage.config.ts` asks for; `npx vitest` alone runs them like all others.
 */
const LAWS = 'alike,cells,cuts,formulas,kept-season,lines,mix,plain-numbers,refused,refused-formulas,run-depths,supply';

export const REACH_TESTS: readonly string[] = [
  'test/oracle/{agreement,days-a-week-agreement}.test.ts',
  `test/laws/{${LAWS}}.test.ts`,
  'test/explain/trace/trace-cell.test.ts',
  'test/explain/notices/notices-laws.test.ts',
];
