/** A page of its own, whose code has never run: gives a mixed zone its plan, and tells the page around it how long that took. */
import '../../../src/elements/mix/define.ts';
import '../../../src/elements/plan/define.ts';
import { idle, watchLongTasks } from '../shared/long-tasks.ts';
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

async function measure(): Promise<ColdTimes> {
  document.body.innerHTML = '<runnel-plan locale="en-US"><runnel-mix></runnel-mix></runnel-plan>';
  const [plan, mix] = [document.querySelector('runnel-plan'), document.querySelector('runnel-mix')];
  if (plan === null || mix === null) throw new Error('the page is empty');
  const given = twelvePlantings();
  await mix.updateComplete;
  await idle();
  const tasks = await watchLongTasks();
  plan.plan = given;
  const openingMs = performance.now() - tasks.begunMs;
  while (mix.shadowRoot?.querySelector('.remedies h4') == null) await turn();
  const foundMs = performance.now() - tasks.begunMs;
  // What is drawn after the first of them.
  await mix.updateComplete;
  return { foundMs, openingMs, longestTaskMs: await tasks.longestMs() };
}

parent.postMessage(await measure());
