import { expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { weekCalendar } from '../../../src/language/format/week-calendar.ts';
import { readerFor } from '../../../src/language/reader.ts';

const span = { firstDay: dayNumber('2027-11-29'), weeks: 8 };
const american = readerFor('en-US', 'us');

it('weekCalendar puts months over the weeks that begin in them, with the year where it is news', () => {
  expect(weekCalendar(span, american).months).toEqual([
    { label: 'November\u00a02027', short: 'Nov\u00a02027', week: 0, weeks: 1 },
    { label: 'December', short: 'Dec', week: 1, weeks: 4 },
    { label: 'January\u00a02028', short: 'Jan\u00a02028', week: 5, weeks: 3 },
  ]);
});

it('weekCalendar covers every week once', () => {
  for (const weeks of [1, 4, 5, 53, 104]) {
    const { months } = weekCalendar({ firstDay: span.firstDay, weeks }, american);
    expect(months.reduce((sum, month) => sum + month.weeks, 0)).toBe(weeks);
    for (const [at, month] of months.entries()) {
      expect(month.week).toBe(months.slice(0, at).reduce((sum, { weeks: before }) => sum + before, 0));
    }
  }
});

it('weekCalendar names a week by its days and by its first day, as the reader writes them', () => {
  const calendar = weekCalendar(span, american);
  expect([calendar.days(0), calendar.weekOf(0)]).toEqual(['29–5', 'week of November\u00a029']);
  expect(weekCalendar(span, readerFor('en-GB', 'us')).weekOf(1)).toBe('week of 6\u00a0December');
  // Nobody registered German: English words have English dates.
  expect(weekCalendar(span, readerFor('de-DE', 'us')).weekOf(1)).toBe('week of 6\u00a0December');
});
