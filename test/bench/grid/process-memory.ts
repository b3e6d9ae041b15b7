/** The process behind a tab, and the memory that the system counts of it. */
import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';

/** The process of the page that is busy meanwhile: the browser does not tell which page is whose. */
export async function busiestRenderer(browser: Browser, meanwhile: () => Promise<unknown>): Promise<number> {
  const devtools = await browser.newBrowserCDPSession();
  const seconds = async () => {
    const { processInfo } = await devtools.send('SystemInfo.getProcessInfo');
    return new Map(processInfo.filter(({ type }) => type === 'renderer').map(({ id, cpuTime }) => [id, cpuTime]));
  };
  const before = await seconds();
  await meanwhile();
  const after = await seconds();
  await devtools.detach();
  const [busiest] = [...after].toSorted(([one], [other]) => usedBy(other) - usedBy(one));
  if (busiest === undefined) throw new Error('the browser names no process of a page');
  return busiest[0];

  function usedBy(id: number): number {
    return (after.get(id) ?? 0) - (before.get(id) ?? 0);
  }
}

/**
 * Its resident memory, with what it shares with other processes counted in equal parts (Pss of Linux), MiB; undefined on
 * a system that does not tell.
 */
export function processMib(id: number): number | undefined {
  if (process.platform !== 'linux') return undefined;
  const [, kib] = /^Pss:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${id}/smaps_rollup`, 'utf8')) ?? [];
  return kib === undefined ? undefined : Number(kib) / 1024;
}
