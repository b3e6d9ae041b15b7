/** A row that could not be read, as a person is told: `Line 3, “lots”: use rain from 0 to 78 in, with a decimal point.` */
import { csvWords } from '../../language/en/csv.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolatedText } from '../../language/format/isolated.ts';
import { unitSymbol } from '../../language/format/quantity.ts';
import { visibleText } from '../../language/format/visible-text.ts';
import { readerFor } from '../../language/reader.ts';
import type { RowFault } from './imported.ts';

/** `locale`: BCP 47, of the reader. */
export function describeRowFault(fault: RowFault, locale: string): string {
  const reader = readerFor(locale, 'us');
  return csvWords(reader.language).rowFault(formatFor(reader), fault.line, shown(fault.value), reasonOf(fault, locale));
}

/** Most of a cell that is shown: a quote that is never closed makes one of half the file. */
const MOST_LETTERS = 80;

function shown(value: string): string {
  const letters = [...value.slice(0, 2 * MOST_LETTERS + 2)];
  const text = letters.length > MOST_LETTERS ? `${letters.slice(0, MOST_LETTERS - 1).join('')}…` : value;
  return isolatedText(visibleText(text));
}

function reasonOf(fault: RowFault, locale: string): string {
  const reader = readerFor(locale, 'us');
  const format = formatFor(reader);
  const { faults: say } = csvWords(reader.language);
  switch (fault.code) {
    case 'minutes-headings':
      return say.minutesHeadings(fault.weekStart);
    case 'weather-headings':
      return say.weatherHeadings;
    case 'column-twice':
      return say.columnTwice;
    case 'heading-unit':
      return say.headingUnit[fault.reading];
    case 'too-many-cells':
      return say.tooManyCells(format, fault.cells, fault.headings);
    case 'hourly':
      return say.hourly;
    case 'week-twice':
      return say.weekTwice;
    case 'week-outside':
      return say.weekOutside;
    case 'zone-unknown':
      return say.zoneUnknown;
    case 'zone-shared':
      return say.zoneShared(format, fault.zones);
    case 'zone-twice':
      return say.zoneTwice(format, fault.before);
    case 'minutes':
      return say.minutes(format, fault.most);
    case 'week-closed':
      return say.weekClosed(format, fault.weekStart);
    case 'week-run':
      return say.weekRun(format, fault.weekStart);
    case 'read-by-day':
      return say.readByDay(format, fault.weekStart);
    case 'note-long':
      return say.noteLong(format, fault.most);
    case 'date':
      return say.date(fault.example);
    case 'date-twice':
      return say.dateTwice(format, fault.before);
    case 'rain':
    case 'eto':
      return say[fault.code](
        format,
        Math.ceil(fault.low),
        Math.floor(fault.high),
        unitSymbol('depth', readerFor(locale, fault.units)),
      );
    case 'temperature':
      return say.temperature(
        format,
        Math.ceil(fault.low),
        Math.floor(fault.high),
        unitSymbol('temperature', readerFor(locale, fault.units)),
      );
    case 'high-below-low':
      return say.highBelowLow;
    case 'high-below-low-of-day':
      return say.highBelowLowOfDay;
  }
}
