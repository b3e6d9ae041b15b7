import { describe, expect, it } from 'vitest';
import { goodsInWords, promiseInWords, remedyInWords } from '../../../src/elements/mix/change-words.ts';
import { readerFor } from '../../../src/language/reader.ts';
import type { MixChange, MixRemedy } from '../../../src/remedies/mix/remedy.ts';
import { NO_GOODS } from '../../../src/remedies/mix/remedy.ts';

const reading = readerFor('en', 'us');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const nameOf = (id: string) => ({ a: 'Shrubs', b: 'Squash' })[id] ?? id;
const said = (...changes: readonly MixChange[]) => plain(remedyInWords({ changes }, nameOf, reading));

const shutOff: MixChange = { kind: 'shut-off', plantingId: 'a', turnsToRefill: false };

describe('remedyInWords', () => {
  it.each<[string, MixChange]>([
    [
      'Re-lay Shrubs with 0.6 gph dripline, an emitter every 12 in',
      { kind: 'dripline', plantingId: 'a', emitterFlowLph: 2.271247, spacingM: 0.3048, lengthM: 10 },
    ],
    [
      'Lay a second loop round each plant of Shrubs',
      { kind: 'runs', plantingId: 'a', layout: 'loops', before: 1, after: 2 },
    ],
    [
      'Lay 1 loop round each plant of Shrubs instead of 2',
      { kind: 'runs', plantingId: 'a', layout: 'loops', before: 2, after: 1 },
    ],
    [
      'Take one row of line out of Shrubs: 3 instead of 4',
      { kind: 'runs', plantingId: 'a', layout: 'rows', before: 4, after: 3 },
    ],
    [
      'Give Squash 2 emitters at each plant of 1 gph',
      { kind: 'emitters', plantingId: 'b', emitterFlowLph: 3.785412, count: 2, isPerPlant: true },
    ],
    [
      'Give Squash 1 micro-spray of 10 gph',
      { kind: 'sprays', plantingId: 'b', emitterFlowLph: 37.85412, count: 1, isPerPlant: false },
    ],
    ['Put a shut-off in front of Shrubs', shutOff],
    [
      'Cut the zone in two: Shrubs and Squash on a valve of their own, “Border 2”',
      { kind: 'cut', newZoneId: 'border-2', newZoneName: 'Border 2', moved: ['a', 'b'] },
    ],
    ['Let Squash set the minutes', { kind: 'rule', rule: { kind: 'planting', plantingId: 'b' } }],
    ['Let the thirstiest set the minutes', { kind: 'rule', rule: { kind: 'thirstiest' } }],
  ])('%s', (words, change) => {
    expect(said(change)).toBe(words);
  });

  it('joins the two of a pair', () => {
    expect(said(shutOff, { kind: 'rule', rule: { kind: 'planting', plantingId: 'b' } })).toBe(
      'Put a shut-off in front of Shrubs, and let Squash set the minutes',
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

describe('promiseInWords', () => {
  it('says what is saved in the plan’s unit', () => {
    expect(plain(promiseInWords(remedy, reading))).toBe(
      'saves 100 gal; no more days short than now; 50 gal less lost below the roots',
    );
  });

  it('says it where more water is taken, so that plants no longer go short', () => {
    const thirsty = { ...remedy, litresSaved: -37.85411784, drainedLitresAvoided: -3.785411784, shortDaysAvoided: 1 };
    expect(plain(promiseInWords(thirsty, reading))).toBe(
      'takes 10 gal more; 1 day fewer short of water; 1 gal more lost below the roots',
    );
  });
});

describe('goodsInWords', () => {
  it('lists what to get, and says where that is nothing', () => {
    const goods = { ...NO_GOODS, driplineM: 3.048, emitters: 1, shutOffs: 2 };
    expect(plain(goodsInWords(goods, reading))).toBe('10 ft of dripline, 1 emitter, and 2 shut-offs');
    expect(goodsInWords(NO_GOODS, reading)).toBe('nothing');
  });
});
