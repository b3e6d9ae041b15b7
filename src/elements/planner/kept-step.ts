/**
 * The step to a plan that a visit is at, and the row that is being typed: they outlive a reload with the tab, and the tab where the
 * plan itself is stored in this browser. A row belongs to one tab for as long as that is open.
 */
import { OpenTabs } from '../../autosave/drafts/open-tabs.ts';
import { newId, TextGroup, TextStorage } from '../../autosave/text-storage.ts';
import { START_STEPS, type StepOrSeason } from '../start/start-steps.ts';

const NAME = 'runnelStep';

export interface KeptStep {
  readonly step: StepOrSeason;
  /** As it was stored: whoever shows it looks first whether it is one. */
  readonly row: unknown;
  /** Name of the plan that it belongs to. */
  readonly plan: string | undefined;
}

/** Where it is kept: with the tab's place in the browser's history, beside the plan of that storage key, or both. */
export interface StepPlace {
  readonly hasAddress: boolean;
  readonly storageKey: string | undefined;
}

/** With the tab that stored it, and when, in ms. */
interface Stored extends KeptStep {
  readonly tab: string;
  readonly at: number;
}

export class KeptSteps {
  readonly #tab = newId();
  #place: StepPlace = { hasAddress: false, storageKey: undefined };
  #tabs: OpenTabs | undefined;
  #group: TextGroup | undefined;
  /** What the history of this tab had, until its row is asked for. */
  #ofHistory: Stored | undefined;

  /** What there is to go on with; its row comes later. Undefined where the steps were done or left, or not begun. */
  open(place: StepPlace): Omit<KeptStep, 'row'> | undefined {
    const { hasAddress, storageKey } = place;
    this.#place = place;
    this.#group = storageKey === undefined ? undefined : new TextGroup(storage, 'step', storageKey);
    this.#tabs = new OpenTabs(`step:${storageKey ?? ''}`, this.#tab);
    this.#tabs.connect();
    this.#ofHistory = hasAddress ? storedFrom((Object(history.state) as Record<string, unknown>)[NAME]) : undefined;
    return this.#ofHistory ?? this.#stored()[0];
  }

  close(): void {
    this.#tabs?.disconnect();
    this.#tabs = undefined;
  }

  /** The row that a tab has left which is gone, this one before it was loaded again among them. It is this tab's from then on. */
  async row(): Promise<unknown> {
    const [tabs, ofHistory] = [this.#tabs, this.#ofHistory];
    const open = await tabs?.open();
    if (open === undefined || this.#tabs !== tabs) return undefined;
    this.#ofHistory = undefined;
    const left = this.#stored().filter(({ tab }) => tab !== this.#tab && !open.has(tab));
    const isOwn = ofHistory?.row !== undefined && !open.has(ofHistory.tab);
    const taken = isOwn ? ofHistory : left.find(({ row }) => row !== undefined);
    for (const { tab, row } of left) if (row === undefined || tab === taken?.tab) this.#group?.remove(tab);
    return taken?.row;
  }

  keep(kept: KeptStep | undefined): void {
    const row = kept?.row ?? this.#ofHistory?.row;
    const stored = kept && { ...kept, row, tab: this.#tab, at: Date.now() };
    if (this.#place.hasAddress) keepWithTab(stored);
    if (stored === undefined) this.#group?.remove(this.#tab);
    else this.#group?.put(this.#tab, JSON.stringify(stored));
  }

  /** The latest first. */
  #stored(): readonly Stored[] {
    const texts = this.#group?.ids().map((id) => this.#group?.read(id).text) ?? [];
    return texts.flatMap((text) => storedFrom(parsed(text)) ?? []).toSorted((one, other) => other.at - one.at);
  }
}

const storage = new TextStorage(() => localStorage);

function keepWithTab(kept: Stored | undefined): void {
  const { [NAME]: _, ...others } = Object(history.state) as Record<string, unknown>;
  history.replaceState(kept === undefined ? others : { ...others, [NAME]: kept }, '');
}

function parsed(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return undefined;
  }
}

/** Anything may lie in a browser's storage. */
function storedFrom(value: unknown): Stored | undefined {
  const { step, row, plan, tab, at }: { readonly [Key in keyof Stored]?: unknown } = Object(value);
  if (!isStep(step) || typeof tab !== 'string') return undefined;
  return { step, row, plan: typeof plan === 'string' ? plan : undefined, tab, at: typeof at === 'number' ? at : 0 };
}

const isStep = (step: unknown): step is StepOrSeason => step === 'season' || START_STEPS.some((each) => each === step);
