import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { sheetWords } from '../../../src/language/en/sheet.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const GALLON = 3.785411784;

describe('the words of the sheet', () => {
  const reader = readerFor('en-US', 'us');
  const format = formatFor(reader);
  const words = sheetWords(reader.language);
  const say = words.description;

  it('describe a cell in clauses, and its note behind them', () => {
    const clauses = [say.run['hand-set'](format, 60 * GALLON, 50), say.rainCounted(format, 7.62), say.states.met];
    const text = say.whole(say.row('Beds', format.weekOf(dayNumber('2027-06-14'))), clauses);
    expect(plain(say.withNote(text, 'Heat is coming.'))).toBe(
      'Beds, week of June 14: 60 gallons, 50 minutes set by hand; 0.3 inches of rain counted; need met. Note: Heat is coming.',
    );
  });

  it('say singular and plural', () => {
    const days = [
      [1, 1],
      [3, 3],
      [2, 4],
    ] as const;
    expect(days.map(([fewest, most]) => plain(words.detail.daysAWeek(format, fewest, most)))).toEqual([
      '1 day a week',
      '3 days a week',
      '2 to 4 days a week',
    ]);
    expect(plain(say.shutOffByHand(format, 1, 3, 'Wed'))).toBe(
      'shut-off open on 1 of 3 watering days, set by hand: Wed',
    );
    expect(plain(say.shutOffOpen(format, 0, 1, ''))).toBe('shut-off open on 0 of 1 watering day');
  });

  it('name the days of a week that differ, and those that are skipped', () => {
    const monday = dayNumber('2027-06-14');
    expect(plain(say.runOn(format, 15, monday, 0b0010001))).toBe('15 minutes on Mon and Fri');
    expect(plain(say.skippedOn(format, monday, 0b1000000))).toBe(
      'skipped on Sun: less than half a step of the timer is needed',
    );
  });

  it('put units in brackets behind a name', () => {
    expect(words.nameWithUnit(words.rows.rain, words.detail.unit('in'))).toBe('Rain (in)');
  });

  it('cut a share that says no more than that it is beyond', () => {
    expect(words.cell.shareBeyond(format, 9.99)).toBe('>999%');
  });

  it('are in the reader’s own English', () => {
    const british = readerFor('en-GB', 'metric');
    expect(plain(sheetWords(british.language).description.volume(formatFor(british), 600))).toBe(
      '600 litres at the meter',
    );
  });
});
