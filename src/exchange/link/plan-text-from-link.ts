import { fromBase64Url } from './base64url.ts';
import { LINK_MARK, YEARS_MARK } from './link-to.ts';

/** A few kilobytes may be deflated zeros without end. */
const MOST_BYTES = 5_000_000;

/** `damaged`: it is cut short, changed, or no link of this kit. `too-large`: it holds more than 5 MB, which no plan needs. */
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

export interface LinkContent {
  readonly text: string;
  /** False for a link of 0.1.0, which has no checksum: a letter may have been changed on its way. */
  readonly isChecked: boolean;
  /** The plan's real years were left out: figures may differ from those of whoever made the link. */
  readonly lacksYears: boolean;
}

/**
 * The text of the plan that a link carries: the reverse of `linkTo`. `fragment` is `location.hash` or a whole address.
 * Undefined where it carries none; rejects with a `LinkError` where what it carries is cut short, changed or too large.
 */
export async function planTextFromLink(fragment: string): Promise<string | undefined> {
  return (await linkContent(fragment))?.text;
}

/** The same, with whether its checksum was there to be compared. */
export async function linkContent(fragment: string): Promise<LinkContent | undefined> {
  const parts = fragment.slice(fragment.indexOf('#') + 1).split('&');
  const data = parts.find((part) => part.startsWith(LINK_MARK))?.slice(LINK_MARK.length);
  if (data === undefined) return undefined;
  const bytes = fromBase64Url(data);
  const isChecked = bytes !== undefined && isGzip(bytes);
  const text = bytes && (await inflate(bytes, isChecked ? 'gzip' : 'deflate-raw').catch(() => undefined));
  if (text === TOO_LARGE) throw new LinkError('too-large');
  // A plan is an object; bytes whose first letter was changed may inflate to a few letters of anything.
  if (!text?.startsWith('{')) throw new LinkError('damaged');
  return { text, isChecked, lacksYears: parts.includes(YEARS_MARK) };
}

/** Its first two bytes (RFC 1952, 2.3.1). Deflate alone never begins so: the first would name the block type that RFC 1951, 3.2.3, forbids. */
function isGzip([first, second]: Uint8Array): boolean {
  return first === 0x1f && second === 0x8b;
}

const TOO_LARGE = Symbol('too large');

async function inflate(bytes: Uint8Array<ArrayBuffer>, format: CompressionFormat): Promise<string | typeof TOO_LARGE> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream(format));
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
