import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

describe('a zone that is closed twice', () => {
  it('is told each time with the plantings that go short then: one planting, and later two', () => {
    const later = plainPlanting({ id: 'later', from: FIRST_DAY + 42 });
    const closed = { closed: true };
    const choices = new Map([1, 7].map((week) => [week, closed]));
    const season = runSeason(plainGarden([plainZone({ plantings: [plainPlanting(), later], choices })]));
    const notices = noticesOfKind(season, 'closed');
    const byWeek = notices.map(({ weeks, figures }) => [weeks?.[0], figures.plantings]).sort();
    expect(byWeek).toEqual([
      [1, 1],
      [7, 2],
    ]);
  });
});
