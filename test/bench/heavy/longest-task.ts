/** The longest task of a page, of processor time: whoever else is busy on the machine counts little. */
import type { Browser, Page } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Of the processor, microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

const RUN_TASK = 'ThreadControllerImpl::RunTask';

/** Milliseconds of the longest task on any page's main thread while something runs, and what that gives. */
export async function longestTask<Result>(
  browser: Browser,
  page: Page,
  run: () => Promise<Result>,
): Promise<{ readonly taskMs: number; readonly result: Result }> {
  await browser.startTracing(page, { categories: ['toplevel', '__metadata'] });
  const result = await run();
  const trace: { readonly traceEvents: readonly TraceEvent[] } = JSON.parse((await browser.stopTracing()).toString());
  const threadOf = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  const mains = new Set(
    trace.traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(threadOf),
  );
  const tasks = trace.traceEvents.filter((event) => event.name === RUN_TASK && mains.has(threadOf(event)));
  if (tasks.length === 0) throw new Error('the browser tells of no task');
  return { taskMs: tasks.reduce((most, { tdur = 0 }) => Math.max(most, tdur / 1000), 0), result };
}
