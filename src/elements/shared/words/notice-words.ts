/** What the list of notices says around its notices. */
import type { NoticeRemedy, NoticeSeverity } from '../../../explain/notices/notice.ts';
import type { FaultText } from '../../../language/describe-fault.ts';

export const noticeWords = {
  title: (counts: readonly string[]) =>
    counts.length === 0 ? 'Nothing needs attention' : `Attention: ${counts.join(', ')}`,
  counted: {
    danger: { one: 'urgent', other: 'urgent' },
    warning: { one: 'to look at', other: 'to look at' },
    note: { one: 'note', other: 'notes' },
  } satisfies Record<NoticeSeverity, { readonly one: string; readonly other: string }>,
  calm: 'Every planting gets what it needs, and little more.',
  severity: { danger: 'Urgent', warning: 'Look at this', note: 'Note' } satisfies Record<NoticeSeverity, string>,
  weeks: { one: 'week', other: 'weeks' },
  day: { one: 'day', other: 'days' },
  hour: { one: 'hour', other: 'hours' },
  someWeeks: (count: string, days: string) => `${count} in ${days}`,
  show: (where: string) => `Show it: ${where}`,
  fillClimate: 'Fill in the climate',
  more: (count: number) => `${count} more`,
  whatToDo: 'What to do',
  done: (what: string) => `Done: ${what}.`,
  undo: 'Undo',
  undone: (what: string) => `Taken back: ${what}.`,
  faultsTitle: (count: number) =>
    count === 1
      ? 'Not taken over: one thing is to be put right'
      : `Not taken over: ${count} things are to be put right`,
  faultsStay: 'The plan on screen is as it was.',
  fault: ({ where, value, expected }: FaultText) => ({
    where,
    found: `Found: ${value}`,
    expected: `Expected: ${expected}`,
  }),
} as const;

/** What to do about a notice. */
export const REMEDY_WORDS: Readonly<Record<NoticeRemedy, string>> = {
  'lay-line': 'Lay a line with emitters to it, and add the line to the planting.',
  'water-more': 'Give it more minutes in these weeks, or more watering days.',
  'change-line': 'Lay other emitters, closer or further apart, or a second loop; or give it a zone of its own.',
  'shut-off': 'Put a shut-off in front of it and open that on fewer watering days, or lay emitters with less flow.',
  'open-zone': 'Open the zone again in these weeks, or water by hand.',
  'use-computed': 'Give the figures set by hand back to the calculation, unless you know better.',
  'split-run': 'Water on more days, so that each run is shorter, or split the zone in two.',
  'keep-instead': 'Change its watering from refill to keep: a little every week.',
  'check-days': 'Check the planting day and the days in the ground.',
  'shorten-run': 'Close the line into a loop, feed it in the middle, cut it in two, or space its emitters wider.',
  'more-pressure':
    'Read a gauge at the line, after any regulator, while water runs, and enter it. Then fit a regulator that gives more, or lay emitters that work with less.',
  'split-zone': 'Split the zone in two, or lay emitters with less flow.',
  stagger: 'Let the zones run one after the other, or on different days.',
  'more-days': 'Water on more days, with fewer minutes on each.',
  'use-less': 'Water less, or ask for a larger allowance.',
  'larger-tank': 'Set up a larger tank, or let the mains add what is missing.',
  'closer-emitters': 'Lay emitters closer together.',
  'uphill-side': 'Move the line to the uphill side of the plants.',
  'fill-climate': 'Take a published table, or type or paste the months of a weather station nearby.',
};

/** An edit that mends a notice, as its button and the list of what can be undone call it. */
export const REMEDY_EDIT_WORDS = {
  'open-zone': 'Open again',
  'use-computed': 'Give back',
  'keep-instead': 'Change to keep',
} as const satisfies Readonly<Partial<Record<NoticeRemedy, string>>>;
