/** A large plan that is about to be opened, read and computed before, a little at a time. */
import type { Season } from '../engine/season/season.ts';
import { computingSeason } from '../plan/compute-season.ts';
import { checkPlan, type ReadResult } from '../plan/reading/check-plan.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { PlanStore, SeasonWork } from '../store/plan-store.ts';
import { isLarge } from '../store/waiting-work.ts';

/** Without a season where that could not be computed. */
interface Prepared {
  readonly of: unknown;
  readonly result: Extract<ReadResult, { ok: true }>;
  readonly season: Season | undefined;
}

export class PreparedPlan {
  readonly #store: PlanStore;
  readonly #work: SeasonWork;
  #prepared: Prepared | undefined;

  constructor(store: PlanStore, work: SeasonWork) {
    this.#store = store;
    this.#work = work;
  }

  /** Undefined where there is nothing to wait for. */
  prepare(plan: Plan): Promise<unknown> | undefined {
    if (this.#prepared?.of === plan || !isLarge(plan.zones, plan.season)) return undefined;
    return this.#work(this.#preparing(plan, this.#store.view.season), plan.zones.length).catch(reportFault);
  }

  /** Opens a plan, with the season that was prepared of it; what was prepared of another is let go of. False where it is refused. */
  open(plan: Plan): boolean {
    const prepared = this.#prepared;
    this.#prepared = undefined;
    if (prepared?.of !== plan) return this.#store.openPlan(plan, 'autosave');
    return this.#store.openComputed(prepared.result, prepared.season, 'autosave');
  }

  *#preparing(plan: Plan, previous: Season | undefined): Generator<number, void> {
    const result = checkPlan(plan);
    if (!result.ok) return;
    this.#prepared = { of: plan, result, season: undefined };
    yield 0;
    this.#prepared = { of: plan, result, season: yield* computingSeason(result.plan, previous) };
  }
}

/** Node has no such thing. */
const reportFault = (error: unknown): void => globalThis.reportError?.(error);
