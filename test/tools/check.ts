// `npm run check`: types, lint, format and floors.
import { runChecks } from './checks.ts';
import { reportAndExit } from './report.ts';
import { runUnitTests } from './runners.ts';

reportAndExit([...(await runChecks()), await runUnitTests('test/floors.test.ts')]);
