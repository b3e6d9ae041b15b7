import { describe, expect, it } from 'vitest';
import { describeGoods, describeMixRemedy, describePromise, ruleName } from '../../src/language/describe-mix-remedy.ts';
import { readerFor } from '../../src/language/reader.ts';
import type { MixChange, MixRemedy } from '../../src/remedies/mix/remedy.ts';
import { NO_GOODS } from '../../src/remedies/mix/remedy.ts';

const reader = readerFor('en-US', 'us');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const nameOf = (id: string) => ({ a: 'Shrubs', b: 'Squash' })[id] ?? id;
const described = (...changes: readonly MixChange[]) => plain(describeMixRemedy({ changes }, nameOf, reader));

const shutOff: MixChange = { kind: 'shut-off', plantingId: 'a', turnsToRefill: false };

describe('describeMixRemedy', () => {
  it.each<[string, MixChange]>([
    [
      'Re-lay Shrubs with 0.6 gph dripline, an emitter every 12 in',
      { kind: 'dripline', plantingId: 'a', emitterFlowLph: 2.271247, spacingM: 0.3048, lengthM: 10 },
    ],
    [
      'Lay 2 loops around each plant of Shrubs instead of 1',
      { kind: 'runs', plantingId: 'a', layout: 'loops', before: 1, after: 2 },
    ],
    [
      'Lay 1 loop around each plant of Shrubs instead of 2',
      { kind: 'runs', plantingId: 'a', layout: 'loops', before: 2, after: 1 },
    ],
    [
      'Lay 3 rows of line in Shrubs instead of 4',
      { kind: 'runs', plantingId: 'a', layout: 'rows', before: 4, after: 3 },
    ],
    [
      'Squash: 2 emitters (1 gph) per plant',
      { kind: 'emitters', plantingId: 'b', emitterFlowLph: 3.785412, count: 2, isPerPlant: true },
    ],
    [
      'Squash: 1 micro-spray (10 gph)',
      { kind: 'sprays', plantingId: 'b', emitterFlowLph: 37.85412, count: 1, isPerPlant: false },
    ],
    ['Put a shut-off in front of Shrubs', shutOff],
    [
      'Split the zone in two: add valve “Border 2” for Shrubs and Squash',
      { kind: 'cut', newZoneId: 'border-2', newZoneName: 'Border 2', moved: ['a', 'b'] },
    ],
    ['Let Squash set the minutes', { kind: 'rule', rule: { kind: 'planting', plantingId: 'b' } }],
    ['Let the thirstiest planting set the minutes', { kind: 'rule', rule: { kind: 'thirstiest' } }],
    [
      'Lay a second line beside the first in Shrubs',
      { kind: 'runs', plantingId: 'a', layout: 'length', before: 1, after: 2 },
    ],
    ['Let all plantings set the minutes, weighted by area', { kind: 'rule', rule: { kind: 'area-weighted' } }],
  ])('%s', (words, change) => {
    expect(described(change)).toBe(words);
  });

  it('joins the two of a pair', () => {
    expect(described(shutOff, { kind: 'rule', rule: { kind: 'planting', plantingId: 'b' } })).toBe(
      'Put a shut-off in front of Shrubs. Let Squash set the minutes',
    );
  });
});

const remedy: MixRemedy = {
  changes: [shutOff],
  goods: NO_GOODS,
  edit: { type: 'together', edits: [] },
  zoneIds: [],
  after: { litres: 0, drainedLitres: 0, unmetLitres: 0, shortDays: 0 },
  litresSaved: 378.5411784,
  drainedLitresAvoided: 189.2705892,
  unmetLitresAvoided: 0,
  shortDaysAvoided: 0,
  worthLitres: 0,
  calendars: [],
};

describe('describePromise', () => {
  it('says what is saved in the plan’s unit', () => {
    expect(plain(describePromise(remedy, reader))).toBe(
      'saves 100 gal; no more days short than now; 50 gal less drains past the roots',
    );
  });

  it('says it where more water is taken, so that plants no longer go short', () => {
    const thirsty = { ...remedy, litresSaved: -37.85411784, drainedLitresAvoided: -3.785411784, shortDaysAvoided: 1 };
    expect(plain(describePromise(thirsty, reader))).toBe(
      'takes 10 gal more; 1 day fewer short of water; 1 gal more drains past the roots',
    );
  });
});

describe('describeGoods', () => {
  it('lists what to get, and says where that is nothing', () => {
    const goods = { ...NO_GOODS, driplineM: 3.048, emitters: 1, shutOffs: 2 };
    expect(plain(describeGoods(goods, reader))).toBe('To get: 10 ft of dripline, 1 emitter, and 2 shut-offs.');
    expect(describeGoods(NO_GOODS, reader)).toBe('Nothing to get.');
  });
});

describe('ruleName', () => {
  it('is the planting’s own, or who the minutes go by', () => {
    expect(ruleName({ kind: 'planting', plantingId: 'b' }, nameOf, reader)).toBe('Squash');
    expect(ruleName({ kind: 'thirstiest' }, nameOf, reader)).toBe('the thirstiest');
    expect(ruleName({ kind: 'area-weighted' }, nameOf, reader)).toBe('all, weighted by area');
  });
});
