import type { Tabs } from './drafts.ts';

/** As long as a tab is waited for: one that is open answers at once. */
const ANSWERS_WITHIN_MS = 250;

type Message = { readonly ask: true } | { readonly here: string };

/** The tabs of one plan, which answer each other for as long as they are open. */
export class OpenTabs implements Tabs {
  readonly #name: string;
  readonly #tab: string;
  #channel: BroadcastChannel | undefined;
  readonly #heard = new Set<string>();

  /** `tab` is the id that this one answers with. */
  constructor(storageKey: string, tab: string) {
    this.#name = `runnel-tabs:${storageKey}`;
    this.#tab = tab;
  }

  /** From now on this tab answers. */
  connect(): void {
    if (this.#channel !== undefined || typeof BroadcastChannel === 'undefined') return;
    const channel = new BroadcastChannel(this.#name);
    channel.onmessage = ({ data }: MessageEvent<Message>) => {
      if ('here' in data) this.#heard.add(data.here);
      else channel.postMessage({ here: this.#tab } satisfies Message);
    };
    this.#channel = channel;
  }

  disconnect(): void {
    this.#channel?.close();
    this.#channel = undefined;
  }

  async open(): Promise<ReadonlySet<string>> {
    this.#heard.clear();
    this.#channel?.postMessage({ ask: true } satisfies Message);
    await new Promise((resolve) => setTimeout(resolve, ANSWERS_WITHIN_MS));
    return new Set(this.#heard);
  }
}
