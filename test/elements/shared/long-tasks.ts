/** When the page has nothing left to do. */
export const idle = () => new Promise((resolve) => requestIdleCallback(resolve));

const turn = () => new Promise((resolve) => setTimeout(resolve));

export interface LongTasks {
  /** When they began to count, by `performance.now()`. */
  readonly begunMs: number;
  /** Once the browser has reported all: the longest, ms; 0 where none took 50 ms, below which a browser reports none. */
  longestMs(): Promise<number>;
}

/** Tasks that keep the page waiting, from here on. */
export async function watchLongTasks(): Promise<LongTasks> {
  let longest = 0;
  let begunMs = Number.POSITIVE_INFINITY;
  const see = (entries: readonly PerformanceEntry[]) => {
    for (const { startTime, duration } of entries) {
      if (startTime > begunMs) longest = Math.max(longest, duration);
    }
  };
  const observer = new PerformanceObserver((list) => see(list.getEntries()));
  observer.observe({ type: 'longtask' });
  await turn();
  begunMs = performance.now();
  return {
    begunMs,
    async longestMs() {
      await idle();
      await turn();
      see(observer.takeRecords());
      observer.disconnect();
      return longest;
    },
  };
}
