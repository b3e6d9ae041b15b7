import { expect, it } from 'vitest';
import type { Notice } from '../../../src/explain/notices/notice.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { noticeFix } from '../../../src/remedies/notices/notice-fix.ts';
import { noticeOf } from '../../support/notices.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const plan = mixedGarden();
const mended = ({ kind, ...notice }: Omit<Notice, 'severity' | 'figures'>): Plan | undefined => {
  const mend = noticeFix(noticeOf(kind, notice), plan, computeSeason(plan));
  return mend && applyEdit(plan, mend.edit);
};

it('opens the weeks that were closed, and no others', () => {
  // Week 17 starts on 2 August, which the plan closes; week 16 was never closed.
  const next = mended({ kind: 'closed', remedy: 'open-zone', zoneId: 'containers', weeks: [16, 17] });
  expect(next?.choices?.['containers']).toBeUndefined();
  expect(next?.choices?.['beds']).toEqual(plan.choices?.['beds']);
});

it('gives minutes set by hand back, in the weeks concerned only', () => {
  const next = mended({ kind: 'hand-set', remedy: 'use-computed', zoneId: 'beds', weeks: [13] });
  expect(next?.choices?.['beds']).toEqual({ '2027-07-12': plan.choices?.['beds']?.['2027-07-12'] });
});

it('gives a planting’s open days back and keeps the note beside them', () => {
  const next = mended({ kind: 'short', remedy: 'use-computed', zoneId: 'beds', plantingId: 'shrubs', weeks: [14] });
  expect(next?.choices?.['beds']?.['2027-07-12']).toEqual({ note: 'Heat is coming.' });
});

it('gives the open days of every planting that it names back', () => {
  const next = mended({
    kind: 'short-by-hand',
    remedy: 'use-computed',
    zoneId: 'beds',
    plantingIds: ['tomatoes', 'shrubs'],
    weeks: [14],
  });
  expect(next?.choices?.['beds']?.['2027-07-12']).toEqual({ note: 'Heat is coming.' });
});

it('leaves minutes that really ran alone: they are what happened', () => {
  // The log has a run of the beds in week 6.
  expect(
    mended({ kind: 'short', remedy: 'use-computed', zoneId: 'beds', plantingId: 'tomatoes', weeks: [6] }),
  ).toBeUndefined();
});

it('has no edit for what takes a person’s judgement', () => {
  expect(
    mended({ kind: 'no-line', remedy: 'lay-line', zoneId: 'beds', plantingId: 'shrubs', weeks: [1] }),
  ).toBeUndefined();
});

it('says by its kind, and by the action of its edit, what it does', () => {
  const notice = noticeOf('closed', { zoneId: 'containers', weeks: [17] });
  expect(noticeFix(notice, plan, computeSeason(plan))).toMatchObject({
    kind: 'open-zone',
    edit: { type: 'together', action: 'open-weeks' },
  });
});
