import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../../src/engine/line/catalogue.data.ts';
import { fromSi } from '../../../src/engine/units.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { PlanPlanting } from '../../../src/plan/schema/plan-schema.ts';
import { driplineCandidates } from '../../../src/remedies/mix/kinds/dripline.ts';
import { pairsOf, sameDriplineTwice } from '../../../src/remedies/mix/kinds/pairs.ts';
import { runCountCandidates } from '../../../src/remedies/mix/kinds/run-count.ts';
import { shutOffCandidates } from '../../../src/remedies/mix/kinds/shut-off.ts';
import { singleEmitterCandidates } from '../../../src/remedies/mix/kinds/single-emitters.ts';
import { type MixContext, mixContext } from '../../../src/remedies/mix/mix-context.ts';
import { denseAndShrubs, denseBed, shrubLoops } from '../../support/dense-and-shrubs.ts';

function contextOf(...plantings: readonly PlanPlanting[]): MixContext {
  const plan = denseAndShrubs();
  const changed = { ...plan, zones: plan.zones.map((zone) => ({ ...zone, plantings })) };
  return mixContext(changed, computeSeason(changed), 'border', CATALOGUE);
}

const feet = (metres: number) => fromSi(metres, 'length', 'us');
const squash: PlanPlanting = {
  id: 'squash',
  name: 'Squash',
  need: { kind: 'class', class: 'high' },
  extent: { kind: 'canopy', count: 4, diameter: 40 },
  lines: [{ kind: 'point', flow: 1, count: 2 }],
};

describe('driplineCandidates', () => {
  it('are every flow and spacing of the catalogue but the one that lies: 3 x 5 + 3 sizes, less one', () => {
    const candidates = driplineCandidates(contextOf(denseBed));
    expect(candidates).toHaveLength(17);
    expect(new Set(candidates.map(({ edits }) => JSON.stringify(edits))).size).toBe(17);
    // 4 rows of 25 ft.
    for (const { goods } of candidates) expect(feet(goods.driplineM)).toBeCloseTo(100, 9);
  });

  it('lie from the day on which the present line lies, in its rows', () => {
    const relaid: PlanPlanting = {
      ...denseBed,
      lines: [
        { kind: 'dripline', flow: 0.6, spacing: 12, layout: { kind: 'length', length: 40 } },
        {
          kind: 'dripline',
          from: '2027-06-21',
          flow: 0.6,
          spacing: 6,
          topology: 'loop',
          layout: { kind: 'rows', rows: 4, length: 25 },
        },
        { kind: 'dripline', from: '2028-06-21', flow: 0.9, spacing: 6, layout: { kind: 'length', length: 90 } },
      ],
    };
    const [candidate] = driplineCandidates(contextOf(relaid));
    expect(candidate?.edits).toEqual([
      {
        type: 'replace-line',
        zone: 'border',
        planting: 'dense',
        index: 1,
        line: {
          kind: 'dripline',
          from: '2027-06-21',
          flow: 0.4,
          spacing: 6,
          topology: 'loop',
          layout: { kind: 'rows', rows: 4, length: 25 },
        },
      },
    ]);
  });

  it('say of a narrow line that it is narrow, and of a plain emitter that it does not compensate', () => {
    const quarter = driplineCandidates(contextOf(denseBed)).find(
      ({ edits: [edit] }) => edit?.type === 'replace-line' && edit.line.kind === 'dripline' && edit.line.flow === 0.5,
    );
    expect(quarter?.edits[0]).toMatchObject({
      line: { flow: 0.5, insideDiameter: 0.17, emitter: { kind: 'plain', exponent: 0.5 } },
    });
  });

  it('are none where no dripline lies', () => {
    expect(driplineCandidates(contextOf(squash, { ...denseBed, lines: [{ kind: 'solid' }] }))).toEqual([]);
  });
});

describe('runCountCandidates', () => {
  const layouts = (planting: PlanPlanting) =>
    runCountCandidates(contextOf(planting)).map(({ edits: [edit], goods }) => [
      edit?.type === 'replace-line' && edit.line.kind === 'dripline' ? edit.line.layout : undefined,
      Number(feet(goods.driplineM).toFixed(3)),
    ]);

  it('lay a second loop round each plant: nine circles 3 ft across are 84.823 ft', () => {
    expect(layouts(shrubLoops)).toEqual([[{ kind: 'loops', perPlant: 2 }, 84.823]]);
  });

  it('lay one row more, or take one out, which asks for nothing', () => {
    expect(layouts(denseBed)).toEqual([
      [{ kind: 'rows', rows: 5, length: 25 }, 25],
      [{ kind: 'rows', rows: 3, length: 25 }, 0],
    ]);
  });

  it('lay a second line beside one that is given by its length', () => {
    const long: PlanPlanting = {
      ...denseBed,
      lines: [{ kind: 'dripline', flow: 0.6, spacing: 6, layout: { kind: 'length', length: 100 } }],
    };
    expect(layouts(long)).toEqual([[{ kind: 'rows', rows: 2, length: 100 }, 100]]);
  });
});

describe('singleEmitterCandidates', () => {
  const candidates = singleEmitterCandidates(contextOf(squash));

  it('are every flow of the catalogue in numbers near the present one: 4 flows x (1, 2, 3, 4, 6), less the present', () => {
    expect(candidates).toHaveLength(19);
  });

  it('ask for all emitters where the flow is another, and only for those that are added where it is not', () => {
    const emittersOf = (flowInPlan: number, count: number) =>
      candidates.find(
        ({ edits: [edit] }) =>
          edit?.type === 'replace-line' &&
          edit.line.kind === 'point' &&
          edit.line.flow === flowInPlan &&
          edit.line.count === count,
      )?.goods.emitters;
    expect(emittersOf(2, 3)).toBe(12);
    expect(emittersOf(1, 3)).toBe(4);
    expect(emittersOf(1, 1)).toBe(0);
  });

  it('count a bed’s emitters in the whole, and sprays by their own goods', () => {
    const bed: PlanPlanting = {
      ...squash,
      extent: { kind: 'area', area: 50 },
      lines: [{ kind: 'spray', flow: 10, count: 2 }],
    };
    const sprays = singleEmitterCandidates(contextOf(bed));
    expect(sprays.every(({ goods }) => goods.emitters === 0)).toBe(true);
    expect(sprays.find(({ changes: [change] }) => change?.kind === 'sprays' && change.count === 3)?.goods.sprays).toBe(
      3,
    );
  });
});

describe('shutOffCandidates', () => {
  it('are for plantings that have none and that a line brings water', () => {
    const candidates = shutOffCandidates(
      contextOf(denseBed, { ...shrubLoops, shutOff: true }, { ...squash, lines: [] }),
    );
    expect(candidates.map(({ changes }) => changes)).toEqual([
      [{ kind: 'shut-off', plantingId: 'dense', turnsToRefill: false }],
    ]);
  });

  it('tell that a planting is then refilled where nobody has said how it is watered', () => {
    const { watering: _watering, ...shrubs } = shrubLoops;
    const [, candidate] = shutOffCandidates(contextOf(denseBed, shrubs));
    expect(candidate?.changes).toEqual([{ kind: 'shut-off', plantingId: 'shrubs', turnsToRefill: true }]);
  });

  it('are none where a planting has the zone to itself', () => {
    expect(shutOffCandidates(contextOf(denseBed))).toEqual([]);
  });
});

describe('pairsOf', () => {
  const context = contextOf(denseBed, shrubLoops);
  const [shutOff] = shutOffCandidates(context);
  const [line, other] = driplineCandidates(context);
  if (shutOff === undefined || line === undefined || other === undefined) throw new Error('candidates are missing');

  it('put two changes one after the other, the line before the valve in front of it', () => {
    expect(pairsOf([shutOff, line]).map(({ changes }) => changes.map(({ kind }) => kind))).toEqual([
      ['dripline', 'shut-off'],
    ]);
    expect(pairsOf([shutOff, line])[0]?.edits).toEqual([...line.edits, ...shutOff.edits]);
    expect(pairsOf([shutOff, line])[0]?.goods).toEqual({ ...line.goods, shutOffs: 1 });
  });

  it('never change one line twice', () => {
    expect(pairsOf([line, other])).toEqual([]);
  });
});

describe('sameDriplineTwice', () => {
  it('gives both plantings one size of the catalogue, where it is new to both', () => {
    const pairs = sameDriplineTwice(contextOf(denseBed, shrubLoops));
    expect(pairs).toHaveLength(16);
    for (const { changes } of pairs) {
      const [one, two] = changes;
      expect(one?.kind === 'dripline' && two?.kind === 'dripline' && one.spacingM === two.spacingM).toBe(true);
    }
  });
});
