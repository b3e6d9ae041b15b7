import '../.build/run-ts.mjs';

const { browserConfig } = await import('./tools/browser-config.ts');
const { firefox } = await import('./tools/find-program.ts');

export default await browserConfig(firefox, ['test/**/*.firefox.browser.ts']);
