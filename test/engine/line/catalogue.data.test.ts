import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../../src/engine/line/catalogue.data.ts';
import { emitterFlowLph } from '../../../src/engine/line/emitter.ts';
import { DRIPLINE_DIAMETER_MM, TUBING } from '../../../src/engine/line/tubing.data.ts';

function isFrozenThroughout(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  return Object.isFrozen(value) && Object.values(value).every(isFrozenThroughout);
}

describe('catalogue of usual goods', () => {
  it('states US trade sizes exactly in SI', () => {
    expect(CATALOGUE.driplines.map(({ emitter }) => emitter.nominalFlowLph / 3.785411784)).toEqual([
      0.4, 0.6, 0.9, 0.5,
    ]);
    expect(CATALOGUE.driplines[0]?.spacingsM).toEqual([6, 9, 12, 18, 24].map((inches) => inches * 0.0254));
    expect(CATALOGUE.pointEmitters.map(({ emitter }) => emitter.nominalFlowLph / 3.785411784)).toEqual([0.5, 1, 2, 4]);
  });

  it('every emitter works at 20 psi', () => {
    const emitters = [...CATALOGUE.driplines, ...CATALOGUE.pointEmitters, ...CATALOGUE.microSprays].map(
      (good) => good.emitter,
    );
    expect(emitters).toHaveLength(12);
    for (const emitter of emitters)
      expect(emitterFlowLph(emitter, 20 * 6.894757)).toBeCloseTo(emitter.nominalFlowLph, 5);
  });

  it('ids are unique, and every dripline names its tubing', () => {
    const { tubing, driplines, pointEmitters, microSprays } = CATALOGUE;
    const ids = [...tubing, ...driplines, ...pointEmitters, ...microSprays].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { tubingId } of driplines) expect(tubing.find(({ id }) => id === tubingId)?.use).toBe('dripline');
  });

  it('17 mm dripline is 13.6 to 14.5 mm inside (0.536-0.57 in, from memory)', () => {
    expect(DRIPLINE_DIAMETER_MM).toBeGreaterThan(13.6);
    expect(DRIPLINE_DIAMETER_MM).toBeLessThan(14.5);
    expect(TUBING[0]?.insideDiameterMm).toBe(DRIPLINE_DIAMETER_MM);
  });

  it('every value says where it comes from, and none can be changed', () => {
    const goods = [...CATALOGUE.tubing, ...CATALOGUE.driplines, ...CATALOGUE.pointEmitters, ...CATALOGUE.microSprays];
    for (const { source } of goods) expect(source).toMatch(/memory|common practice/);
    expect(isFrozenThroughout(CATALOGUE)).toBe(true);
  });
});
