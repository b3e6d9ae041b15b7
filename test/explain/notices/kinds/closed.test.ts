import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

describe('a zone that is closed twice', () => {
  it('is told once, for both of its weeks and the plantings that go short in either', () => {
    const later = plainPlanting({ id: 'later', from: FIRST_DAY + 42 });
    const closed = { closed: true };
    const choices = new Map([1, 7].map((week) => [week, closed]));
    const season = runSeason(plainGarden([plainZone({ plantings: [plainPlanting(), later], choices })]));
    // The bed alone is there in the second week; both miss 17.5 mm on 10 m2 in the eighth, but for what rounding left.
    expect(noticesOfKind(season, 'closed')).toMatchObject([
      { plantingIds: ['bed', 'later'], weeks: [1, 7], figures: { neededLitres: expect.closeTo(3 * 175, -1) } },
    ]);
  });

  it('is told for one planting where the other is not there', () => {
    const later = plainPlanting({ id: 'later', from: FIRST_DAY + 42 });
    const choices = new Map([[1, { closed: true }]]);
    const season = runSeason(plainGarden([plainZone({ plantings: [plainPlanting(), later], choices })]));
    const [notice] = noticesOfKind(season, 'closed');
    expect(notice).toMatchObject({ plantingId: 'bed', weeks: [1] });
    expect(notice).not.toHaveProperty('plantingIds');
  });
});
