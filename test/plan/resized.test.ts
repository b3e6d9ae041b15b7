import { expect, it } from 'vitest';
import { addNextLine } from '../../src/elements/garden/create-and-copy.ts';
import { applyEdit } from '../../src/plan/edits/apply-edit.ts';
import { resized } from '../../src/plan/resized.ts';
import type { Plan, PlanPlanting } from '../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../support/small-plans.ts';

type Extent = PlanPlanting['extent'];

const bed = (width: number, length: number): Extent => ({ kind: 'bed', length, width });

/** A plan in feet and inches whose first planting is 4 x 10 ft; its lines are assumed, or laid by somebody. */
function planted(assumed: PlanPlanting['assumed']): Plan {
  const plan = oneBed();
  const [zone] = plan.zones;
  const [before] = zone?.plantings ?? [];
  if (zone === undefined || before === undefined) throw new Error('the garden has no planting');
  const { container: _, assumed: __, ...rest } = before;
  const lines: PlanPlanting['lines'] = [
    { kind: 'dripline', flow: 0.6, spacing: 12, layout: { kind: 'rows', rows: 3, length: 10 } },
  ];
  const planting = { ...rest, extent: bed(4, 10), lines, ...(assumed && { assumed }) };
  return { ...plan, units: 'us', zones: [{ ...zone, plantings: [planting] }] };
}

function withSize(plan: Plan, extent: Extent): PlanPlanting {
  const [zone] = plan.zones;
  const planting = zone?.plantings[0];
  if (zone === undefined || planting === undefined) throw new Error('the garden has no planting');
  const change = resized(planting, { extent, container: planting.container }, plan.units);
  const next = applyEdit(plan, { type: 'change-planting', zone: zone.id, planting: planting.id, change });
  const after = next.zones[0]?.plantings[0];
  if (after === undefined) throw new Error('the planting is gone');
  return after;
}

// 4 ft are 48 in: rows 16 in apart are three (common practice, no source), as long as the bed.
it('lays assumed lines anew for a bed that is twice as long, as often as it gets another size', () => {
  const plan = planted(['extent', 'lines']);
  const longer = withSize(plan, bed(4, 20));
  expect(longer.lines).toEqual([
    { kind: 'dripline', flow: 0.6, spacing: 12, layout: { kind: 'rows', rows: 3, length: 20 } },
  ]);
  expect(longer.assumed).toEqual(['lines']);
  const [zone] = plan.zones;
  if (zone === undefined) throw new Error('the garden has no zone');
  const small = withSize({ ...plan, zones: [{ ...zone, plantings: [longer] }] }, bed(3, 6));
  expect(small.lines).toEqual([
    { kind: 'dripline', flow: 0.6, spacing: 12, layout: { kind: 'rows', rows: 2, length: 6 } },
  ]);
  expect(small.assumed).toEqual(['lines']);
});

it('leaves several lines: one of them was added by somebody', () => {
  const plan = planted(['lines']);
  const [zone] = plan.zones;
  const [planting] = zone?.plantings ?? [];
  if (zone === undefined || planting === undefined) throw new Error('the garden has no planting');
  const added = applyEdit(plan, addNextLine(plan, zone.id, planting));
  const two = added.zones[0]?.plantings[0];
  expect(two?.lines).toHaveLength(2);
  expect(two?.assumed).toEqual(['lines']);
  expect(withSize(added, bed(4, 20)).lines).toEqual(two?.lines);
});

it('leaves lines that somebody laid', () => {
  const plan = planted(undefined);
  expect(withSize(plan, bed(4, 20)).lines).toEqual(plan.zones[0]?.plantings[0]?.lines);
});
