import type { Fault } from '../../plan/reading/fault.ts';
import type { Place } from '../../plan/reading/place.ts';

const FILE: Place = { part: 'file', fields: [] };

/** The text of a plan file, or why there is none. Rejects only when `signal` ends the wait. */
export async function fetchPlanText(address: string, signal: AbortSignal): Promise<string | Fault> {
  const found = address;
  try {
    const response = await fetch(address, { signal });
    if (response.ok) return await response.text();
    return { path: '', code: 'file-refused', values: { status: response.status, place: FILE, found } };
  } catch (error) {
    if (signal.aborted) throw error;
    return { path: '', code: 'file-unreachable', values: { place: FILE, found } };
  }
}
