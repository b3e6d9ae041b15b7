/** A fault of a plan, of its file or of an edit, in the reader's language. */

import { unitOf } from '../engine/units.ts';
import type { Expectation, Fault, FaultCode, FaultValues, Found, Measure, Range } from '../plan/reading/fault.ts';
import { describePlace } from './describe-place.ts';
import { faultsWords } from './en/faults.ts';
import { saidLeast, saidMost } from './format/bounds.ts';
import { type Format, formatFor } from './format/format.ts';
import { symbolOf, withUnit } from './format/quantity.ts';
import { visibleText } from './format/visible-text.ts';
import type { Reader } from './reader.ts';

export interface FaultText {
  /** The place: `Zone “Beds”, planting “Tomatoes”: area`. */
  readonly where: string;
  /** What stands there, shortened. */
  readonly value: string;
  /** What was expected there: `a number from 0.1 to 1,000,000 sq ft`. */
  readonly expected: string;
}

export function describeFault(fault: Fault, reader: Reader): FaultText {
  return {
    where: describePlace(fault.values.place, reader),
    value: valueText(fault, reader),
    expected: describeExpected(fault, reader),
  };
}

/** What a field takes, or what a fault expected in its place: there the bound that was missed is said exactly. */
export function describeExpected({ code, values }: Expectation, reader: Reader): string {
  const say = EXPECTED[code] as Say<FaultCode>;
  return say(values, faultsWords(reader.language).expected, formatFor(reader));
}

type FaultWords = ReturnType<typeof faultsWords>;
type Say<Code extends FaultCode> = (
  values: FaultValues[Code] & { readonly found?: Found },
  words: FaultWords['expected'],
  format: Format,
) => string;

const EXPECTED: { readonly [Code in FaultCode]: Say<Code> } = {
  range: rangeText,
  above: (values, words, format) => words.above(amountText(values.bound, values, format)),
  text: ({ least, most }, words, format) => (least > 0 ? words.textNotEmpty(format, most) : words.text(format, most)),
  name: ({ most }, words, format) => words.name(format, most),
  id: (_, words) => words.id,
  'month-number': (_, words) => words.monthNumber,
  day: ({ firstYear, lastYear }, words) => words.day(firstYear, lastYear),
  'calendar-day': (_, words) => words.calendarDay,
  'time-of-day': (_, words) => words.timeOfDay,
  choice: ({ options }, words, format) => words.choice(format, options),
  'number-or-weekdays': ({ least, most }, words, format) => words.numberOrWeekdays(format, least, most),
  'minutes-or-days': ({ least, most }, words, format) => words.minutesOrDays(format, least, most),
  list: (_, words) => words.list,
  'list-too-long': ({ most }, words, format) => words.listTooLong(format, most),
  'list-too-short': ({ least }, words, format) => words.listTooShort(format, least),
  'list-of-months': (_, words) => words.listOfMonths,
  fields: ({ known }, words) => words.fields(known),
  kinds: ({ kinds }, words, format) => words.kinds(format, kinds),
  entries: ({ by }, words) => ({ day: words.entriesByDay, month: words.entriesByMonth, id: words.entriesById })[by],
  'unknown-field': ({ known }, words) => words.unknownField(known),
  'greater-than': (values, words, format) => words.greaterThan[values.of](amountText(values.most, values, format)),
  'climate-without-eto': (_, words) => words.climateWithoutEto,
  'daily-figures': ({ number }, words, format) => words.dailyFigures(format, number),
  'daily-figure-too-great': ({ number, most, mostMm }, words, format) =>
    words.dailyFigureTooGreat(format, number, most, mostMm),
  'unequal-days': ({ rain }, words, format) => words.unequalDays(format, rain),
  'too-many-years': ({ most }, words, format) => words.tooManyYears(format, most),
  'stretch-overlaps': ({ other }, words, format) => words.stretchOverlaps(format, other),
  'source-same-day': ({ other, isFirst }, words, format) => words.sourceSameDay(format, other, isFirst),
  'pressure-twice': (_, words) => words.pressureTwice,
  'cut-amount': (_, words) => words.cutAmount,
  'id-taken': ({ other }, words) => words.idTaken(other),
  'week-twice': ({ other }, words, format) => words.weekTwice(format, other),
  'outside-week': ({ first, last }, words, format) => words.outsideWeek(format, first, last),
  'through-without-rain': (_, words) => words.throughWithoutRain,
  'issued-twice': ({ other }, words, format) => words.issuedTwice(format, other),
  'before-issue': ({ issued }, words, format) => words.beforeIssue(format, issued),
  'outside-season': ({ first, last }, words, format) => words.outsideSeason(format, first, last),
  'zone-unknown': (_, words) => words.zoneUnknown,
  'planting-unknown': (_, words) => words.plantingUnknown,
  'ends-before-start': ({ start, of }, words, format) => words.endsBeforeStart[of](format, start),
  'not-a-plan': (_, words) => words.notAPlan,
  'too-deep': ({ most }, words, format) => words.tooDeep(format, most),
  'reserved-name': (_, words) => words.reservedName,
  'newer-version': ({ newest }, words, format) => words.newerVersion(format, newest),
  'older-version': ({ oldest }, words, format) => words.olderVersion(format, oldest),
  'damaged-version': ({ version }, words, format) => words.damagedVersion(format, version),
  'more-faults': (_, words) => words.moreFaults,
  'too-long': ({ most }, words, format) => words.tooLong(format, most),
  'empty-file': (_, words) => words.emptyFile,
  'not-json': ({ expected }, words) => words.json[expected],
  'file-unreachable': (_, words) => words.fileUnreachable,
  'file-unreadable': (_, words) => words.fileUnreadable,
  'file-refused': ({ status }, words) => words.fileRefused(status),
  'line-unknown': ({ lines }, words, format) => (lines === 0 ? words.noLines : words.lineUnknown(format, lines)),
  'edit-unknown': (_, words) => words.editUnknown,
  'edit-incomplete': ({ field }, words) => words.editIncomplete(field),
  'no-plan': (_, words) => words.noPlan,
  'read-only': (_, words) => words.readOnly,
  'not-computed': (_, words) => words.notComputed,
  unanswered: (_, words) => words.unanswered,
  'refused-by-page': ({ reason }) => reason,
};

function rangeText(values: Range & { readonly found?: Found }, words: FaultWords['expected'], format: Format): string {
  const { isWhole, found } = values;
  const least = numberText(saidLeast(values.least, found), format);
  const most = amountText(saidMost(values.most), values, format);
  return isWhole ? words.wholeNumber(least, most) : words.number(least, most);
}

/** Decimals of a number that is said as it is typed. */
const MOST_DECIMALS = 6;

function numberText(value: number, { number }: Format): string {
  return number(value, MOST_DECIMALS);
}

/** A number with what it is of, in its own units, whatever those of the reader's plan. */
function amountText(value: number, { quantity, units, unit }: Measure, format: Format): string {
  const { language } = format.reader;
  const number = numberText(value, format);
  if (quantity !== undefined)
    return withUnit(number, units === undefined ? '' : symbolOf(unitOf(quantity, units).name, language));
  if (unit === undefined) return number;
  if (unit === 'percent') return format.percent(value / 100);
  return withUnit(number, format.plural(value, faultsWords(language).units[unit]));
}

function valueText({ code, values }: Fault, reader: Reader): string {
  const words = faultsWords(reader.language).found;
  const format = formatFor(reader);
  switch (code) {
    case 'too-long':
      return words.characters(format, Number(values.found));
    case 'empty-file':
      return words.emptyFile;
    case 'not-json':
      return characterText(values.found, words);
    case 'more-faults':
      return words.moreFaults(format, values.count);
    case 'no-plan':
      return words.noPlan;
    case 'read-only':
      return words.readOnly;
    case 'not-computed':
      return words.noSeason;
    case 'unanswered':
      return words.noPlanHere;
    case 'file-unreachable':
    case 'file-unreadable':
    case 'file-refused':
      return String(values.found);
    default:
      return foundText(values.found, words, format);
  }
}

function characterText(found: Found, words: FaultWords['found']): string {
  if (typeof found !== 'string') return words.endOfFile;
  if (found === '\n' || found === '\r') return words.lineBreak;
  return found < ' ' ? words.controlCharacter : words.text(found);
}

function foundText(found: Found, words: FaultWords['found'], format: Format): string {
  if (found === undefined) return words.nothing;
  if (found === null) return words.null;
  if (typeof found === 'string') return words.text(visibleText(found));
  if (typeof found === 'number') return Number.isNaN(found) ? words.notANumber : numberFound(found, format);
  if (typeof found === 'boolean') return found ? words.true : words.false;
  if ('items' in found) return found.items.length === 0 ? words.emptyList : listed(found.items, words);
  if ('listLength' in found) return words.list(format, found.listLength);
  return 'fields' in found ? words.fields : words.type(found.type);
}

/** An empty text among them is seen by its quotes. */
function listed(items: readonly string[], words: FaultWords['found']): string {
  return items.map((item) => (item.trim() === '' ? words.text(item) : item)).join(', ');
}

/** Infinite numbers, and those of more digits than are said, as they are written. */
function numberFound(value: number, { number }: Format): string {
  const isPlain = Number.isFinite(value) && Math.abs(value) < 1e15 && Number(value.toFixed(MOST_DECIMALS)) === value;
  return isPlain ? number(value, MOST_DECIMALS) : String(value);
}
