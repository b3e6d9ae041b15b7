import { describe, expect, it } from 'vitest';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { gardenFigures } from '../../../src/remedies/mix/mix-figures.ts';
import { editsToKeep, priceOf, tryTogether } from '../../../src/remedies/mix/what-if.ts';
import { denseAndShrubs } from '../../support/dense-and-shrubs.ts';

const plan = denseAndShrubs({ choices: {} });
const zone = plan.zones[0]?.id ?? '';
const shutOff: Edit = { type: 'change-planting', zone, planting: 'shrubs', change: { shutOff: true } };
const line = { kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows: 4, length: 10 } } as const;
const relaid: Edit = { type: 'replace-line', zone, planting: 'dense', index: 0, line };

describe('changes tried together', () => {
  it('come to what the plan would come to with each of them made', () => {
    const season = computeSeason(plan);
    const tried = tryTogether(plan, season, [shutOff, relaid]);
    const made = [shutOff, relaid].reduce(applyEdit, plan);
    expect(tried?.plan).toEqual(made);
    expect(gardenFigures(tried?.season ?? season)).toEqual(gardenFigures(computeSeason(made)));
  });

  it('are nothing where the plan refuses them', () => {
    const gone: Edit = { ...shutOff, planting: 'gone' };
    expect(tryTogether(plan, computeSeason(plan), [gone])).toBeUndefined();
  });

  it('are kept one after another, and only changes of a kind that a plan keeps', () => {
    const nested: Edit = {
      type: 'together',
      action: 'split-zone',
      edits: [shutOff, { type: 'together', edits: [relaid] }],
    };
    expect(editsToKeep([nested])).toEqual([shutOff, relaid]);
    expect(editsToKeep([{ type: 'rename-plan', name: 'Other' }])).toBeUndefined();
  });

  it('cost what so much water costs, where water has a price', () => {
    expect(priceOf(100, plan)).toBeUndefined();
    const price = { amount: 4, per: 1000, currency: 'USD' };
    const priced = { ...plan, supply: { ...(plan.supply ?? { sources: [] }), price } };
    expect(priceOf(3785.411784, priced)?.amount).toBeCloseTo(4, 9);
  });
});

describe('a plan with changes beside it', () => {
  const edits = editsToKeep([shutOff, relaid]) ?? [];
  const kept = applyEdit(plan, { type: 'set-what-if', name: 'Relaid', edits });

  it('is read as it was written, and in the other units states their lines in those', () => {
    expect(checkPlan(JSON.parse(JSON.stringify(kept)))).toEqual({ ok: true, plan: kept });
    const metric = applyEdit(kept, { type: 'convert-units', units: 'metric' });
    const [, other] = metric.whatIfs?.[0]?.edits ?? [];
    // 12 in, and 0.9 gal an hour.
    expect(other).toMatchObject({ line: { spacing: 30.48, flow: 3.407 } });
  });

  it('has those of one name once, and none when they are taken out', () => {
    const again = applyEdit(kept, { type: 'set-what-if', name: 'Relaid', edits: edits.slice(1) });
    expect(again.whatIfs).toEqual([{ name: 'Relaid', edits: edits.slice(1) }]);
    expect(applyEdit(again, { type: 'set-what-if', name: 'Relaid', edits: undefined })).toEqual(plan);
  });
});
