import '../.build/run-ts.mjs';

const { browserConfig, browserTests } = await import('./tools/browser-config.ts');
const { firefox } = await import('./tools/find-program.ts');

export default await browserConfig(firefox, browserTests('.firefox.browser.ts'));
