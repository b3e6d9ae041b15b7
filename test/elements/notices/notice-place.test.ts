import { expect, it } from 'vitest';
import { noticePlace } from '../../../src/elements/notices/notice-place.ts';
import type { NoticeSubject } from '../../../src/explain/notices/notice.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { noticeOf } from '../../support/notices.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const season = computeSeason(mixedGarden());
const placeOf = (place: Partial<NoticeSubject>) => {
  const { name, where, selection } = noticePlace(noticeOf('short', place), season, 'Mixed garden', 'en-GB');
  return { name, where: where.replaceAll('\u00a0', ' ').replaceAll('\u2060', ''), selection };
};

it('names planting, zone and weeks, and points at the first of them', () => {
  expect(placeOf({ zoneId: 'beds', plantingId: 'shrubs', firstWeek: 13, lastWeek: 14, weeks: [13, 14] })).toEqual({
    name: 'Shrubs',
    where: 'Beds, Shrubs, 5–18 Jul',
    selection: { zone: 'beds', planting: 'shrubs', week: 13 },
  });
});

it('counts the weeks where there are gaps between them', () => {
  expect(placeOf({ zoneId: 'beds', firstWeek: 13, lastWeek: 16, weeks: [13, 16] })).toMatchObject({
    name: 'Beds',
    where: 'Beds, 2 weeks in 5 Jul – 1 Aug',
  });
});

it('goes by the garden’s name where no zone is concerned', () => {
  expect(placeOf({})).toEqual({
    name: 'Mixed garden',
    where: '',
    selection: { zone: undefined, planting: undefined, week: undefined },
  });
});
