import { fromBase64Url } from './base64url.ts';
import { LINK_MARK } from './link-to.ts';

/** A few kilobytes may be deflated zeros without end. */
const MOST_BYTES = 5_000_000;

/** `damaged`: it is cut short, or no link of this kit. `too-large`: it holds more than 5 MB, which no plan needs. */
export type LinkErrorCode = 'damaged' | 'too-large';

/** A link whose plan cannot be had. Language says so to a reader, by the code. */
export class LinkError extends Error {
  readonly code: LinkErrorCode;

  constructor(code: LinkErrorCode) {
    super(`The link is ${code}.`);
    this.name = 'LinkError';
    this.code = code;
  }
}

/**
 * The text of the plan that a link carries: the reverse of `linkTo`. `fragment` is `location.hash` or a whole address.
 * Undefined where it carries none; rejects with a `LinkError` where what it carries is cut short, damaged or too large.
 */
export async function planTextFromLink(fragment: string): Promise<string | undefined> {
  const parts = fragment.slice(fragment.indexOf('#') + 1).split('&');
  const data = parts.find((part) => part.startsWith(LINK_MARK))?.slice(LINK_MARK.length);
  if (data === undefined) return undefined;
  const bytes = fromBase64Url(data);
  const inflated = bytes && (await inflate(bytes).catch(() => undefined));
  if (inflated === undefined || inflated === '') throw new LinkError('damaged');
  if (inflated === TOO_LARGE) throw new LinkError('too-large');
  return inflated;
}

const TOO_LARGE = Symbol('too large');

async function inflate(bytes: Uint8Array<ArrayBuffer>): Promise<string | typeof TOO_LARGE> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  const reader = stream.getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let size = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.length;
    if (size > MOST_BYTES) {
      // What is left is dropped, so how that ends is of no interest.
      reader.cancel().catch(() => undefined);
      return TOO_LARGE;
    }
    text += decoder.decode(part.value, { stream: true });
  }
  return text + decoder.decode();
}
