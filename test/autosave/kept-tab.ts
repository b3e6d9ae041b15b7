import type { KeptCopy } from '../../src/autosave/kept-copy.ts';
import { KeptStorage } from '../../src/autosave/kept-storage.ts';
import { KeptWriter, keptIn } from '../../src/autosave/kept-writer.ts';
import { PlanKeeper } from '../../src/autosave/plan-keeper.ts';
import { TypedTexts } from '../../src/autosave/typed/typed-texts.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { type Keeping, NOT_KEPT } from '../../src/store/keeping.ts';
import { PlanStore } from '../../src/store/plan-store.ts';
import { oneBed } from '../support/small-plans.ts';
import type { FakeStorage } from './fake-storage.ts';

export const KEY = 'runnel:beds';

export interface TabOptions {
  readonly link?: Promise<string | undefined>;
  readonly copy?: KeptCopy;
  readonly base?: string;
  readonly ownPlan?: Plan | undefined;
  readonly readOnly?: boolean;
  readonly isKept?: boolean;
  /** Names of the other tabs that are there. */
  readonly living?: ReadonlySet<string>;
}

/** One tab with the page that keeps its plan under `beds`, without a browser. */
export class Tab {
  readonly store = new PlanStore();
  readonly saved: Plan[] = [];
  readonly files: (string | undefined)[] = [];
  readonly copied: string[] = [];
  readonly typed: TypedTexts | undefined;
  keeping: Keeping = NOT_KEPT;
  leftLink = 0;
  readonly keeper: PlanKeeper;
  readonly started: Promise<void>;

  constructor(storage: FakeStorage, options: TabOptions = {}) {
    const { copy, base = 'garden.runnel.json', readOnly = false, isKept = true } = options;
    const ownPlan = 'ownPlan' in options ? options.ownPlan : oneBed();
    this.store.show({ locale: 'en-GB', readOnly });
    const kept = isKept ? new KeptStorage('beds', storage.access, copy) : undefined;
    this.typed = kept && new TypedTexts(kept.typed, { living: () => Promise.resolve(options.living ?? new Set()) });
    this.keeper = new PlanKeeper({
      store: this.store,
      writer: kept && new KeptWriter(kept, () => base),
      base: () => base,
      hasOwnPlan: () => ownPlan !== undefined,
      openOwnPlan: () => ownPlan && this.store.openPlan(ownPlan, 'page'),
      typed: this.typed,
      copyText: (text) => this.copied.push(text),
      leaveLink: () => this.leftLink++,
      savePlan: (plan) => this.saved.push(plan),
      saveKept: (text) => this.files.push(text),
      told: (keeping) => {
        this.keeping = keeping;
      },
    });
    this.started = this.keeper.start(options.link ?? Promise.resolve(undefined));
  }

  static async open(storage: FakeStorage, options: TabOptions = {}): Promise<Tab> {
    const tab = new Tab(storage, options);
    await tab.started;
    return tab;
  }

  get minutes(): number | undefined {
    return this.store.view.plan?.choices?.['beds']?.['2027-06-07']?.minutes;
  }

  get notes(): readonly string[] {
    return this.keeping.notes.map(({ kind }) => kind);
  }

  edit(minutes: number): boolean {
    return this.store.edit({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes }).ok;
  }

  text(kind: string): string {
    return this.keeping.notes.find((note) => note.kind === kind)?.text ?? '';
  }
}

/** The minutes of every plan that a storage holds, under the key first. */
export function minutesIn(storage: FakeStorage): readonly (number | undefined)[] {
  const keys = Array.from({ length: storage.length }, (_, place) => storage.key(place) ?? '');
  return [KEY, ...keys.filter((key) => key !== KEY)]
    .map((key) => keptIn(storage.getItem(key) ?? undefined)?.plan)
    .map((plan) => plan?.choices?.['beds']?.['2027-06-07']?.minutes);
}
