/** A planner with a heavy plan in it. Each turn gives the milliseconds on the wall from its entry to the frame that shows it, painted. */
import '../../../src/elements/planner/define.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { zoneIdAt } from '../gardens.ts';
import { wideGarden } from './wide-garden.ts';

/** What is done to it. `climate`: the rain of every month is another, so that all is computed anew. */
export type HeavyEdit = 'minutes' | 'rain' | 'climate';

export interface HeavyPage {
  open(zones: number, plantings: number): Promise<number>;
  edit(what: HeavyEdit, round: number): Promise<number>;
  /** Opens what the browser has saved of the page's visit before. */
  reopen(): Promise<number>;
}

declare global {
  /** Set by the page's script. */
  var heavyPage: HeavyPage;
}

const LICENSE_KEY = 'non-commercial-and-evaluation';
/** What a page still does once it has shown a change: notices, reports. */
const AFTER_MS = 1500;

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** A message is handed out only when the frame that was just prepared is painted. */
const painted = () =>
  new Promise((resolve) => {
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = resolve;
      port2.postMessage(undefined);
    });
  });

async function timed(run: () => unknown): Promise<number> {
  const start = performance.now();
  await run();
  await painted();
  const frameMs = performance.now() - start;
  await pause(AFTER_MS);
  return frameMs;
}

const plan = document.createElement('runnel-plan');
plan.storageKey = 'heavy';

function editOf(what: HeavyEdit, round: number): Edit {
  if (what === 'minutes') {
    return { type: 'set-minutes', zone: zoneIdAt(17), week: '2027-07-05', minutes: 40 + round };
  }
  if (what === 'rain') return { type: 'set-week-rain', week: '2027-03-29', rain: 3 + round };
  const climate = plan.plan?.site.climate;
  if (climate?.rain === undefined) throw new Error('the garden has no rain');
  return { type: 'set-climate', climate: { ...climate, rain: climate.rain.map((month) => month + 1 + round) } };
}

function showPlanner(): void {
  const planner = document.createElement('runnel-planner');
  planner.licenseKey = LICENSE_KEY;
  plan.append(planner);
  document.body.append(plan);
}

globalThis.heavyPage = {
  async open(zones, plantings) {
    showPlanner();
    await painted();
    const file = new Blob([JSON.stringify(wideGarden(zones, plantings))]);
    return timed(() => plan.openFile(file));
  },
  reopen: () =>
    timed(async () => {
      const opened = new Promise((resolve) => plan.addEventListener('runnel-change', resolve, { once: true }));
      showPlanner();
      await opened;
    }),
  edit: (what, round) =>
    timed(async () => {
      const { ok } = await plan.requestEdit(editOf(what, round));
      if (!ok) throw new Error(`the edit of ${what} was refused`);
    }),
};
