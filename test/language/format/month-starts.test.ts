import { expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { monthStarts } from '../../../src/language/format/month-starts.ts';

it('lays the months along the weeks, the season’s own month first', () => {
  // 6 April 2026 + 25 days = 1 May; + 31 = 1 June.
  const starts = monthStarts({ firstDay: dayNumber('2026-04-06'), weeks: 10 }, 'en');
  expect(starts).toEqual([
    { week: 0, label: 'Apr' },
    { week: 25 / 7, label: 'May' },
    { week: 56 / 7, label: 'Jun' },
  ]);
});

it('drops a first month that ends within days', () => {
  const starts = monthStarts({ firstDay: dayNumber('2026-03-30'), weeks: 6 }, 'en');
  expect(starts.map(({ label }) => label)).toEqual(['Apr']);
});

it('drops a last month that begins within days of the end', () => {
  // Ten weeks from 6 April end on 14 June; eight end on 31 May, nine on 7 June.
  const starts = monthStarts({ firstDay: dayNumber('2026-04-06'), weeks: 9 }, 'en');
  expect(starts.map(({ label }) => label)).toEqual(['Apr', 'May']);
});

it('names the year where the season passes into another', () => {
  const starts = monthStarts({ firstDay: dayNumber('2026-11-02'), weeks: 20 }, 'en');
  expect(starts.map(({ label }) => label)).toEqual(['Nov', 'Dec', 'Jan\u00a02027', 'Feb', 'Mar']);
});
