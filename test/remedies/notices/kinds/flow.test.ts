import { describe, expect, it } from 'vitest';
import type { Plan, PlanZone } from '../../../../src/plan/schema/plan-schema.ts';
import { kindsOf, noticed } from '../../../support/noticed.ts';
import { oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

/** Tomatoes of 20 emitters a row, 0.9 gph each: 0.3 gpm a row. */
const rows = (id: string, count: number) =>
  tomatoes({
    id,
    name: id,
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows: count, length: 20 } }],
  });

function supplied(gpm: number, zones: readonly PlanZone[], weekdays?: ('mon' | 'tue' | 'wed' | 'thu')[]): Plan {
  const window = weekdays ? { window: { weekdays, hoursPerDay: 24 } } : {};
  return oneBed({ zones, supply: { sources: [{ name: 'Hose', flow: { kind: 'typed', flow: gpm } }], ...window } });
}

const planted = (plan: Plan) => plan.zones.map(({ plantings }) => plantings.map(({ id }) => id));

describe('a zone that asks for too much flow', () => {
  const mixed = [rows('one', 4), rows('two', 3), rows('three', 2), rows('four', 1)];

  it('is split: 3 gpm in two halves of 1.5', () => {
    const { mended, remedies } = noticed(supplied(1.5, [zone({ plantings: mixed })]), 'flow-too-great');
    const plan = mended('split-zone');
    expect(planted(plan)).toEqual([
      ['one', 'four'],
      ['two', 'three'],
    ]);
    expect(kindsOf(plan)).not.toContain('flow-too-great');
    expect(remedies[0]).toMatchObject({
      kind: 'split-zone',
      remaining: 0,
      zoneId: 'beds',
      newZoneId: 'beds-2',
      plantingIds: ['two', 'three'],
    });
  });

  it('keeps the planting that sets its minutes', () => {
    const rule = { kind: 'planting', planting: 'two' } as const;
    const { mended } = noticed(supplied(1.5, [zone({ plantings: mixed, rule })]), 'flow-too-great');
    expect(planted(mended('split-zone'))).toEqual([
      ['two', 'three'],
      ['one', 'four'],
    ]);
  });

  it('with one planting has that cut in two', () => {
    const { mended, remedies } = noticed(supplied(0.7, [zone({ plantings: [rows('one', 4)] })]), 'flow-too-great');
    expect(remedies.map(({ kind }) => kind)).toEqual(['cut-in-two']);
    const plan = mended('cut-in-two');
    expect(planted(plan)).toEqual([['one'], ['one-2']]);
    expect(kindsOf(plan)).not.toContain('flow-too-great');
  });

  it('that is still too great when halved is less so', () => {
    const { remedies } = noticed(supplied(0.5, [zone({ plantings: [rows('one', 4)] })]), 'flow-too-great');
    // 1.2 gpm are 0.7 too much; two of 0.6 are 0.2.
    expect(remedies[0]?.remaining).toBeCloseTo(0.2 / 0.7, 9);
  });

  it('keeps the weeks that were closed by hand, and what ran, in both zones', () => {
    const plan = {
      ...supplied(1.5, [zone({ plantings: mixed })]),
      choices: { beds: { '2027-06-14': { closed: true } } },
      log: { runs: { beds: { '2027-06-07': 30 } } },
    };
    const { choices, log } = noticed(plan, 'flow-too-great').mended('split-zone');
    expect(choices?.['beds-2']).toEqual({ '2027-06-14': { closed: true } });
    expect(log?.runs?.['beds-2']).toEqual({ '2027-06-07': 30 });
  });
});

describe('zones that cannot run at once', () => {
  const three = ['a', 'b', 'c'].map((id) => zone({ id, name: id, wateringDays: 2, plantings: [rows(`bed-${id}`, 4)] }));

  it('water on weekdays of their own, group by group', () => {
    const plan = supplied(2.5, three, ['mon', 'tue', 'wed', 'thu']);
    const { notice, mended } = noticed(plan, 'flow-together');
    expect(notice.groups).toEqual([['a', 'b'], ['c']]);
    const staggered = mended('other-days');
    expect(staggered.zones.map(({ wateringDays }) => wateringDays)).toEqual([
      ['mon', 'wed'],
      ['mon', 'wed'],
      ['tue', 'thu'],
    ]);
    expect(kindsOf(staggered)).not.toContain('flow-together');
  });

  it('have no remedy where there are fewer weekdays than groups', () => {
    expect(noticed(supplied(1.3, three, ['mon', 'tue']), 'flow-together').remedies).toEqual([]);
  });
});
