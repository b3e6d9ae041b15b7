import type { Plan } from '../plan/schema/plan-schema.ts';
import type { Keeping } from '../store/keeping.ts';
import type { PlanStore } from '../store/plan-store.ts';
import type { KeptWriter } from './kept-writer.ts';
import type { TypedTexts } from './typed/typed-texts.ts';

/** What the keeper needs of the page around it. */
export interface KeeperPage {
  readonly store: PlanStore;
  /** Left out: nothing is kept, and plans come by links alone. */
  readonly writer: KeptWriter | undefined;
  /** Left out where nothing is kept. */
  readonly typed: TypedTexts | undefined;
  /** Address of the page's own plan. */
  readonly base: () => string | undefined;
  readonly hasOwnPlan: () => boolean;
  readonly openOwnPlan: () => void;
  /** Takes the plan out of the page's address. */
  readonly leaveLink: () => void;
  readonly savePlan: (plan: Plan) => void;
  /** Hands over what was put aside, whether it can be read or not. */
  readonly saveKept: (text: string | undefined) => void;
  readonly copyText: (text: string) => void;
  readonly told: (keeping: Keeping) => void;
}
