import type { LivingTabs } from './typed-texts.ts';

/** As long as a tab is waited for: one that is there answers at once. */
const ANSWERS_WITHIN_MS = 250;

type Message = { readonly ask: true } | { readonly here: string };

/** The tabs of one plan, which answer each other for as long as they are there. */
export class PageTabs implements LivingTabs {
  readonly #name: string;
  readonly #tab: string;
  #channel: BroadcastChannel | undefined;
  readonly #heard = new Set<string>();

  /** `tab` is the name that this one answers with. */
  constructor(storageKey: string, tab: string) {
    this.#name = `runnel-tabs:${storageKey}`;
    this.#tab = tab;
  }

  /** From now on this tab answers. */
  open(): void {
    if (this.#channel !== undefined || typeof BroadcastChannel === 'undefined') return;
    const channel = new BroadcastChannel(this.#name);
    channel.onmessage = ({ data }: MessageEvent<Message>) => {
      if ('here' in data) this.#heard.add(data.here);
      else channel.postMessage({ here: this.#tab } satisfies Message);
    };
    this.#channel = channel;
  }

  close(): void {
    this.#channel?.close();
    this.#channel = undefined;
  }

  async living(): Promise<ReadonlySet<string>> {
    this.#heard.clear();
    this.#channel?.postMessage({ ask: true } satisfies Message);
    await new Promise((resolve) => setTimeout(resolve, ANSWERS_WITHIN_MS));
    return new Set(this.#heard);
  }
}
