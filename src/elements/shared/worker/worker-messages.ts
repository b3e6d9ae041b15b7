/** What a page and its worker tell one another: plain data alone, each of one piece of work by its number. */

export interface Asked {
  readonly id: number;
  /** Undefined: the work is given up. */
  readonly task?: { readonly name: string; readonly args: readonly unknown[] };
}

export type Told =
  /** The worker's first message: it has loaded. */
  | { readonly step: 'ready' }
  | { readonly step: 'working'; readonly id: number; readonly done: unknown }
  | { readonly step: 'done'; readonly id: number; readonly result: unknown }
  /** It threw. */
  | { readonly step: 'failed'; readonly id: number };
