import type { Fault } from '../../plan/reading/fault.ts';
import type { Place } from '../../plan/reading/place.ts';
import { MOST_CHARACTERS } from '../../plan/reading/read-plan.ts';
import { warnDeveloper } from '../shared/warn-developer.ts';

const FILE: Place = { part: 'file', fields: [] };

/** So long a file may take to come, ms; a large one over a slow line comes in less. */
const WAIT_MS = 60_000;

/** In UTF-8 no character of a plan's text takes more. */
const MOST_BYTES_EACH = 3;

/** The text of a plan file, or why there is none. Rejects only when `signal` ends the wait, which ends by itself after `waitMs`. */
export async function fetchPlanText(address: string, signal: AbortSignal, waitMs = WAIT_MS): Promise<string | Fault> {
  const found = address;
  const wait = new AbortController();
  const timer = setTimeout(() => wait.abort(), waitMs);
  signal.addEventListener('abort', () => wait.abort(), { signal: wait.signal });
  try {
    const response = await fetch(address, { signal: wait.signal });
    if (response.ok) return await textOf(response);
    return { path: '', code: 'file-refused', values: { status: response.status, place: FILE, found } };
  } catch (error) {
    if (signal.aborted) throw error;
    return { path: '', code: 'file-unreachable', values: { place: FILE, found } };
  } finally {
    clearTimeout(timer);
    wait.abort();
  }
}

/** Tells whoever makes the page that a plan did not come. */
export function warnOfAddress(element: Element, address: string, fault: Fault): void {
  const status = fault.code === 'file-refused' ? fault.values.status : 0;
  warnDeveloper(element, `the plan at "${address}" did not come; the status of the answer is ${status}.`);
}

/** No more of it than tells that it is too long for a plan: an answer may have no end. */
async function textOf({ body }: Response): Promise<string> {
  if (body === null) return '';
  const reader = body.getReader();
  const decoder = new TextDecoder();
  const parts: string[] = [];
  let characters = 0;
  while (characters <= MOST_CHARACTERS) {
    const { done, value } = await reader.read();
    const part = decoder.decode(value, { stream: !done });
    parts.push(part);
    characters += part.length;
    if (done) break;
  }
  return parts.join('');
}

/** The text of a file that a person chose, no more of it than that, or why there is none. */
export function filePlanText(file: Blob): Promise<string | Fault> {
  const found = file instanceof File ? file.name : '';
  const beginning = file.slice(0, MOST_BYTES_EACH * (MOST_CHARACTERS + 1));
  return beginning.text().catch(() => ({ path: '', code: 'file-unreadable', values: { place: FILE, found } }));
}
