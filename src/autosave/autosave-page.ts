import type { Plan } from '../plan/schema/plan-schema.ts';
import type { PlanStore, SeasonWork } from '../store/plan-store.ts';
import type { Drafts } from './drafts/drafts.ts';
import type { AutosaveReport } from './report.ts';
import type { SavedPlans } from './saved-plans.ts';

/** What autosave needs of the page around it. */
export interface AutosavePage {
  readonly store: PlanStore;
  /** Takes the steps of a season with pauses. Left out: without. */
  readonly work?: SeasonWork | undefined;
  /** Left out: nothing is saved, and plans come by links alone. */
  readonly saved: SavedPlans | undefined;
  /** Left out where nothing is saved. */
  readonly drafts: Drafts | undefined;
  /** Address of the page's own plan. */
  readonly base: () => string | undefined;
  readonly hasOwnPlan: () => boolean;
  readonly openOwnPlan: () => void;
  /** Takes the plan out of the page's address. */
  readonly leaveLink: () => void;
  readonly savePlanFile: (plan: Plan) => void;
  /** Hands over the text of a copy as a file, whether it can be read or not. */
  readonly saveCopyFile: (text: string | undefined) => void;
  readonly copyText: (text: string) => void;
  readonly onReport: (report: AutosaveReport) => void;
}
