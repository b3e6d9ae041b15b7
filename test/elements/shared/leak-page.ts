/** The page of the leak test: opens and closes an element as often as it is asked, as a page of many views does. */
import { Chart } from 'chart.js';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/files/define.ts';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/mix/define.ts';
import '../../../src/elements/notices/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/planner/define.ts';
import '../../../src/elements/start/define.ts';
import '../../../src/elements/trace/define.ts';
import '../../../src/elements/weather/define.ts';
import '../../../src/elements/week/define.ts';
import { oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

/** What shows that an element is drawn to its end. */
const DRAWN = {
  'runnel-grid': hasCells,
  'runnel-chart': hasChart,
  'runnel-planner': (place: ParentNode) => hasCells(place) && hasStrip(place),
  'runnel-files': (place: ParentNode) => shows(place, 'runnel-files', 'button'),
  'runnel-garden': (place: ParentNode) => shows(place, 'runnel-garden', '.part-name'),
  'runnel-mix': (place: ParentNode) => shows(place, 'runnel-mix', 'table, h3'),
  'runnel-notices': (place: ParentNode) => shows(place, 'runnel-notices', 'h2, li'),
  'runnel-start': (place: ParentNode) => shows(place, 'runnel-start', '.step input'),
  'runnel-trace': (place: ParentNode) => shows(place, 'runnel-trace', 'select'),
  'runnel-weather': (place: ParentNode) => shows(place, 'runnel-weather', 'svg'),
  'runnel-week': (place: ParentNode) => shows(place, 'runnel-week', 'input'),
} as const;

export type Opened = keyof typeof DRAWN;

function shows(place: ParentNode, tag: string, inside: string): boolean {
  return (place.querySelector(tag)?.shadowRoot?.querySelector(inside) ?? null) !== null;
}

function hasCells(place: ParentNode): boolean {
  return place.querySelector('td.runnel-cell') !== null;
}

/** A chart is there once its library knows of the canvas. */
function hasChart(place: ParentNode): boolean {
  const canvas = place.querySelector('runnel-chart')?.shadowRoot?.querySelector('canvas');
  return canvas !== null && canvas !== undefined && Chart.getChart(canvas) !== undefined;
}

function hasStrip(place: ParentNode): boolean {
  return (place.querySelector('runnel-chart')?.shadowRoot?.querySelector('.tiles') ?? null) !== null;
}

async function until(holds: () => boolean, what: string): Promise<void> {
  const end = performance.now() + 30_000;
  while (!holds()) {
    if (performance.now() > end) throw new Error(`waited in vain until ${what}`);
    await new Promise((resolve) => setTimeout(resolve));
  }
}

/** What a page has open of the browser's own, counted where it is made and closed. */
const open = { databases: 0, channels: 0, onPage: 0 };

const { close: closeDatabase } = IDBDatabase.prototype;
const { open: openDatabase } = IDBFactory.prototype;
IDBFactory.prototype.open = function (this: IDBFactory, ...args: Parameters<IDBFactory['open']>): IDBOpenDBRequest {
  const request = openDatabase.apply(this, args);
  request.addEventListener('success', () => open.databases++);
  return request;
};
IDBDatabase.prototype.close = function (this: IDBDatabase): void {
  open.databases--;
  closeDatabase.call(this);
};
globalThis.BroadcastChannel = class extends BroadcastChannel {
  constructor(name: string) {
    super(name);
    open.channels++;
  }

  override close(): void {
    open.channels--;
    super.close();
  }
};

/** Listeners of what outlives every element. */
for (const target of [window, document]) {
  const { addEventListener: add, removeEventListener: remove } = target;
  // What is held here is held as the target holds it, and no longer.
  const listening = new Map<unknown, Set<string>>();
  const forget = (listener: unknown, key: string) => {
    const keys = listening.get(listener);
    if (keys?.delete(key) === true) open.onPage--;
    if (keys?.size === 0) listening.delete(listener);
  };
  target.addEventListener = (type: string, listener: EventListener, options?: AddEventListenerOptions | boolean) => {
    const given = typeof options === 'object' ? options : { capture: options === true };
    const key = `${type} ${given.capture === true}`;
    const keys = listening.get(listener) ?? new Set();
    listening.set(listener, keys);
    if (!keys.has(key)) open.onPage++;
    keys.add(key);
    given.signal?.addEventListener('abort', () => forget(listener, key), { once: true });
    if (given.once === true) add.call(target, type, () => forget(listener, key), { once: true });
    add.call(target, type, listener, options);
  };
  target.removeEventListener = (type: string, listener: EventListener, options?: EventListenerOptions | boolean) => {
    forget(listener, `${type} ${typeof options === 'object' ? options.capture === true : options === true}`);
    remove.call(target, type, listener, options);
  };
}

export interface LeakPage {
  /** `atOnce`: so many stand on the page at a time, each with a storage key of its own. */
  openAndClose(tag: Opened, times: number, atOnce: number): Promise<void>;
  settle(settleMs: number): Promise<void>;
  charts(): number;
  open(): typeof open;
}

declare global {
  var leakPage: LeakPage;
}

/** Few weeks: what is drawn once is drawn up to two hundred times. */
const plan = oneBed({ zones: [zone({ plantings: [tomatoes(), shrubs()] })] });
let minutes = 0;

/** One element in a plan that is saved, drawn, edited and taken away. */
async function openOne(tag: Opened, storageKey: string): Promise<void> {
  const view = document.createElement(tag);
  view.setAttribute('license-key', 'non-commercial-and-evaluation');
  const around = document.createElement('runnel-plan');
  around.setAttribute('storage-key', storageKey);
  around.plan = plan;
  // Its first page is a list of ways to begin: the step with most in it says more.
  if (view.localName === 'runnel-start') Object.assign(view, { step: 'plants' });
  around.append(view);
  document.body.append(around);
  await until(() => around.autosave.status !== 'off', `${tag} is saved`);
  around.select({ zone: 'beds', planting: 'tomatoes', week: 1 });
  await until(() => DRAWN[tag](around), `${tag} is drawn`);
  const edit = { type: 'set-minutes', zone: 'beds', week: '2027-06-14', minutes: 1 + (minutes++ % 100) } as const;
  if (!around.edit(edit).ok) throw new Error('the edit was refused');
  around.remove();
}

globalThis.leakPage = {
  async openAndClose(tag, times, atOnce) {
    for (let time = 0; time < times; time += atOnce) {
      await Promise.all(Array.from({ length: atOnce }, (_, at) => openOne(tag, `leak-${at}`)));
    }
  },
  // Frames and timers that were asked for have their turn.
  settle: (settleMs) => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, settleMs))),
  charts: () => Object.keys(Chart.instances).length,
  open: () => ({ ...open }),
};
