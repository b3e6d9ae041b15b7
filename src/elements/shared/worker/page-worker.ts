/** Long work in the page's one worker where one can start, else in slices on the page: the result is the same. */
import { inSlices, type SlicedWork } from '../in-slices.ts';
import type { Asked, Told } from './worker-messages.ts';
import type { TaskArguments, TaskName, TaskSteps } from './worker-tasks.ts';

type StepOf<Steps> = Steps extends Generator<infer Step, unknown> ? Step : never;
export type ResultOf<Steps> = Steps extends Generator<unknown, infer Result> ? Result : never;

export interface WorkerWork<Name extends TaskName>
  extends Omit<SlicedWork<StepOf<TaskSteps<Name>>, ResultOf<TaskSteps<Name>>>, 'steps' | 'sliceMs'> {
  readonly name: Name;
  /** Plain data, which is copied. */
  readonly args: TaskArguments<Name>;
  /** The same on the page. */
  readonly steps: () => Generator<StepOf<TaskSteps<Name>>, ResultOf<TaskSteps<Name>>>;
}

type AnyWork = Omit<SlicedWork<unknown, unknown>, 'steps'> & { readonly steps: () => Generator<unknown, unknown> };

export interface WorkerTimes {
  /** Without a word for so long after it was started, it is taken for one that never comes, ms. */
  readonly firstWordMs: number;
  /** So long it stays with nothing to do, ms. */
  readonly idleMs: number;
}

/**
 * Most of its script is in the page's store already. Somebody who tries one value after another asks again within seconds; after them its
 * memory, some megabytes, goes: to start anew takes a tenth of a second.
 */
const USUAL_TIMES: WorkerTimes = { firstWordMs: 3000, idleMs: 10_000 };

export class PageWorker {
  readonly #start: () => Worker;
  readonly #times: WorkerTimes;
  #worker: Worker | undefined;
  /** None can be had on this page. */
  #isRefused = false;
  /** Waits for its first word, then, while there is nothing to do, for its end. */
  #timer: ReturnType<typeof setTimeout> | undefined;
  #hasSpoken = false;
  readonly #open = new Map<number, AnyWork>();
  #asked = 0;

  constructor(start: () => Worker, times = USUAL_TIMES) {
    this.#start = start;
    this.#times = times;
  }

  /** Whether one is there. */
  get isRunning(): boolean {
    return this.#worker !== undefined;
  }

  do<Name extends TaskName>(work: WorkerWork<Name>): void {
    const { name, args } = work;
    const id = ++this.#asked;
    if (this.#hasSpoken) clearTimeout(this.#timer);
    // The table knows which steps and result belong to which name.
    this.#open.set(id, work as unknown as AnyWork);
    if (!this.#post({ id, task: { name, args } })) this.#onPage(id);
  }

  /** False where there is no worker, or what is to be said cannot be copied. */
  #post(asked: Asked): boolean {
    try {
      this.#started()?.postMessage(asked);
      return this.isRunning;
    } catch {
      return false;
    }
  }

  #started(): Worker | undefined {
    if (this.#worker !== undefined || this.#isRefused) return this.#worker;
    try {
      this.#worker = this.#start();
    } catch {
      // Another origin's script, a policy, or an old browser.
      this.#isRefused = true;
      return undefined;
    }
    this.#worker.onmessage = ({ data }: MessageEvent<Told>) => this.#hear(data);
    this.#worker.onerror = (event) => {
      event.preventDefault();
      this.#refuse();
    };
    this.#worker.onmessageerror = () => this.#refuse();
    this.#timer = setTimeout(() => this.#refuse(), this.#times.firstWordMs);
    return this.#worker;
  }

  #hear(told: Told): void {
    if (told.step === 'ready') {
      this.#hasSpoken = true;
      clearTimeout(this.#timer);
      this.#rest();
      return;
    }
    const { id } = told;
    const work = this.#open.get(id);
    if (work === undefined) return;
    if (!work.isWanted()) {
      this.#post({ id });
      this.#close(id);
    } else if (told.step === 'working') work.onStep?.(told.done);
    else if (told.step === 'failed') this.#onPage(id);
    else {
      this.#close(id);
      work.onEnd(told.result);
    }
  }

  /** Whatever is under way begins anew on the page. */
  #refuse(): void {
    this.#isRefused = true;
    this.#end();
    for (const id of this.#open.keys()) this.#onPage(id);
  }

  #onPage(id: number): void {
    const work = this.#open.get(id);
    this.#close(id);
    if (work !== undefined) inSlices({ ...work, steps: work.steps() });
  }

  #close(id: number): void {
    this.#open.delete(id);
    this.#rest();
  }

  #rest(): void {
    if (this.#open.size === 0 && this.#hasSpoken) this.#timer = setTimeout(() => this.#end(), this.#times.idleMs);
  }

  #end(): void {
    clearTimeout(this.#timer);
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#hasSpoken = false;
  }
}

// Bundlers know this form, and give the worker a file of its own.
export const pageWorker = new PageWorker(
  () => new Worker(new URL('./season-worker.js', import.meta.url), { type: 'module' }),
);
