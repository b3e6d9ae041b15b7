import { expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { describeRowFault } from '../../../src/exchange/csv/describe-row-fault.ts';
import type { RowFaultReason } from '../../../src/exchange/csv/imported.ts';

const plain = (text: string): string => text.replaceAll(/[\s\u2060]+/g, ' ');

it.each<[RowFaultReason, string]>([
  [
    { code: 'minutes-headings', weekStart: '2027-04-05' },
    'the first day of each week as a heading, such as 2027-04-05.',
  ],
  [{ code: 'weather-headings' }, 'use the heading Date, and at least one of Rain, Low and High.'],
  [{ code: 'week-twice' }, 'use each week of the season once.'],
  [{ code: 'week-outside' }, 'this is not a week of the season.'],
  [{ code: 'zone-unknown' }, 'no zone of the plan has this name.'],
  [{ code: 'zone-shared', zones: 2 }, '2 zones have this name. Rename all but one.'],
  [{ code: 'zone-twice', before: 4 }, 'line 4 has this zone already.'],
  [{ code: 'minutes', most: 10_080 }, 'use minutes of a week, from 0 to 10,080.'],
  [{ code: 'week-closed', weekStart: dayNumber('2027-08-02') }, 'the zone is closed in the week of August 2.'],
  [
    { code: 'week-run', weekStart: dayNumber('2027-08-02') },
    'the plan has the minutes really run in the week of August 2.',
  ],
  [
    { code: 'date', example: '2027-04-05' },
    'this is no day. Write days alike, best as year-month-day, such as 2027-04-05.',
  ],
  [{ code: 'date-twice', before: 2 }, 'line 2 has this day already.'],
  [{ code: 'rain', low: 0, high: 78.7, units: 'us' }, 'use rain from 0 to 78 in.'],
  [{ code: 'temperature', low: -70, high: 60, units: 'metric' }, 'use a temperature from -70 to 60 °C.'],
  [{ code: 'high-below-low' }, 'the highest temperature is below the lowest.'],
  [{ code: 'high-below-low-of-day' }, 'together with what the plan has for that day.'],
])('says %j', (reason, expected) => {
  const says = plain(describeRowFault({ ...reason, line: 12, value: 'lots' }, 'en-US'));
  expect(says.startsWith('Line 12, “lots”: ')).toBe(true);
  expect(says.endsWith(expected)).toBe(true);
});

it('says that a cell is empty', () => {
  expect(describeRowFault({ code: 'zone-unknown', line: 3, value: '' }, 'en')).toMatch(/^Line 3, empty: no zone/);
});

it('shows the beginning of a long cell, what cannot be seen in it, and keeps it from turning the sentence', () => {
  const says = (value: string) => describeRowFault({ code: 'zone-unknown', line: 3, value }, 'en');
  expect(says('x'.repeat(1_000_000))).toBe(says(`${'x'.repeat(79)}…`));
  expect(says('😀'.repeat(100))).toContain(`“${'😀'.repeat(79)}…”`);
  expect(says('Beds\t1\n2')).toContain('“Beds⇥1↵2”');
  expect(says('\u202eBeds')).toContain('“\u2068Beds\u2069”');
});
