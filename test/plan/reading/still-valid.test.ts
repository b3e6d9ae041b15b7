import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { isStillValid } from '../../../src/plan/reading/still-valid.ts';
import { PLAN_SCHEMAS } from '../../../src/plan/schema/plan-schema.ts';
import { denseBed } from '../../support/dense-and-shrubs.ts';

const planting = PLAN_SCHEMAS.us.entries.zones.item.entries.plantings.item;
const [line] = denseBed.lines;

// `v.is`, the whole look, is what the quick one is held against. What random spoils find stands in change-findings.test.ts.
describe('isStillValid', () => {
  it.each([
    ['another flow', { ...denseBed, lines: [{ ...line, flow: 0.9 }] }],
    ['a flow beyond its bounds', { ...denseBed, lines: [{ ...line, flow: -1 }] }],
    ['a field that no line has', { ...denseBed, lines: [{ ...line, colour: 'red' }] }],
    ['a second line', { ...denseBed, lines: [line, { ...line, from: '2027-07-01' }] }],
    ['a second line that is none', { ...denseBed, lines: [line, 3] }],
    ['a line more than there may be', { ...denseBed, lines: Array.from({ length: 101 }, () => line) }],
    ['a line of another kind with the fields of the first', { ...denseBed, lines: [{ ...line, kind: 'point' }] }],
    ['a field left out that must be there', { ...denseBed, extent: undefined }],
    ['a field left out that may be', { ...denseBed, rootDepth: undefined }],
    ['lines that are none', { ...denseBed, lines: {} }],
    ['nothing', undefined],
  ])('says of %s what a look at the whole says', (_what, value) => {
    expect(isStillValid(planting, value, denseBed)).toBe(v.is(planting, value));
  });

  it('passes over what is the same object', () => {
    const need = new Proxy(denseBed.need, { ownKeys: () => expect.unreachable('the need is not read') });
    expect(isStillValid(planting, { ...denseBed, need, name: 'Bed' }, { ...denseBed, need })).toBe(true);
  });
});
