import { describe, expect, it } from 'vitest';
import { sameData } from '../../../../src/plan/same-data.ts';
import type { Plan, PlanLine, PlanPlanting } from '../../../../src/plan/schema/plan-schema.ts';
import { kindsOf, noticed } from '../../../support/noticed.ts';
import { oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

/** A bed with dripline of 0.9 gph every 12 in, 30 psi at its inlet: 360 ft would do, far less than 600. */
function bed(layout: Extract<PlanLine, { kind: 'dripline' }>['layout'], change: Partial<PlanPlanting> = {}): Plan {
  const line: PlanLine = { kind: 'dripline', flow: 0.9, spacing: 12, layout };
  const planting = tomatoes({
    lines: [line],
    extent: { kind: 'area', area: 900 },
    wettedShare: 1,
    ...change,
  });
  return oneBed({
    zones: [zone({ plantings: [planting] })],
    supply: { sources: [{ name: 'Main', pressure: 30 }] },
  });
}

const firstLine = (plan: Plan, index = 0) => plan.zones[index]?.plantings[0]?.lines[0];
const LONG = { kind: 'length', length: 600 } as const;

describe('a line that is too long', () => {
  it('is closed into a loop: both ends fed, each half 300 ft', () => {
    const { notice, remedies, mended } = noticed(bed(LONG), 'line-too-long');
    expect(notice.figures.longestRunM).toBeGreaterThan(300 * 0.3048);
    expect(notice.figures.longestRunM).toBeLessThan(600 * 0.3048);
    const plan = mended('close-loop');
    expect(firstLine(plan)).toMatchObject({ topology: 'loop', layout: LONG });
    expect(kindsOf(plan)).not.toContain('line-too-long');
    expect(remedies.find(({ kind }) => kind === 'close-loop')).toMatchObject({ remaining: 0 });
  });

  it('is fed in the middle: two runs of 300 ft, as much line and water as before', () => {
    const { remedies, mended } = noticed(bed(LONG), 'line-too-long');
    expect(firstLine(mended('feed-middle'))).toMatchObject({ layout: { kind: 'rows', rows: 2, length: 300 } });
    expect(remedies.find(({ kind }) => kind === 'feed-middle')).toMatchObject({
      remaining: 0,
      plantingId: 'tomatoes',
      runs: 2,
      runLengthM: expect.closeTo(300 * 0.3048, 9),
    });
    // More flow in fewer minutes: no other water than the timer's step makes.
    const { litresMore = Number.NaN } = remedies.find(({ kind }) => kind === 'feed-middle') as { litresMore?: number };
    expect(Math.abs(litresMore)).toBeLessThan(600);
  });

  it('in rows is fed in the middle of each', () => {
    const { mended } = noticed(bed({ kind: 'rows', rows: 3, length: 500 }), 'line-too-long');
    expect(firstLine(mended('feed-middle'))).toMatchObject({ layout: { kind: 'rows', rows: 6, length: 250 } });
  });

  it('is cut in two: half the bed and half the line get a zone of their own', () => {
    const { mended } = noticed(bed(LONG), 'line-too-long');
    const plan = mended('cut-in-two');
    expect(plan.zones.map(({ id, name }) => [id, name])).toEqual([
      ['beds', 'Beds'],
      ['beds-2', 'Beds 2'],
    ]);
    for (const index of [0, 1]) {
      expect(plan.zones[index]?.plantings).toMatchObject([
        { extent: { area: 450 }, lines: [{ layout: { length: 300 } }] },
      ]);
    }
    expect(plan.zones[1]?.plantings[0]).toMatchObject({ id: 'tomatoes-2', name: 'Tomatoes 2' });
    expect(kindsOf(plan)).not.toContain('line-too-long');
  });

  it('gets emitters further apart, no further than the soil joins: 18 in on loam', () => {
    const { remedies, mended } = noticed(bed({ kind: 'length', length: 450 }), 'line-too-long');
    expect(firstLine(mended('wider-spacing'))).toMatchObject({ spacing: 18 });
    expect(remedies.filter(({ kind }) => kind === 'wider-spacing')).toHaveLength(1);
  });

  it('keeps what is not changed, and the line that another day brings', () => {
    const later: PlanLine = { kind: 'dripline', from: '2027-06-20', flow: 0.9, spacing: 12, layout: LONG };
    const lines: PlanLine[] = [
      { ...later, from: '2027-06-01', layout: { kind: 'length', length: 200 }, topology: 'loop', risePercent: 1 },
      later,
    ];
    const plan = bed(LONG, { lines });
    const { notice, mended } = noticed(plan, 'line-too-long');
    expect(notice.lineIndex).toBe(1);
    const changed = mended('close-loop').zones[0]?.plantings[0]?.lines;
    expect(sameData(changed?.[0], lines[0])).toBe(true);
    expect(changed?.[1]).toMatchObject({ from: '2027-06-20', topology: 'loop' });
  });

  it('is told from another that begins on the same day', () => {
    const short: PlanLine = { kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'length', length: 50 } };
    const lines: PlanLine[] = [short, { ...short, layout: LONG }];
    const { notice, mended } = noticed(bed(LONG, { lines }), 'line-too-long');
    expect(notice.lineIndex).toBe(1);
    const changed = mended('close-loop').zones[0]?.plantings[0]?.lines;
    expect(sameData(changed?.[0], lines[0])).toBe(true);
    expect(changed?.[1]).toMatchObject({ layout: LONG, topology: 'loop' });
  });

  it('of emitters round one tree that cannot be halved is closed into a loop alone', () => {
    const lines: PlanLine[] = [
      { kind: 'spray', flow: 20, count: 1, risePercent: 0 },
      { kind: 'point', from: '2027-06-08', flow: 4, count: 120, insideDiameter: 0.4 },
    ];
    const { remedies } = noticed(bed(LONG, { lines }), 'line-too-long');
    expect(remedies.map(({ kind }) => kind)).toEqual(['close-loop']);
  });
});
