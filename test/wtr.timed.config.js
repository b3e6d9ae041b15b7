import '../.build/run-ts.mjs';

const { browserConfig, browserTests } = await import('./tools/browser-config.ts');
const { chromium } = await import('./tools/find-program.ts');
const { TIMED } = await import('./tools/unit-tests.ts');

export default await browserConfig(chromium, browserTests(TIMED.browser));
