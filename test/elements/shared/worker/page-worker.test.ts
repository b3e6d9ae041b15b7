/** Long work in a worker, and on the page where none can be had. The worker of these tests is the real one's code behind a channel. */
import { describe, expect, it } from 'vitest';
import { PageWorker, type WorkerTimes } from '../../../../src/elements/shared/worker/page-worker.ts';
import { rainSharesOf } from '../../../../src/elements/shared/worker/rain-shares.ts';
import { serveTasks, type TaskPort } from '../../../../src/elements/shared/worker/serve-tasks.ts';
import type { Asked } from '../../../../src/elements/shared/worker/worker-messages.ts';
import { runThrough } from '../../../../src/engine/run-through.ts';
import { yearSeasons } from '../../../../src/engine/years/year-seasons.ts';
import { plan, season, yearsIn } from './years-in.ts';

const expected = runThrough(yearSeasons(season));

/** Tells of every step. */
const atEachStep = (port: TaskPort) => serveTasks(port, 0);

/** One that is served in this process. */
class ChannelWorker extends EventTarget {
  readonly asked: Asked[] = [];
  readonly #channel = new MessageChannel();
  onmessage: ((event: MessageEvent) => void) | null = null;
  onerror: ((event: Event) => void) | null = null;
  onmessageerror = null;
  hasEnded = false;

  constructor(serve = atEachStep) {
    super();
    this.#channel.port1.onmessage = (event) => this.onmessage?.(event);
    serve(this.#channel.port2 as unknown as TaskPort);
  }

  postMessage(asked: Asked): void {
    this.#channel.port1.postMessage(asked);
    this.asked.push(asked);
  }

  terminate(): void {
    this.hasEnded = true;
    this.#channel.port1.close();
  }
}

const QUICK: WorkerTimes = { firstWordMs: 2000, idleMs: 20 };

/** A page's worker, and all that were started for it. */
function pageWith(make: () => ChannelWorker, times: WorkerTimes = QUICK) {
  const started: ChannelWorker[] = [];
  let tries = 0;
  const page = new PageWorker(() => {
    tries += 1;
    started.push(make());
    return started.at(-1) as unknown as Worker;
  }, times);
  return { page, started, tries: () => tries };
}

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe('a worker', () => {
  it('gives what the page would, to the last bit, and tells how far it has come', async () => {
    const { page, tries } = pageWith(() => new ChannelWorker());
    const both = await Promise.all([yearsIn(page), yearsIn(page)]);
    for (const { outcomes, shares, onPage } of both) {
      expect(onPage).toBe(false);
      expect(outcomes).toStrictEqual(expected);
      expect(shares).toEqual(shares.toSorted((one, other) => one - other));
      expect(shares.some((share) => share > 0 && share < 1)).toBe(true);
    }
    expect(tries()).toBe(1);
  });

  it('ends once there is nothing to do, and starts again', async () => {
    const { page, started } = pageWith(() => new ChannelWorker());
    await yearsIn(page);
    expect(page.isRunning).toBe(true);
    while (page.isRunning) await wait(5);
    expect(started.map(({ hasEnded }) => hasEnded)).toEqual([true]);
    expect((await yearsIn(page)).onPage).toBe(false);
    expect(started).toHaveLength(2);
    while (page.isRunning) await wait(5);
  });

  it('is told that work is given up, and does not end it', async () => {
    let port: TaskPort | undefined;
    const told: string[] = [];
    const { page, started } = pageWith(
      () =>
        new ChannelWorker((given) => {
          port = given;
          const own = given.postMessage.bind(given);
          given.postMessage = (each) => {
            told.push(each.step);
            own(each);
          };
          atEachStep(given);
        }),
    );
    let asked = 0;
    const end = yearsIn(page, {
      isWanted: () => {
        asked += 1;
        return false;
      },
    });
    while (page.isRunning) await wait(5);
    expect(port).toBeDefined();
    expect(asked).toBe(1);
    expect(started[0]?.asked.map(({ id, task }) => [id, task?.name])).toEqual([
      [1, 'years'],
      [1, undefined],
    ]);
    expect(told).toContain('working');
    expect(told).not.toContain('done');
    await expect(Promise.race([end, wait(20).then(() => 'no end')])).resolves.toBe('no end');
  });
});

describe('the page does it itself, with the same result,', () => {
  async function expectOnPage(page: PageWorker, change: Parameters<typeof yearsIn>[1] = {}): Promise<void> {
    const { outcomes, onPage } = await yearsIn(page, change);
    expect(onPage).toBe(true);
    expect(outcomes).toStrictEqual(expected);
  }

  it('where none may start, and asks for none again', async () => {
    const { page, tries } = pageWith(() => {
      throw new DOMException('another origin', 'SecurityError');
    });
    await expectOnPage(page);
    await expectOnPage(page);
    expect(tries()).toBe(1);
  });

  it('where its script is not had, or it throws before it speaks', async () => {
    const { page, started } = pageWith(() => {
      const worker = new ChannelWorker(() => undefined);
      setTimeout(() => worker.onerror?.(new Event('error', { cancelable: true })));
      return worker;
    });
    await expectOnPage(page);
    expect(started[0]?.hasEnded).toBe(true);
    expect(page.isRunning).toBe(false);
  });

  it('where it is silent', async () => {
    const { page, started } = pageWith(() => new ChannelWorker(() => undefined), { firstWordMs: 20, idleMs: 20 });
    await expectOnPage(page);
    expect(started[0]?.hasEnded).toBe(true);
  });

  it('where it ends in the middle', async () => {
    const { page, started } = pageWith(() => new ChannelWorker());
    let hasBegun = false;
    await expectOnPage(page, {
      onStep: () => {
        if (!hasBegun) started[0]?.onerror?.(new Event('error', { cancelable: true }));
        hasBegun = true;
      },
    });
    expect(hasBegun).toBe(true);
  });

  it('where what it needs cannot be copied', async () => {
    const { page } = pageWith(() => new ChannelWorker());
    const odd = { ...plan, own: () => undefined };
    await expectOnPage(page, { args: [odd, rainSharesOf(season)] });
    while (page.isRunning) await wait(5);
  });

  it('where the worker’s work throws; what the page’s throws then is heard', async () => {
    const { page } = pageWith(() => new ChannelWorker());
    const wrong = { ...plan, zones: null } as unknown as typeof plan;
    await expectOnPage(page, { args: [wrong, new Map()] });
    const failing = yearsIn(page, {
      args: [wrong, new Map()],
      *steps() {
        yield 0;
        throw new Error('no season');
      },
    });
    await expect(failing).rejects.toThrow('no season');
    while (page.isRunning) await wait(5);
  });
});
