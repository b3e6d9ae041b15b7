import '../.build/run-ts.mjs';

const { browserConfig } = await import('./tools/browser-config.ts');
const { firefox } = await import('./tools/find-browser.ts');

export default await browserConfig(firefox, ['test/**/*.firefox.browser.ts']);
