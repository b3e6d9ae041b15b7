import { expect, it } from 'vitest';
import { dayNumber } from '../../src/engine/calendar.ts';
import { weekCalendar } from '../../src/sheet/week-calendar.ts';

const span = { firstDay: dayNumber('2027-11-29'), weeks: 8 };

it('weekCalendar puts months over the weeks that begin in them, with the year where it is news', () => {
  expect(weekCalendar(span, 'en-US').months).toEqual([
    { label: 'November 2027', week: 0, weeks: 1 },
    { label: 'December', week: 1, weeks: 4 },
    { label: 'January 2028', week: 5, weeks: 3 },
  ]);
});

it('weekCalendar covers every week once', () => {
  for (const weeks of [1, 4, 5, 53, 104]) {
    const { months } = weekCalendar({ firstDay: span.firstDay, weeks }, 'en-US');
    expect(months.reduce((sum, month) => sum + month.weeks, 0)).toBe(weeks);
    for (const [at, month] of months.entries()) {
      expect(month.week).toBe(months.slice(0, at).reduce((sum, { weeks: before }) => sum + before, 0));
    }
  }
});

it('weekCalendar names a week by its days and by its first day, in the reader’s language', () => {
  const english = weekCalendar(span, 'en-US');
  expect([english.label(0), english.words(0)]).toEqual(['29–5', 'week of November 29']);
  expect(weekCalendar(span, 'de-DE').words(1)).toBe('week of 6. Dezember');
});
