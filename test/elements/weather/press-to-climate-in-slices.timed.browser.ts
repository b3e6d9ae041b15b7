import { expectNoWait } from './press-to-climate.ts';

it('the same on a page that may start no worker', async function () {
  this.timeout(120_000);
  const own = window.Worker;
  window.Worker = class {
    constructor() {
      throw new DOMException('another origin', 'SecurityError');
    }
  } as unknown as typeof Worker;
  try {
    await expectNoWait(false);
  } finally {
    window.Worker = own;
  }
});
