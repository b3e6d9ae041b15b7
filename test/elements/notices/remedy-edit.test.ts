import { expect, it } from 'vitest';
import { remedyEdit } from '../../../src/elements/notices/remedy-edit.ts';
import type { Notice } from '../../../src/explain/notices/notice.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { noticeOf } from '../../support/notices.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const plan = mixedGarden();
const reader = readerFor('en-US', 'us');
const mended = ({ kind, ...notice }: Omit<Notice, 'severity' | 'figures'>): Plan | undefined => {
  const mend = remedyEdit(noticeOf(kind, notice), plan, computeSeason(plan), reader);
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

it('changes a planting from refill to keep', () => {
  const next = mended({ kind: 'refill-weekly', remedy: 'keep-instead', zoneId: 'beds', plantingId: 'shrubs' });
  expect(next?.zones[0]?.plantings[1]?.watering).toBe('keep');
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

it('names the zone in the list of what can be undone', () => {
  const notice = noticeOf('closed', { zoneId: 'containers', weeks: [17] });
  expect(remedyEdit(notice, plan, computeSeason(plan), reader)?.edit).toMatchObject({ action: 'open-weeks' });
});
