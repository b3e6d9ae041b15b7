import { describe, expect, it } from 'vitest';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { PlanLine } from '../../../src/plan/schema/plan-schema.ts';
import { shoppingList } from '../../../src/remedies/mix/shopping-list.ts';
import { denseAndShrubs } from '../../support/dense-and-shrubs.ts';

const METERS_A_FOOT = 0.3048;
const plan = denseAndShrubs({ choices: {} });
const zone = plan.zones[0]?.id ?? '';
const listOf = (...edits: readonly Edit[]) => shoppingList(plan, applyEdit(plan, { type: 'together', edits }));
const line = (change: Partial<Extract<PlanLine, { kind: 'dripline' }>>): PlanLine => ({
  kind: 'dripline',
  flow: 0.9,
  spacing: 12,
  layout: { kind: 'rows', rows: 4, length: 10 },
  ...change,
});
const relaid = (next: PlanLine): Edit => ({ type: 'replace-line', zone, planting: 'dense', index: 0, line: next });

describe('what to buy', () => {
  it('is nothing for a plan that stays as it is', () => {
    expect(shoppingList(plan, plan)).toEqual({
      driplines: [],
      emitters: [],
      sprays: [],
      solidM: 0,
      shutOffs: 0,
      valves: 0,
      tees: 0,
      endCaps: 0,
    });
  });

  it('is dripline by length and size, with a tee and an end cap for each of its rows', () => {
    const { driplines, tees, endCaps } = listOf(relaid(line({})));
    expect(driplines).toHaveLength(1);
    expect(driplines[0]?.lengthM).toBeCloseTo(4 * 10 * METERS_A_FOOT, 9);
    expect(driplines[0]?.spacingM).toBeCloseTo(METERS_A_FOOT, 9);
    expect([tees, endCaps]).toEqual([4, 4]);
  });

  it('has two tees and no end cap for a row that is fed at both ends', () => {
    expect(listOf(relaid(line({ topology: 'loop' })))).toMatchObject({ tees: 8, endCaps: 0 });
  });

  it('leaves out what is there already, where it is of the same size', () => {
    const laid = applyEdit(plan, relaid(line({})));
    const wider = applyEdit(laid, relaid(line({ layout: { kind: 'rows', rows: 5, length: 10 } })));
    const { driplines, tees, endCaps } = shoppingList(laid, wider);
    expect(driplines[0]?.lengthM).toBeCloseTo(10 * METERS_A_FOOT, 9);
    expect([tees, endCaps]).toEqual([1, 1]);
    expect(shoppingList(wider, laid).driplines).toEqual([]);
  });

  it('counts emitters by flow, shut-offs, and a valve for a zone more', () => {
    const bought = listOf(
      relaid({ kind: 'point', flow: 2, count: 7 }),
      { type: 'change-planting', zone, planting: 'shrubs', change: { shutOff: true } },
      { type: 'add-zone', zone: { id: 'new', name: 'New', wateringDays: 2, plantings: [] } },
      { type: 'move-planting', zone, planting: 'shrubs', toZone: 'new' },
    );
    expect(bought).toMatchObject({ emitters: [{ pieces: 7 }], driplines: [], shutOffs: 1, valves: 1 });
    expect(bought.emitters[0]?.emitterFlowLph).toBeCloseTo(2 * 3.785411784, 6);
  });
});
