import { expect, it } from 'vitest';
import { mixWords } from '../../../src/language/en/mix.ts';
import { paperWords } from '../../../src/language/en/paper.ts';
import { weekWords } from '../../../src/language/en/week.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';

const reader = readerFor('en-US', 'us');
const { language } = reader;
const format = formatFor(reader);

/** What takes hours is said in hours wherever it stands; what a timer is set to stays in minutes. */
it.each([
  ['a pause on the screen', weekWords(language).today.pause(format, 304), '5 h 4 min pause.'],
  ['a pause on paper', paperWords(language).cycles(format, 2, 304), '2 cycles, 5 h 4 min pause'],
  [
    'runs that end late',
    weekWords(language).today.late(format, 150),
    'The runs end 2 h 30 min after the watering window.',
  ],
  ['a season of one zone', mixWords(language).opening(format, 1230, 0), 'here 20 h 30 min in the season'],
  ['a run of a day', weekWords(language).today.ran(format, 150, 120), 'ran 150 min, planned 120 min'],
])('%s', (_, said, expected) => {
  expect(said.replaceAll('\u00a0', ' ')).toContain(expected);
});
