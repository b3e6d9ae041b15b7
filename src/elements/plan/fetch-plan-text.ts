import type { Fault } from '../../plan/reading/fault.ts';
import type { Place } from '../../plan/reading/place.ts';

const FILE: Place = { part: 'file', fields: [] };

/** So long a file may take to come, ms; a large one over a slow line comes in less. */
const WAIT_MS = 60_000;

/** The text of a plan file, or why there is none. Rejects only when `signal` ends the wait, which ends by itself after `waitMs`. */
export async function fetchPlanText(address: string, signal: AbortSignal, waitMs = WAIT_MS): Promise<string | Fault> {
  const found = address;
  const wait = new AbortController();
  const timer = setTimeout(() => wait.abort(), waitMs);
  signal.addEventListener('abort', () => wait.abort(), { signal: wait.signal });
  try {
    const response = await fetch(address, { signal: wait.signal });
    if (response.ok) return await response.text();
    return { path: '', code: 'file-refused', values: { status: response.status, place: FILE, found } };
  } catch (error) {
    if (signal.aborted) throw error;
    return { path: '', code: 'file-unreachable', values: { place: FILE, found } };
  } finally {
    clearTimeout(timer);
    wait.abort();
  }
}
