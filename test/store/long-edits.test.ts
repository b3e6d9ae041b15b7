/** Edits whose season takes long are answered in order, once it is computed; till then everything is as it was. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Season } from '../../src/engine/season/season.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import type { EditResult } from '../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { PlanStore } from '../../src/store/plan-store.ts';
import { wasSlow } from '../../src/store/slow-seasons.ts';
import type { Later } from '../../src/store/waiting-work.ts';
import { benchGarden, inOneStore, zoneIdAt } from '../bench/gardens.ts';
import { mixedGarden } from '../support/small-plans.ts';

const LARGE = inOneStore(benchGarden(120));

/** What was put off, to be gone on with by hand. */
function byHand() {
  const put: Generator<number, void>[] = [];
  const later: Later = (steps) => put.push(steps);
  return { put, later, goOn: () => put.some((steps) => steps.next().done !== true) };
}

function storeOf(plan: Plan): PlanStore {
  const store = new PlanStore();
  if (!store.openPlan(plan)) throw new Error('the plan was refused');
  return store;
}

const climate = (plan: Plan, factor: number): Edit => ({
  type: 'set-climate',
  climate: { ...plan.site.climate, rain: plan.site.climate.rain?.map((month) => (month ?? 0) * factor) },
});
const minutes = (of: number): Edit => ({ type: 'set-minutes', zone: zoneIdAt(3), week: '2027-06-07', minutes: of });

describe('an edit whose season takes long', () => {
  it('is put off, leaves all as it was, and is answered once it is computed', async () => {
    const store = storeOf(LARGE);
    const { later, put, goOn } = byHand();
    const { view } = store;
    let told = 0;
    store.subscribe(() => {
      told += 1;
    });
    const answer = store.requestEdit(climate(LARGE, 1.5), later);
    expect(answer).toBeInstanceOf(Promise);
    expect(put).toHaveLength(1);
    while (goOn()) if (told === 0) expect(store.view).toBe(view);
    expect(await answer).toMatchObject({ ok: true, changed: true });
    expect(told).toBe(1);
    const { plan, season } = store.view;
    expect(season?.totals).toEqual(computeSeason(structuredClone(plan as Plan)).totals);
    expect(season?.garden.site).not.toEqual(view.season?.garden.site);
  });

  it('is done at once in a small plan, as one of minutes is in a large one', () => {
    const { later, put } = byHand();
    const small = storeOf(mixedGarden());
    expect(small.requestEdit(climate(mixedGarden(), 1.5), later)).toMatchObject({ ok: true });
    const large = storeOf(LARGE);
    expect(large.requestEdit(minutes(77), later)).toMatchObject({ ok: true, changed: true });
    expect(large.requestEdit({ type: 'set-week-rain', week: '2027-03-01', rain: 4 }, later)).toMatchObject({
      ok: true,
    });
    expect(put).toEqual([]);
  });

  it('is put off in a garden of many plantings where each keeps its rain anew, and its views are drawn in turn', async () => {
    const { plan } = readPlan(readFileSync('demo/plans/lantern-lane.runnel.json', 'utf8')) as { plan: Plan };
    const store = storeOf(plan);
    const { later, put, goOn } = byHand();
    expect(wasSlow(storeOf(mixedGarden()).view.season as Season)).toBe(false);
    expect(store.requestEdit({ type: 'rename-plan', name: 'Lane' }, later)).toMatchObject({ ok: true });
    const answer = store.requestEdit({ type: 'change-site', change: { latitude: 47.6 } }, later);
    expect(put).toHaveLength(1);
    while (goOn());
    expect(await answer).toMatchObject({ ok: true, changed: true });
    expect(wasSlow(store.view.season as Season)).toBe(true);
  });

  it('comes before what is asked for after it, undo included', async () => {
    const store = storeOf(LARGE);
    const { later, goOn } = byHand();
    const answers: string[] = [];
    const note = (what: string) => (answer: EditResult | boolean) => {
      answers.push(`${what} ${typeof answer === 'boolean' ? answer : answer.ok}`);
    };
    const all = [
      Promise.resolve(store.requestEdit(climate(LARGE, 1.5), later)).then(note('climate')),
      Promise.resolve(store.requestEdit(minutes(77), later)).then(note('minutes')),
      Promise.resolve(store.requestEdit(minutes(-4), later)).then(note('wrong minutes')),
      Promise.resolve(store.requestStep('undo', later)).then(note('undo')),
    ];
    expect(store.view.plan).toEqual(LARGE);
    while (goOn());
    await Promise.all(all);
    expect(answers).toEqual(['climate true', 'minutes true', 'wrong minutes false', 'undo true']);
    expect(store.view.plan?.choices).toEqual(LARGE.choices);
    expect(store.view.plan?.site.climate).not.toEqual(LARGE.site.climate);
    expect(store.view.redoStep?.edit).toEqual(minutes(77));
    expect(store.view.season?.totals).toEqual(computeSeason(structuredClone(store.view.plan as Plan)).totals);
  });

  it('is done first where code asks for something that is answered at once', async () => {
    const store = storeOf(LARGE);
    const { later, goOn } = byHand();
    const answer = store.requestEdit(climate(LARGE, 1.5), later);
    goOn();
    expect(store.edit(minutes(77))).toMatchObject({ ok: true });
    expect(store.view.undoStep?.edit).toEqual(minutes(77));
    expect(store.view.undoStep?.before.site.climate).not.toEqual(LARGE.site.climate);
    expect(await answer).toMatchObject({ ok: true });
    expect(goOn()).toBe(false);
    expect(store.step('undo')).toBe(true);
    expect(store.step('undo')).toBe(true);
    expect(store.view.plan).toEqual(LARGE);
  });

  it('belongs to the plan in which it was made, where another is opened meanwhile', async () => {
    const store = storeOf(LARGE);
    const { later, goOn } = byHand();
    const changes: (string | undefined)[] = [];
    store.subscribe((_, change) => changes.push(change?.cause));
    const answer = store.requestEdit(climate(LARGE, 1.5), later);
    store.openPlan(mixedGarden());
    expect(await answer).toMatchObject({ ok: true });
    while (goOn());
    expect(changes).toEqual(['edit', 'load']);
    expect(store.view.plan).toEqual(mixedGarden());
    expect(store.view.canUndo).toBe(false);
  });

  it('is answered at once to whoever edits while it is told of', async () => {
    const store = storeOf(LARGE);
    const { later, goOn } = byHand();
    let inside: EditResult | undefined;
    store.subscribe((_, change) => {
      if (change?.edit?.type === 'set-climate') inside = store.edit(minutes(55));
    });
    const answer = store.requestEdit(climate(LARGE, 1.5), later);
    while (goOn());
    await answer;
    expect(inside).toMatchObject({ ok: true });
    expect(store.view.undoStep?.edit).toEqual(minutes(55));
  });
});

describe('a plan that is set', () => {
  it('is opened in steps where its season takes long, and stays away where it is given up', async () => {
    const store = storeOf(mixedGarden());
    const taken = store.openPlanInSteps(LARGE, async (steps) => {
      for (;;) {
        const step = steps.next();
        if (step.done === true) return step.value;
      }
    });
    expect(store.view.plan).toEqual(mixedGarden());
    expect(await taken).toBe(true);
    expect(store.view.plan).toEqual(LARGE);
    expect(await store.openPlanInSteps(inOneStore(benchGarden(121)), () => Promise.resolve('given-up'))).toBe(false);
    expect(store.view.plan).toEqual(LARGE);
    expect(store.openPlanInSteps(mixedGarden(), () => Promise.resolve('given-up'))).toBe(true);
  });
});
