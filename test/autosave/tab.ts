import { Autosave } from '../../src/autosave/autosave.ts';
import { Drafts } from '../../src/autosave/drafts/drafts.ts';
import { PlanStorage } from '../../src/autosave/plan-storage.ts';
import {
  AUTOSAVE_OFF,
  type AutosaveNote,
  type AutosaveNoteCode,
  type AutosaveReport,
} from '../../src/autosave/report.ts';
import { savedPlanIn } from '../../src/autosave/saved-plan.ts';
import { SavedPlans } from '../../src/autosave/saved-plans.ts';
import type { StorageMirror } from '../../src/autosave/storage-mirror.ts';
import type { LinkContent } from '../../src/exchange/link/plan-text-from-link.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { PlanStore, type SeasonWork } from '../../src/store/plan-store.ts';
import { oneBed } from '../support/small-plans.ts';
import type { FakeStorage } from './fake-storage.ts';

export const KEY = 'runnel:beds';

export interface TabOptions {
  readonly link?: Promise<LinkContent | undefined>;
  readonly mirror?: StorageMirror;
  readonly base?: string;
  readonly ownPlan?: Plan | undefined;
  readonly readOnly?: boolean;
  readonly savesPlans?: boolean;
  readonly work?: SeasonWork | undefined;
  /** Ids of the other tabs that are open. */
  readonly openTabs?: ReadonlySet<string>;
}

/** One tab with a page that saves its plan under `beds`, without a browser. */
export class Tab {
  readonly store = new PlanStore();
  readonly planFiles: Plan[] = [];
  readonly copyFiles: (string | undefined)[] = [];
  readonly copiedTexts: string[] = [];
  readonly drafts: Drafts | undefined;
  report: AutosaveReport = AUTOSAVE_OFF;
  leftLink = 0;
  readonly autosave: Autosave;
  readonly started: Promise<void>;

  constructor(storage: FakeStorage, options: TabOptions = {}) {
    const { mirror, base = 'garden.runnel.json', readOnly = false, savesPlans = true } = options;
    const ownPlan = 'ownPlan' in options ? options.ownPlan : oneBed();
    this.store.show({ locale: 'en-GB', readOnly });
    const stored = savesPlans ? new PlanStorage('beds', storage.access, mirror) : undefined;
    this.drafts = stored && new Drafts(stored.drafts, { open: () => Promise.resolve(options.openTabs ?? new Set()) });
    this.autosave = new Autosave({
      store: this.store,
      work: options.work,
      saved: stored && new SavedPlans(stored, () => base),
      drafts: this.drafts,
      base: () => base,
      hasOwnPlan: () => ownPlan !== undefined,
      openOwnPlan: () => ownPlan && this.store.openPlan(ownPlan, 'page'),
      leaveLink: () => this.leftLink++,
      savePlanFile: (plan) => this.planFiles.push(plan),
      saveCopyFile: (text) => this.copyFiles.push(text),
      copyText: (text) => this.copiedTexts.push(text),
      onReport: (report) => {
        this.report = report;
      },
    });
    this.started = this.autosave.start(options.link ?? Promise.resolve(undefined));
  }

  static async open(storage: FakeStorage, options: TabOptions = {}): Promise<Tab> {
    const tab = new Tab(storage, options);
    await tab.started;
    return tab;
  }

  get minutes(): number | undefined {
    return this.store.view.plan?.choices?.['beds']?.['2027-06-07']?.minutes;
  }

  get notes(): readonly AutosaveNoteCode[] {
    return this.report.notes.map(({ code }) => code);
  }

  edit(minutes: number): boolean {
    return this.store.edit({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes }).ok;
  }

  note(code: AutosaveNoteCode): AutosaveNote | undefined {
    return this.report.notes.find((note) => note.code === code);
  }
}

/** The minutes of every plan that a storage holds, under the key first. */
export function minutesIn(storage: FakeStorage): readonly (number | undefined)[] {
  const keys = Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? '');
  return [KEY, ...keys.filter((key) => key !== KEY)]
    .map((key) => savedPlanIn(storage.getItem(key) ?? undefined)?.plan)
    .map((plan) => plan?.choices?.['beds']?.['2027-06-07']?.minutes);
}
