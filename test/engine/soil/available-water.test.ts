import { describe, expect, test } from 'vitest';
import { readilyAvailableWaterMm, totalAvailableWaterMm } from '../../../src/engine/soil/available-water.ts';

// FAO-56 Example 36 (p. 166): field capacity and wilting point of three soils; root depth and p of three crops.
const LOAMY_SAND = [0.15, 0.06] as const;
const SILT = [0.32, 0.15] as const;
// The silty clay's six values are from memory of the same table.
const SILTY_CLAY = [0.35, 0.23] as const;

describe('available water', () => {
  test.each([
    ['loamy sand, onion', LOAMY_SAND, 0.4, 0.3, 36, 11],
    ['loamy sand, tomato', LOAMY_SAND, 0.8, 0.4, 72, 29],
    ['loamy sand, maize', LOAMY_SAND, 1.2, 0.55, 108, 59],
    ['silt, onion', SILT, 0.4, 0.3, 68, 20],
    ['silt, tomato', SILT, 0.8, 0.4, 136, 54],
    ['silt, maize', SILT, 1.2, 0.55, 204, 112],
    ['silty clay, onion', SILTY_CLAY, 0.4, 0.3, 48, 14],
    ['silty clay, tomato', SILTY_CLAY, 0.8, 0.4, 96, 38],
    ['silty clay, maize', SILTY_CLAY, 1.2, 0.55, 144, 79],
  ] as const)('FAO-56 Ex. 36, %s: TAW and RAW', (_name, [fieldCapacity, wiltingPoint], rootDepthM, p, taw, raw) => {
    const tawMm = totalAvailableWaterMm(fieldCapacity - wiltingPoint, rootDepthM);
    expect(Math.abs(tawMm - taw)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(readilyAvailableWaterMm(tawMm, p) - raw)).toBeLessThanOrEqual(0.5);
  });
});
