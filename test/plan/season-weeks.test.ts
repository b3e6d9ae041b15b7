import { describe, expect, it } from 'vitest';
import { seasonDays, weekFirstDay, weekOf } from '../../src/plan/season-weeks.ts';

const season = { firstDay: '2027-04-08', weeks: 3 };

describe('weeks of a season that begins on a Thursday', () => {
  it.each([
    ['2027-04-08', 0],
    ['2027-04-14', 0],
    ['2027-04-15', 1],
    ['2027-04-28', 2],
    ['2027-04-29', 3],
    ['2027-04-07', -1],
    ['2027-03-31', -2],
  ])('%s lies in week %i', (day, week) => {
    expect(weekOf(season, day)).toBe(week);
  });

  it('each begins seven days after the one before', () => {
    expect([0, 1, 2].map((week) => weekFirstDay(season, week))).toEqual(['2027-04-08', '2027-04-15', '2027-04-22']);
  });

  it('a week is found again by each of its days', () => {
    for (let week = -3; week < 10; week++) expect(weekOf(season, weekFirstDay(season, week))).toBe(week);
  });

  it('the last day closes the last week', () => {
    const { first, last } = seasonDays(season);
    expect(last - first).toBe(3 * 7 - 1);
  });

  it('what is no day is refused', () => {
    expect(() => weekOf(season, '2027-02-30')).toThrow(RangeError);
  });
});
