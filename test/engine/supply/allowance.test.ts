import { describe, expect, it } from 'vitest';
import { allowanceUse } from '../../../src/engine/supply/allowance.ts';

const usedL = Object.freeze([100, 250, 0, 300, 150]);

describe('water used against an allowance', () => {
  it('by the week: names every week that is over', () => {
    expect(allowanceUse({ usedL, perWeekL: 200 }).weeksOver).toEqual([1, 3]);
  });

  it('by the season: the first week by whose end it is passed, and how much is over', () => {
    const { cumulativeL, firstWeekOverSeason, seasonLeftL } = allowanceUse({ usedL, perSeasonL: 600 });
    expect([...cumulativeL]).toEqual([100, 350, 350, 650, 800]);
    expect(firstWeekOverSeason).toBe(3);
    expect(seasonLeftL).toBe(-200);
  });

  it('used up exactly is within it', () => {
    const { weeksOver, firstWeekOverSeason, seasonLeftL } = allowanceUse({ usedL, perWeekL: 300, perSeasonL: 800 });
    expect(weeksOver).toEqual([]);
    expect(firstWeekOverSeason).toBe(-1);
    expect(seasonLeftL).toBe(0);
    expect(allowanceUse({ usedL: [0.1, 0.2], perSeasonL: 0.3 }).firstWeekOverSeason).toBe(-1);
  });

  it('without an allowance nothing is over', () => {
    const { weeksOver, firstWeekOverSeason, seasonLeftL } = allowanceUse({ usedL });
    expect(weeksOver).toEqual([]);
    expect(firstWeekOverSeason).toBe(-1);
    expect(seasonLeftL).toBeUndefined();
  });

  it('an allowance of nothing is passed by the first water', () => {
    expect(allowanceUse({ usedL: [0, 1], perWeekL: 0, perSeasonL: 0 })).toMatchObject({
      weeksOver: [1],
      firstWeekOverSeason: 1,
    });
  });

  it('refuses negative water', () => {
    expect(() => allowanceUse({ usedL: [1, -1] })).toThrow('The water used in week 2 (L) is -1; it must be 0 or more.');
    expect(() => allowanceUse({ usedL, perWeekL: -5 })).toThrow('allowance of a week (L) is -5');
  });
});
