import { describe, expect, it } from 'vitest';
import type { MixFigures } from '../../../src/remedies/mix/mix-figures.ts';
import { isWorthwhile, leastWorth, ranked, remedyWorth } from '../../../src/remedies/mix/rank.ts';
import { type Goods, type MixRemedy, NO_GOODS } from '../../../src/remedies/mix/remedy.ts';

const before: MixFigures = { litres: 1000, drainedLitres: 300, unmetLitres: 50, shortDays: 6 };
const changedBy = (change: Partial<MixFigures>): MixFigures => ({ ...before, ...change });

const remedy = (id: string, worthLitres: number, goods: Partial<Goods> = {}): MixRemedy => ({
  worthLitres,
  goods: { ...NO_GOODS, ...goods },
  changes: [],
  edit: { type: 'together', edits: [] },
  zoneIds: [id],
  after: before,
  litresSaved: 0,
  drainedLitresAvoided: 0,
  unmetLitresAvoided: 0,
  shortDaysAvoided: 0,
  calendars: [],
});
const order = (...remedies: readonly MixRemedy[]) => ranked(remedies, before).map(({ zoneIds: [id] }) => id);

describe('remedyWorth', () => {
  it('is the water saved, and twice what plants no longer go without', () => {
    expect(remedyWorth(before, changedBy({ litres: 900 }))).toBe(100);
    expect(remedyWorth(before, changedBy({ unmetLitres: 20 }))).toBe(60);
    expect(remedyWorth(before, changedBy({ litres: 1040, unmetLitres: 10 }))).toBe(40);
    expect(remedyWorth(before, before)).toBe(0);
  });
});

describe('leastWorth', () => {
  it('is a hundredth of the zone’s water, and never less than a gallon or so', () => {
    expect(leastWorth(before)).toBe(10);
    expect(leastWorth(changedBy({ litres: 100 }))).toBe(4);
  });
});

describe('isWorthwhile', () => {
  it('asks for enough water saved', () => {
    expect(isWorthwhile(before, changedBy({ litres: 991 }))).toBe(false);
    expect(isWorthwhile(before, changedBy({ litres: 990 }))).toBe(true);
  });

  it('lets more water be used for plants that went short', () => {
    expect(isWorthwhile(before, changedBy({ litres: 1050, unmetLitres: 0, shortDays: 0 }))).toBe(true);
    expect(isWorthwhile(before, changedBy({ litres: 1095, unmetLitres: 0, shortDays: 0 }))).toBe(false);
  });

  it('refuses what leaves plants short on one day more, whatever it saves', () => {
    expect(isWorthwhile(before, changedBy({ litres: 200, shortDays: 7 }))).toBe(false);
  });

  it('refuses what uses more and makes no day better', () => {
    expect(isWorthwhile(before, changedBy({ litres: 1010, unmetLitres: 20 }))).toBe(false);
  });
});

describe('ranked', () => {
  it('puts the greater worth first', () => {
    expect(order(remedy('little', 30), remedy('much', 300), remedy('some', 100))).toEqual(['much', 'some', 'little']);
  });

  it('lets fewer things to get decide where worth is much the same', () => {
    const valve = remedy('valve', 203, { valves: 1 });
    const line = remedy('line', 201, { driplineM: 30.2 });
    const nothing = remedy('nothing', 199);
    expect(order(line, valve, nothing)).toEqual(['nothing', 'valve', 'line']);
  });

  it('leaves its list as it was', () => {
    const remedies = Object.freeze([remedy('little', 30), remedy('much', 300)]);
    expect(ranked(remedies, before)).toHaveLength(2);
  });
});
