import { describe, expect, it } from 'vitest';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan, PlanLine } from '../../../src/plan/schema/plan-schema.ts';
import { canCarry } from '../../../src/remedies/mix/can-carry.ts';
import { denseAndShrubs } from '../../support/dense-and-shrubs.ts';

const bedLine: PlanLine = { kind: 'dripline', flow: 0.6, spacing: 6, layout: { kind: 'rows', rows: 4, length: 25 } };

function carries(plan: Plan, line: PlanLine): boolean {
  const after = applyEdit(plan, { type: 'replace-line', zone: 'border', planting: 'dense', index: 0, line });
  return canCarry(computeSeason(plan), computeSeason(after), ['border']);
}

const withFlow = (flow: number): Plan =>
  denseAndShrubs({ supply: { sources: [{ name: 'Bib', flow: { kind: 'typed', flow }, pressure: 40 }] } });

describe('canCarry', () => {
  // The zone draws 152.4 gph, 2.54 gpm; with 0.9 gph emitters 212.4 gph, 3.54 gpm.
  it('refuses a zone that asks for more than the source gives', () => {
    expect(carries(withFlow(3), { ...bedLine, flow: 0.9 })).toBe(false);
    expect(carries(withFlow(3.6), { ...bedLine, flow: 0.9 })).toBe(true);
    expect(carries(denseAndShrubs(), { ...bedLine, flow: 0.9 })).toBe(true);
  });

  it('does not hold against a remedy what was so before, and is less now', () => {
    expect(carries(withFlow(2), { ...bedLine, flow: 0.4 })).toBe(true);
  });

  // 24 emitters of 0.5 gph on 1/4 in tube lose more than plain emitters may differ; in 17 mm line they do not.
  it('refuses a line whose far end would not get its share', () => {
    const narrow: PlanLine = { ...bedLine, flow: 0.5, insideDiameter: 0.17, emitter: { kind: 'plain', exponent: 0.5 } };
    const wide: PlanLine = { ...bedLine, flow: 0.5, emitter: { kind: 'plain', exponent: 0.5 } };
    expect(carries(withFlow(6), narrow)).toBe(false);
    expect(carries(withFlow(6), wide)).toBe(true);
  });
});
