import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import type { EditResult } from '../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import { writePlan } from '../../src/plan/reading/write-plan.ts';
import { type PlanChange, PlanStore } from '../../src/store/plan-store.ts';
import type { PlanView } from '../../src/store/plan-view.ts';
import { oneBed } from '../support/small-plans.ts';

const calculation = vi.hoisted(() => ({ throws: false }));
vi.mock(import('../../src/plan/compute-season.ts'), async (original) => {
  const { computingSeason } = await original();
  return {
    *computingSeason(...given) {
      if (calculation.throws) throw new Error('Out of luck.');
      return yield* computingSeason(...given);
    },
  };
});

function opened(): PlanStore {
  const store = new PlanStore();
  store.openPlan(oneBed());
  return store;
}

function heard(store: PlanStore): { view: PlanView; change: PlanChange | undefined }[] {
  const calls: { view: PlanView; change: PlanChange | undefined }[] = [];
  store.subscribe((view, change) => calls.push({ view, change }));
  return calls;
}

const codesOf = (result: EditResult) => (result.ok ? [] : result.faults.map(({ code }) => code));

const firstWeek = oneBed().season.firstDay;
const setMinutes = { type: 'set-minutes', zone: 'beds', week: firstWeek, minutes: 90 } as const;

it('starts empty', () => {
  expect(new PlanStore().view).toMatchObject({ status: 'empty', plan: undefined, season: undefined, canUndo: false });
});

it('opens the text of a file and computes its season', () => {
  const store = new PlanStore();
  const calls = heard(store);
  expect(store.openText(writePlan(oneBed()))).toBe(true);
  expect(store.view).toMatchObject({ status: 'ready', plan: oneBed(), faults: [] });
  expect(store.view.season?.zones).toHaveLength(1);
  expect(calls.map(({ change }) => change)).toEqual([{ cause: 'load', by: 'person', edit: undefined }]);
});

it('says what is different for a plan of an older version, through edits and undo, until another one is opened', () => {
  const weeks = { [firstWeek]: { rain: 1 } };
  const store = new PlanStore();
  expect(store.openPlan({ ...oneBed({ log: { weeks } }), version: 1 })).toBe(true);
  const { migration } = store.view;
  expect(migration?.from).toBe(1);
  expect(migration?.changes).toContainEqual({ code: 'rain-read-through', values: { weeks: 1 } });
  store.edit(setMinutes);
  expect(store.view.migration).toBe(migration);
  store.step('undo');
  expect(store.view.migration).toBe(migration);
  store.openText('{');
  expect(store.view.migration).toBe(migration);
  store.openPlan(oneBed());
  expect(store.view.migration).toBeUndefined();
});

it('refuses a bad file whole: each fault is listed and the plan on screen stays', () => {
  const store = opened();
  const { plan, season } = store.view;
  const bad = { ...oneBed(), name: 5, season: { firstDay: 'spring', weeks: 0 } };
  expect(store.openText(JSON.stringify(bad))).toBe(false);
  expect(store.view).toMatchObject({ status: 'ready' });
  expect(store.view.plan).toBe(plan);
  expect(store.view.season).toBe(season);
  expect(store.view.faults.map(({ path }) => path).sort()).toEqual(['name', 'season.firstDay', 'season.weeks']);
});

it('has failed where the first file is refused, and is ready once another is taken', () => {
  const store = new PlanStore();
  store.openText('{');
  expect(store.view).toMatchObject({ status: 'failed', plan: undefined });
  expect(store.view.faults).toHaveLength(1);
  store.openPlan(oneBed());
  expect(store.view).toMatchObject({ status: 'ready', faults: [] });
});

it('keeps the plan on screen while another file is read', () => {
  const store = opened();
  const { plan } = store.view;
  store.beginReading();
  expect(store.view.status).toBe('loading');
  expect(store.view.plan).toBe(plan);
});

it('makes an edit, computes what follows, and tells which edit it was', () => {
  const store = opened();
  const calls = heard(store);
  expect(store.edit(setMinutes)).toEqual({ ok: true, plan: store.view.plan, changed: true });
  const zone = store.view.season?.zones[0];
  expect(zone && zoneFigure(zone, 'minutes', 0)).toBe(90);
  expect(store.view).toMatchObject({ canUndo: true, canRedo: false });
  expect(calls.map(({ change }) => change)).toEqual([{ cause: 'edit', edit: setMinutes }]);
});

it('hands the season before to the calculation: zones that did not change keep their weeks', () => {
  const store = new PlanStore();
  const plan = oneBed();
  const [bed] = plan.zones;
  if (bed === undefined) throw new Error('the plan has no bed');
  store.openPlan({ ...plan, zones: [bed, { ...bed, id: 'other', name: 'Other' }] });
  const before = store.view.season?.zones[1];
  store.edit(setMinutes);
  expect(store.view.season?.zones[1]).toBe(before);
});

it('refuses an edit that does not fit, answers why, and leaves everything as it was', () => {
  const store = opened();
  const { view } = store;
  const calls = heard(store);
  expect(store.edit({ ...setMinutes, minutes: -5 })).toMatchObject({
    ok: false,
    faults: [{ path: `choices.beds.${firstWeek}.minutes` }],
  });
  expect(store.view).toBe(view);
  expect(calls).toEqual([]);
});

it('accepts an edit that asks for what is so already, and changes nothing', () => {
  const store = opened();
  store.edit(setMinutes);
  const { view } = store;
  expect(store.edit(setMinutes)).toEqual({ ok: true, plan: view.plan, changed: false });
  expect(store.view).toBe(view);
});

describe('where an error is thrown', () => {
  // As a browser has it.
  const reportError = vi.fn();
  beforeEach(() => void vi.stubGlobal('reportError', reportError));
  afterEach(() => {
    vi.unstubAllGlobals();
    calculation.throws = false;
    reportError.mockClear();
  });

  const incomplete = { type: 'add-line', zone: 'beds', planting: 'tomatoes', line: null };

  // An edit that is none is refused before anything could throw.
  it.each<[string, unknown, string, number]>([
    ['by the calculation', { type: 'set-note', zone: 'beds', week: firstWeek, note: 'Mulched' }, 'not-computed', 1],
    ['by the edit itself', incomplete, 'edit-incomplete', 0],
    ['by a part of several edits', { type: 'together', label: 'Two', edits: [setMinutes, null] }, 'edit-unknown', 0],
  ])('refuses an edit, %s, and leaves plan, history and view as they were', (what, edit, code, reports) => {
    const store = opened();
    store.edit(setMinutes);
    const { view } = store;
    const calls = heard(store);
    calculation.throws = what === 'by the calculation';
    expect(codesOf(store.edit(edit as Edit))).toEqual([code]);
    calculation.throws = false;
    expect(reportError).toHaveBeenCalledTimes(reports);
    expect(store.view).toBe(view);
    expect(calls).toEqual([]);
    store.step('undo');
    expect(store.view).toMatchObject({ plan: oneBed(), canUndo: false, canRedo: true });
  });
});

it('numbers its documents: another for each plan that is opened, the same through edits, undo and redo', () => {
  const store = new PlanStore();
  expect(store.view.documentId).toBe(undefined);
  store.openPlan(oneBed());
  const { documentId } = store.view;
  store.edit(setMinutes);
  store.step('undo');
  store.step('redo');
  expect(store.view.documentId).toBe(documentId);
  store.openText('{');
  expect(store.view.documentId).toBe(documentId);
  store.openPlan(oneBed());
  expect(store.view.documentId).not.toBe(documentId);
  expect(opened().view.documentId).not.toBe(store.view.documentId);
});

it('refuses an edit while no plan is open, with a code of its own', () => {
  const store = new PlanStore();
  const { view } = store;
  expect(codesOf(store.edit(setMinutes))).toEqual(['no-plan']);
  expect(store.view).toBe(view);
});

it('takes changes back one by one and makes them again', () => {
  const store = opened();
  const plans = [store.view.plan];
  for (const minutes of [10, 20]) {
    store.edit({ ...setMinutes, minutes });
    plans.push(store.view.plan);
  }
  store.step('undo');
  expect(store.view.plan).toBe(plans[1]);
  store.step('undo');
  expect(store.view.plan).toBe(plans[0]);
  expect(store.view).toMatchObject({ canUndo: false, canRedo: true });
  expect(store.step('undo')).toBe(false);
  store.step('redo');
  store.step('redo');
  expect(store.view.plan).toBe(plans[2]);
  expect(store.view).toMatchObject({ canUndo: true, canRedo: false });
});

it('forgets what was taken back once another change is made', () => {
  const store = opened();
  store.edit({ ...setMinutes, minutes: 10 });
  store.step('undo');
  store.edit({ ...setMinutes, minutes: 20 });
  expect(store.view.canRedo).toBe(false);
});

it('starts a new history with a file that is opened', () => {
  const store = opened();
  store.edit(setMinutes);
  store.openPlan(oneBed());
  expect(store.view).toMatchObject({ canUndo: false, canRedo: false });
});

it('takes no edit and no undo while the plan can only be looked at', () => {
  const store = opened();
  store.edit(setMinutes);
  const { plan } = store.view;
  store.show({ locale: 'en', readOnly: true });
  expect(codesOf(store.edit({ ...setMinutes, minutes: 5 }))).toEqual(['read-only']);
  expect(store.step('undo')).toBe(false);
  expect(store.view.plan).toBe(plan);
});

it('tells nobody where nothing changed', () => {
  const store = opened();
  store.edit(setMinutes);
  store.select({ zone: 'beds', week: 1 });
  store.show({ locale: 'en', readOnly: false });
  const calls = heard(store);
  const { view } = store;
  store.edit(setMinutes);
  store.select({ zone: 'beds', week: 1 });
  store.show({ locale: 'en', readOnly: false });
  expect(calls).toEqual([]);
  expect(store.view).toBe(view);
});

it('selects only what is in the season', () => {
  const store = opened();
  store.select({ zone: 'beds', planting: 'tomatoes', week: 2 });
  expect(store.view.selection).toEqual({ zone: 'beds', planting: 'tomatoes', week: 2 });
  store.select({ zone: 'nowhere', planting: 'tomatoes', week: 99 });
  expect(store.view.selection).toEqual({});
});

it('lets go of a selection that an edit removes', () => {
  const store = opened();
  store.select({ zone: 'beds', planting: 'tomatoes', week: 2 });
  store.edit({ type: 'remove-planting', zone: 'beds', planting: 'tomatoes' });
  expect(store.view.selection).toEqual({ zone: 'beds', planting: undefined, week: 2 });
});

it('tells a listener nothing more once it has ended its subscription', () => {
  const store = opened();
  const calls: PlanView[] = [];
  const end = store.subscribe((view) => calls.push(view));
  end();
  store.edit(setMinutes);
  expect(calls).toEqual([]);
});
