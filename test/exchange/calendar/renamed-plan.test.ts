/** A plan that is renamed keeps its calendar entries' ids, from save to save. */
import { expect, it } from 'vitest';
import { seasonToCalendar } from '../../../src/exchange/calendar/season-to-calendar.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../../support/small-plans.ts';

function uidsOf(plan: Plan): readonly string[] {
  const text = seasonToCalendar(computeSeason(plan), {
    planName: plan.name,
    planIdentity: plan.identity,
    units: plan.units,
    timeZone: 'America/Los_Angeles',
    opensAt: 300,
    writtenAt: Date.UTC(2027, 4, 1),
  });
  // Long lines are folded: RFC 5545, 3.1.
  return [...text.replaceAll('\r\n ', '').matchAll(/^UID:(.*)\r$/gm)].map(([, uid = '']) => uid);
}

const saved = (plan: Plan): Plan => {
  const read = readPlan(writePlan(plan));
  if (!read.ok) throw new Error('the plan is not read');
  return read.plan;
};

it('keeps ids of entries through two names and a file between them', () => {
  const plan = oneBed();
  const uids = uidsOf(plan);
  expect(uids.length).toBeGreaterThan(5);
  const renamed = saved(applyEdit(plan, { type: 'rename-plan', name: 'Another name' }));
  expect(renamed).toMatchObject({ name: 'Another name', identity: plan.name });
  expect(uidsOf(renamed)).toEqual(uids);
  const again = saved(applyEdit(renamed, { type: 'rename-plan', name: 'A third' }));
  expect(uidsOf(again)).toEqual(uids);
  expect(applyEdit(again, { type: 'rename-plan', name: plan.name })).toEqual(plan);
  const other = uidsOf(oneBed({ name: 'A third' }));
  expect(other.filter((uid) => uids.includes(uid))).toEqual([]);
});
