import { describe, expect, it } from 'vitest';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan, PlanPlanting } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const assumed = (plan: Plan, parts: Plan['assumed']) => applyEdit(plan, { type: 'set-assumed', assumed: parts });

describe('what was assumed', () => {
  const plan = assumed(mixedGarden(), ['soil', 'season']);

  it('is told once somebody gives it another value, and the rest stays assumed', () => {
    const clay = applyEdit(plan, {
      type: 'change-site',
      change: { soil: plan.site.soil === 'clay' ? 'loam' : 'clay' },
    });
    expect(clay.assumed).toEqual(['season']);
  });

  it('stays where something else changes', () => {
    expect(applyEdit(plan, { type: 'rename-plan', name: 'Another' }).assumed).toEqual(['soil', 'season']);
  });

  it('is what one step says that fills it in', () => {
    const filled = applyEdit(plan, {
      type: 'together',
      edits: [
        { type: 'change-supply', change: { sources: [{ name: 'Hose bib', flow: { kind: 'typed', flow: 5 } }] } },
        { type: 'set-assumed', assumed: ['soil', 'season', 'flow'] },
      ],
    });
    expect(filled.assumed).toEqual(['soil', 'season', 'flow']);
  });

  it('stays for the days when a zone is added or taken away, until somebody changes the days of one', () => {
    const days = assumed(plan, ['days', 'zones']);
    const zone = { id: 'one-more', name: 'One more', wateringDays: ['mon'], plantings: [] } as const;
    const more = applyEdit(days, { type: 'add-zone', zone });
    expect(more.assumed).toEqual(['days']);
    expect(applyEdit(more, { type: 'remove-zone', zone: zone.id }).assumed).toEqual(['days']);
    const daily = { type: 'change-zone', zone: zone.id, change: { wateringDays: 7 } } as const;
    expect(applyEdit(more, daily)).not.toHaveProperty('assumed');
  });

  it('leaves no empty list behind', () => {
    expect(assumed(plan, [])).not.toHaveProperty('assumed');
  });

  it('of a planting is told field by field', () => {
    const zone = plan.zones[0];
    const planting = zone?.plantings[0];
    if (zone === undefined || planting === undefined) throw new Error('no planting');
    const at = { zone: zone.id, planting: planting.id };
    const begun = applyEdit(plan, { type: 'change-planting', ...at, change: { assumed: ['lines', 'extent'] } });
    const sized = applyEdit(begun, {
      type: 'change-planting',
      ...at,
      change: { extent: { kind: 'bed', length: 7, width: 3 } },
    });
    expect(sized.zones[0]?.plantings[0]?.assumed).toEqual(['lines']);
    const laid = applyEdit(sized, { type: 'change-planting', ...at, change: { lines: [] } });
    expect(laid.zones[0]?.plantings[0]).not.toHaveProperty('assumed');
  });

  it('of a crop is told apart: what grows, and the day on which it was planted', () => {
    const crop = { kind: 'crop', crop: 'tomato', plantedOn: '2027-05-10' } as const;
    const at = { zone: plan.zones[0]?.id ?? '', planting: plan.zones[0]?.plantings[0]?.id ?? '' };
    const change = (from: Plan, what: Partial<PlanPlanting>) =>
      applyEdit(from, { type: 'change-planting', ...at, change: what });
    const begun = change(plan, { need: crop, assumed: ['need', 'plantedOn'] });
    const assumedIn = (from: Plan) => from.zones[0]?.plantings[0]?.assumed;
    expect(assumedIn(begun)).toEqual(['need', 'plantedOn']);
    expect(assumedIn(change(begun, { need: { ...crop, plantedOn: '2027-05-20' } }))).toEqual(['need']);
    expect(assumedIn(change(begun, { need: { ...crop, crop: 'lettuce' } }))).toEqual(['plantedOn']);
    expect(assumedIn(change(begun, { need: { kind: 'class', class: 'low' } }))).toBeUndefined();
  });

  it('stays where the edit that fills it in says so, though it said the same before', () => {
    const at = { zone: plan.zones[0]?.id ?? '', planting: plan.zones[0]?.plantings[0]?.id ?? '' };
    const assumedLines = { lines: [], assumed: ['lines'] } as const;
    const begun = applyEdit(plan, { type: 'change-planting', ...at, change: assumedLines });
    const laid = { kind: 'solid', length: 3 } as const;
    const again = applyEdit(begun, { type: 'change-planting', ...at, change: { ...assumedLines, lines: [laid] } });
    expect(again.zones[0]?.plantings[0]).toMatchObject({ lines: [laid], assumed: ['lines'] });
  });
});
