/** One request to a weather service, and everything that can go wrong with it, as a value. */

export type ServiceAnswer =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: ServiceFailure };

export type ServiceFailure =
  /** No connection, or a page's policy or the server's own forbids it: browsers do not say which. */
  | { readonly code: 'unreachable' }
  | { readonly code: 'timeout'; readonly seconds: number }
  /** Too many were asked for. `seconds`: when to try again, where the server says it. */
  | { readonly code: 'too-many'; readonly seconds: number | undefined }
  /** The server refuses. `reason`: in its own words, where it has any. */
  | { readonly code: 'refused'; readonly status: number; readonly reason: string }
  | { readonly code: 'too-long' }
  /** Whoever asked no longer waits. */
  | { readonly code: 'cancelled' };

/** So long an answer may take, ms; thirty years take some seconds. */
const WAIT_MS = 30_000;

/** Thirty years take less than a twentieth of it. */
const MOST_LETTERS = 20_000_000;
const REASON_LETTERS = 200;

/** Nothing but the address leaves the page: no cookies, no referrer; an answer that leads to another server is none. */
export async function requestWeather(
  address: URL,
  { signal, waitMs = WAIT_MS }: { readonly signal?: AbortSignal; readonly waitMs?: number } = {},
): Promise<ServiceAnswer> {
  const wait = AbortSignal.timeout(waitMs);
  const ends = signal === undefined ? wait : AbortSignal.any([signal, wait]);
  try {
    const options = { credentials: 'omit', referrerPolicy: 'no-referrer', redirect: 'error', signal: ends } as const;
    const response = await fetch(address, options);
    const text = await response.text();
    if (!response.ok) return { ok: false, why: refusalOf(response, text) };
    return text.length > MOST_LETTERS ? { ok: false, why: { code: 'too-long' } } : { ok: true, text };
  } catch {
    if (signal?.aborted === true) return { ok: false, why: { code: 'cancelled' } };
    if (wait.aborted) return { ok: false, why: { code: 'timeout', seconds: waitMs / 1000 } };
    return { ok: false, why: { code: 'unreachable' } };
  }
}

const TOO_MANY_REQUESTS = 429;

function refusalOf({ status, headers }: Response, text: string): ServiceFailure {
  const reason = reasonIn(text);
  if (status !== TOO_MANY_REQUESTS) return { code: 'refused', status, reason };
  const seconds = Number(headers.get('retry-after') || Number.NaN);
  return { code: 'too-many', seconds: Number.isFinite(seconds) ? seconds : undefined };
}

/** `reason` of an answer in the layout; empty for anything else. */
function reasonIn(text: string): string {
  try {
    const answer = JSON.parse(text) as { readonly reason?: unknown } | null;
    return typeof answer?.reason === 'string' ? answer.reason.slice(0, REASON_LETTERS) : '';
  } catch {
    return '';
  }
}
