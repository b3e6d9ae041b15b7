/** What somebody waits for in a mixed zone of twelve plantings, with the whole catalogue. */
import { expect } from 'chai';
import type { ColdTimes } from './cold-page.ts';

/** Of a page whose code has never run. */
async function coldTimes(): Promise<ColdTimes> {
  const frame = document.createElement('iframe');
  frame.width = '1280';
  frame.height = '900';
  frame.srcdoc = `<!doctype html><script type="module" src="${new URL('cold-page.ts', import.meta.url).href}"></script>`;
  const told = new Promise<ColdTimes>((resolve) => {
    window.addEventListener('message', function hear({ source, data }) {
      if (source !== frame.contentWindow) return;
      window.removeEventListener('message', hear);
      resolve(data as ColdTimes);
    });
  });
  document.body.append(frame);
  const times = await told;
  frame.remove();
  return times;
}

describe('runnel-mix with twelve plantings and the whole catalogue, by the clock', () => {
  /** Other work on the machine only ever adds to a time: the least of several is nearest to the page's own. */
  const MOST_PAGES = 24;
  const MOST_MS = 1000;
  const MOST_OPENING_MS = 100;

  it('has its remedies in the page within a second of the plan, and searches with no task of 50 ms', async function () {
    this.timeout(170_000);
    const least: { -readonly [Time in keyof ColdTimes]: number } = {
      foundMs: Number.POSITIVE_INFINITY,
      openingMs: Number.POSITIVE_INFINITY,
      longestTaskMs: Number.POSITIVE_INFINITY,
    };
    const isSlow = () => least.foundMs > MOST_MS || least.openingMs > MOST_OPENING_MS || least.longestTaskMs > 0;
    for (let page = 0; page < MOST_PAGES && isSlow(); page++) {
      const times = await coldTimes();
      for (const time of ['foundMs', 'openingMs', 'longestTaskMs'] as const)
        least[time] = Math.min(least[time], times[time]);
    }
    expect(least.foundMs, 'ms until they are found').to.be.below(MOST_MS);
    expect(least.openingMs, 'ms to take the plan').to.be.below(MOST_OPENING_MS);
    expect(least.longestTaskMs, 'ms of the longest task of the search').to.be.below(50);
  });
});
