/** A page of its own, whose code has never run: gives a mixed zone its plan, and tells the page around it how long that took. */
import '../../../src/elements/mix/define.ts';
import '../../../src/elements/plan/define.ts';
import { twelvePlantings } from './twelve-plantings.ts';

/** From the moment that the plan is given to the moment that the remedies are in the page. */
export interface ColdTimes {
  readonly foundMs: number;
  /** What giving the plan takes: it is checked and its season computed, by code that never ran before. */
  readonly openingMs: number;
  /** The longest task after that which kept the page waiting; 0 where none took 50 ms, below which a browser reports none. */
  readonly longestTaskMs: number;
}

const turn = () => new Promise((resolve) => setTimeout(resolve));

/** When the page has nothing left to do. */
const idle = () => new Promise((resolve) => requestIdleCallback(resolve));

async function measure(): Promise<ColdTimes> {
  document.body.innerHTML = '<runnel-plan locale="en-US"><runnel-mix></runnel-mix></runnel-plan>';
  const [plan, mix] = [document.querySelector('runnel-plan'), document.querySelector('runnel-mix')];
  if (plan === null || mix === null) throw new Error('the page is empty');
  const given = twelvePlantings();
  await mix.updateComplete;
  await idle();
  let longestTaskMs = 0;
  let begun = Number.POSITIVE_INFINITY;
  const see = (entries: readonly PerformanceEntry[]) => {
    for (const { startTime, duration } of entries) {
      if (startTime > begun) longestTaskMs = Math.max(longestTaskMs, duration);
    }
  };
  const observer = new PerformanceObserver((list) => see(list.getEntries()));
  observer.observe({ type: 'longtask' });
  await turn();
  begun = performance.now();
  plan.plan = given;
  const openingMs = performance.now() - begun;
  while (mix.shadowRoot?.querySelector('.remedies h4') == null) await turn();
  const foundMs = performance.now() - begun;
  // What is drawn after the first of them, and the browser's own report.
  await mix.updateComplete;
  await idle();
  await turn();
  see(observer.takeRecords());
  return { foundMs, openingMs, longestTaskMs };
}

parent.postMessage(await measure());
