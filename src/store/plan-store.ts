/**
 * One plan and its season, without a page: reads, edits, takes back, computes, and tells whoever subscribed. `runnel-plan`
 * is its element; autosave subscribes beside it.
 */

import { runThrough } from '../engine/run-through.ts';
import type { Season } from '../engine/season/season.ts';
import { computingSeason } from '../plan/compute-season.ts';
import { type EditResult, tryEdit } from '../plan/edits/apply-edit.ts';
import type { Edit } from '../plan/edits/edit.ts';
import { canRedo, canUndo, type History, record, redo, startHistory, undo } from '../plan/history/history.ts';
import type { HistoryStep } from '../plan/history/history-key.ts';
import { checkPlan, type PlanMigration, type ReadResult } from '../plan/reading/check-plan.ts';
import type { Fault } from '../plan/reading/fault.ts';
import { readPlan } from '../plan/reading/read-plan.ts';
import { requireObject } from '../plan/require-argument.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import { NO_PLAN } from './no-plan.ts';
import { type PlanView, planSeasonOf, type Selection, type ShownYear } from './plan-view.ts';
import { refusalFault, refusedFor } from './refusals.ts';
import { notingSlow, rainKeptAnew } from './slow-seasons.ts';
import { isSameSelection, validSelection } from './valid-selection.ts';
import { AT_ONCE, type Later, resultWithin, type SeasonWork, WaitingWork } from './waiting-work.ts';

export type ChangeCause = 'load' | 'edit' | 'undo' | 'redo';

/** Who opened a plan: a person, the page that shows it, or autosave. */
export type OpenedBy = 'person' | 'page' | 'autosave';

/** Why another plan stands there. */
export interface PlanChange {
  readonly cause: ChangeCause;
  /** Given where the cause is a load. */
  readonly by?: OpenedBy;
  /** Given where the cause is an edit. */
  readonly edit: Edit | undefined;
}

/** Called after every change of the view; `change` is given where the plan itself is another. */
export type PlanListener = (view: PlanView, change: PlanChange | undefined) => void;

export type { Later, SeasonWork } from './waiting-work.ts';

/** How many plans were opened on the page. */
let documents = 0;

export class PlanStore {
  #view: PlanView = NO_PLAN;
  #history: History | undefined;
  readonly #listeners = new Set<PlanListener>();
  readonly #work = new WaitingWork();
  /** As the page says. */
  #readOnly = false;

  /** Another object whenever something in it is another, and only then. */
  get view(): PlanView {
    return this.#view;
  }

  /** Returns the function that ends the subscription. */
  subscribe(listener: PlanListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** How the plan is shown: the reader's locale, whether it can be edited, and whether its page opens plans from links. */
  show(how: {
    readonly locale?: string;
    readonly readOnly?: boolean;
    readonly fromLink?: boolean;
    readonly weatherService?: string | undefined;
  }): void {
    const { readOnly = this.#readOnly } = how;
    this.#readOnly = readOnly;
    this.#set({ ...how, readOnly: readOnly || this.#view.year !== undefined });
  }

  /** Shows the season of one of the plan's years, or that of its own weather again. Nothing of the plan changes. */
  showYear(season: Season, year: ShownYear | undefined): void {
    if (planSeasonOf({ season, year }) !== planSeasonOf(this.#view)) return;
    this.#set({ season, year, readOnly: this.#readOnly || year !== undefined });
  }

  /** A file is on its way. The plan on screen stays. */
  beginReading(): void {
    this.#set({ status: 'loading' });
  }

  /** Opens the text of a plan file. False where it is refused: `view.faults` says why and the plan on screen stays. */
  openText(text: string, by: OpenedBy = 'person'): boolean {
    return this.#open(readPlan(text), by);
  }

  /**
   * Opens the text of a plan file once its season is computed, which `work` does in steps: a season that asks for many plantings' share of the
   * rain for the first time takes a while. False where it is refused, or where `work` gave it up.
   */
  async openTextInSteps(text: string, work: SeasonWork, by: OpenedBy = 'person'): Promise<boolean> {
    const result = readPlan(text);
    if (!result.ok) return this.#open(result, by);
    const season = await work(
      notingSlow(computingSeason(result.plan, this.#view.season)),
      result.plan.zones.length,
    ).catch(reportFault);
    if (season === 'given-up') return false;
    return this.openComputed(result, season, by);
  }

  /** The same for a plan that is an object already. */
  openPlan(plan: unknown, by: OpenedBy = 'person'): boolean {
    return this.#open(checkPlan(plan), by);
  }

  /**
   * The same, at once where its season takes little, else once `work` has computed it in steps; meanwhile the plan on screen stays.
   */
  openPlanInSteps(plan: unknown, work: SeasonWork, by: OpenedBy = 'person'): boolean | Promise<boolean> {
    const result = checkPlan(plan);
    if (!result.ok) return this.#open(result, by);
    const steps = notingSlow(computingSeason(result.plan, this.#view.season));
    const atOnce = unlessItThrows(() => resultWithin(steps, AT_ONCE));
    if (atOnce !== undefined) return this.openComputed(result, atOnce.result, by);
    return work(steps, result.plan.zones.length)
      .catch(reportFault)
      .then((season) => season !== 'given-up' && this.openComputed(result, season, by));
  }

  /** Something was refused, here or before it reached the store. The plan on screen stays. */
  refuse(faults: readonly Fault[]): void {
    this.#set({ faults, status: this.#view.plan === undefined ? 'failed' : 'ready' });
  }

  /**
   * Makes one change, and says whether it was made. It is refused, and everything stays as it was, where the plan would not be
   * valid, where its season cannot be computed, where the plan can only be looked at and where none is open. What is no edit
   * at all throws a TypeError.
   */
  edit(edit: Edit): EditResult {
    requireObject('edit', edit);
    this.#work.settle();
    return runThrough(this.#editing(edit));
  }

  /**
   * The same, without keeping a page waiting: where the season takes long, `later` goes on with it, and the answer is promised.
   * What is asked for meanwhile is done after it; what is asked for without `later` does first what waits.
   */
  requestEdit(edit: Edit, later: Later): EditResult | Promise<EditResult> {
    requireObject('edit', edit);
    return this.#work.request(this.#editing(edit), later);
  }

  /** Takes the last change back or makes it again. False where there is none. */
  step(step: HistoryStep): boolean {
    this.#work.settle();
    return runThrough(this.#stepping(step));
  }

  /** The same as `requestEdit` does it. */
  requestStep(step: HistoryStep, later: Later): boolean | Promise<boolean> {
    return this.#work.request(this.#stepping(step), later);
  }

  /** Points every view at a zone, a planting, a week, as far as they are in the season. */
  select(selection: Selection): void {
    requireObject('selection', selection);
    const valid = validSelection(selection, this.#view.season);
    if (!isSameSelection(valid, this.#view.selection)) this.#set({ selection: valid });
  }

  *#editing(edit: Edit): Generator<number, EditResult> {
    const { plan, readOnly } = this.#view;
    if (plan === undefined) return refusedFor('no-plan');
    if (readOnly) return refusedFor('read-only');
    let attempt: { readonly plan: Plan; readonly season: Season };
    let result: EditResult;
    try {
      result = tryEdit(plan, edit);
      if (!result.ok) return result;
      // Other years are long to check too.
      const hasOtherYears = result.plan.site.years !== plan.site.years;
      const effort = hasOtherYears ? Number.POSITIVE_INFINITY : rainKeptAnew(result.plan, plan);
      yield effort;
      attempt = { plan: result.plan, season: yield* this.#seasonOf(result.plan, effort) };
    } catch (error) {
      reportFault(error);
      return refusedFor('not-computed');
    }
    this.#show(record(this.#history ?? startHistory(plan), edit, attempt.plan), attempt.season, {
      cause: 'edit',
      edit,
    });
    return result;
  }

  *#stepping(step: HistoryStep): Generator<number, boolean> {
    const before = this.#history;
    if (before === undefined || this.#view.readOnly) return false;
    const after = step === 'undo' ? undo(before) : redo(before);
    this.#show(after, yield* this.#seasonOf(after.present), { cause: step, edit: undefined });
    return after !== before;
  }

  #open(result: ReadResult, by: OpenedBy): boolean {
    if (!result.ok) {
      this.refuse(result.faults);
      return false;
    }
    return this.openComputed(
      result,
      unlessItThrows(() => runThrough(this.#seasonOf(result.plan))),
      by,
    );
  }

  /** Opens what was read, with its season; refused where that could not be computed. */
  openComputed(
    { plan, migration }: Extract<ReadResult, { ok: true }>,
    season: Season | undefined,
    by: OpenedBy,
  ): boolean {
    if (season === undefined) {
      this.refuse([refusalFault('not-computed')]);
      return false;
    }
    this.#work.settle();
    this.#show(startHistory(plan), season, { cause: 'load', by, edit: undefined }, migration);
    return true;
  }

  /** `effort`: what was spent on it before, in weeks of one planting. */
  *#seasonOf(plan: Plan, effort = 0): Generator<number, Season> {
    const { plan: before } = this.#view;
    const season = planSeasonOf(this.#view);
    return plan === before && season !== undefined ? season : yield* notingSlow(computingSeason(plan, season), effort);
  }

  /** The history's present is the open plan from now on. `migration`: of a plan that is opened. */
  #show(history: History, season: Season, change: PlanChange, migration?: PlanMigration): void {
    this.#history = history;
    const { plan: before, documentId, selection } = this.#view;
    const plan = history.present;
    const parts: Partial<PlanView> = {
      status: 'ready',
      plan,
      documentId: change.cause === 'load' ? ++documents : documentId,
      season,
      year: undefined,
      readOnly: this.#readOnly,
      migration: change.cause === 'load' ? migration : this.#view.migration,
      faults: this.#view.faults.length === 0 ? this.#view.faults : [],
      selection: validSelection(selection, season),
      canUndo: canUndo(history),
      canRedo: canRedo(history),
      undoStep: history.past.at(-1),
      redoStep: history.future[0],
    };
    this.#set(parts, plan === before ? undefined : change);
  }

  #set(parts: Partial<PlanView>, change?: PlanChange): void {
    const next = Object.freeze({ ...this.#view, ...parts });
    const keys = Object.keys(parts) as (keyof PlanView)[];
    if (keys.every((key) => Object.is(next[key], this.#view[key]))) return;
    this.#view = next;
    for (const listener of [...this.#listeners]) listener(next, change);
  }
}

/** What a calculation gives; where it throws, nothing, and the page hears of the error as of any that nobody caught. */
function unlessItThrows<Result>(calculate: () => Result): Result | undefined {
  try {
    return calculate();
  } catch (error) {
    return reportFault(error);
  }
}

function reportFault(error: unknown): undefined {
  // Node has no such thing.
  globalThis.reportError?.(error);
  return undefined;
}
