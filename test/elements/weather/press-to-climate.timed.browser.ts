import { expectNoWait } from './press-to-climate.ts';

it('from the press to thirty years of climate and their dry and wet years, of fifty zones: no task of 50 ms', async function () {
  this.timeout(120_000);
  await expectNoWait(true);
});
