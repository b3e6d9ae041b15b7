/**
 * What is wrong with a plan, with its file or with an edit, as data: language has the sentences (`describeFault`). A kind of fault is a
 * row of `FaultValues`; whoever says faults answers to each (`Record<FaultCode, …>`).
 */
import type { DayNumber } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { CountUnit, PlanQuantity } from '../schema/quantity.ts';
import type { JsonToken } from './json-tokens.ts';
import type { Place } from './place.ts';

/** What else the sentence of each kind of fault needs: plain data, so that no document is asked again. */
export interface FaultValues {
  // What a field takes; from the schema.
  range: Range;
  /** The number has to be greater than the bound. */
  above: { readonly bound: number } & Measure;
  /** Characters. */
  text: { readonly least: number; readonly most: number };
  /** In one line, with something that can be seen; characters. */
  name: { readonly most: number };
  id: NoValues;
  /** The number of a month as the name of a field: 1 to 12. */
  'month-number': NoValues;
  /** An ISO day, in these years. */
  day: { readonly firstYear: number; readonly lastYear: number };
  /** An ISO day of the calendar: no February 30. */
  'calendar-day': NoValues;
  'time-of-day': NoValues;
  /** As they are written in the file. */
  choice: { readonly options: readonly string[] };
  'number-or-weekdays': { readonly least: number; readonly most: number };
  /** Minutes of a whole week, or a group of days. */
  'minutes-or-days': { readonly least: number; readonly most: number };
  list: NoValues;
  'list-too-long': { readonly most: number };
  'list-too-short': { readonly least: number };
  'list-of-months': NoValues;
  /** A group of these fields, as they are called in the file. */
  fields: { readonly known: readonly string[] };
  /** A group of fields of one of these kinds. */
  kinds: { readonly kinds: readonly string[] };
  entries: { readonly by: 'day' | 'month' | 'id' };
  'unknown-field': { readonly known: readonly string[] };

  // What fields have to do with each other.
  'greater-than': { readonly most: number; readonly of: GreatestOf } & Measure;
  'climate-without-eto': NoValues;
  /** Figures of days in a row, in one text: `number` of the first that is none, from 1. */
  'daily-figures': { readonly number: number };
  /** `most`: as figures stand in the file, `mostMm` the same in mm. */
  'daily-figure-too-great': { readonly number: number; readonly most: number; readonly mostMm: number };
  /** As many figures of ETo as `rain` has. */
  'unequal-days': { readonly rain: number };
  'too-many-years': { readonly most: number };
  /** `other`: number of the stretch that has one of its days too, from 1. */
  'stretch-overlaps': { readonly other: number };
  /** `other`: number in the list, from 1. `isFirst`: both have no day of their own. */
  'source-same-day': { readonly other: number; readonly isFirst: boolean };
  /** A source says its pressure, or how high its water stands. */
  'pressure-twice': NoValues;
  /** A cut says a share or an amount: one of the two. */
  'cut-amount': NoValues;
  /** `other`: name of the zone or planting that has it too. */
  'id-taken': { readonly other: string };
  /** `other`: ISO day of the entry in the same week. */
  'week-twice': { readonly other: string };
  'outside-week': { readonly first: DayNumber; readonly last: DayNumber };
  'through-without-rain': NoValues;
  /** `other`: number of the forecast that was issued on the same day, from 1. */
  'issued-twice': { readonly other: number };
  'before-issue': { readonly issued: DayNumber };
  'outside-season': { readonly first: DayNumber; readonly last: DayNumber };
  'zone-unknown': NoValues;
  'planting-unknown': NoValues;
  'ends-before-start': { readonly start: DayNumber; readonly of: 'planting-day' | 'first-day' };

  // The document as a whole.
  'not-a-plan': NoValues;
  'too-deep': { readonly most: number };
  'reserved-name': NoValues;
  'newer-version': { readonly newest: number };
  'older-version': { readonly oldest: number };
  'damaged-version': { readonly version: number };
  'more-faults': { readonly count: number };

  // The text of a file.
  'too-long': { readonly most: number };
  'empty-file': NoValues;
  /** `found` is the character that stands there, undefined at the end of the text. */
  'not-json': { readonly expected: JsonToken };
  /** The plan file was not fetched: no answer, or this HTTP status. `found` is its address. */
  'file-unreachable': NoValues;
  'file-refused': { readonly status: number };
  /** A file that a person chose was moved or closed off since. `found` is its name. */
  'file-unreadable': NoValues;

  // An edit.
  'line-unknown': { readonly lines: number };
  'edit-unknown': NoValues;
  /** Its field has to be a group of fields, or a list of edits. */
  'edit-incomplete': { readonly field: string };

  // The open plan, whatever the edit.
  'no-plan': NoValues;
  'read-only': NoValues;
  'not-computed': NoValues;
  unanswered: NoValues;
  /** A page that holds the plan itself does not take the edit, and says why in its own words. */
  'refused-by-page': { readonly reason: string };
}

/** What a number may not pass. */
export type GreatestOf = 'month-highest' | 'month-length' | 'day-highest' | 'capacity';

export type FaultCode = keyof FaultValues;

export interface FaultOf<Code extends FaultCode> {
  /** Place in the document: `zones.2.plantings.0.extent.area`; empty for the whole. */
  readonly path: string;
  readonly code: Code;
  readonly values: FaultValues[Code] & {
    /** The place as one would point at it. */
    readonly place: Place;
    readonly found: Found;
  };
}

/** One thing that is wrong. */
export type Fault = { [Code in FaultCode]: FaultOf<Code> }[FaultCode];

/** A code with its own values, before the place is known. */
export type Expectation = {
  [Code in FaultCode]: { readonly code: Code; readonly values: FaultValues[Code] };
}[FaultCode];

/** What a number is of: a quantity in the unit of a system, things that are counted, or a bare number. */
export interface Measure {
  readonly quantity?: PlanQuantity;
  /** Of the quantity. */
  readonly units?: UnitSystem;
  readonly unit?: CountUnit;
}

export interface Range extends Measure {
  readonly least: number;
  readonly most: number;
  readonly isWhole: boolean;
}

/** What stands at a place: a short value as it is (a text cut), anything else by its size or its JavaScript type. */
export type Found =
  | string
  | number
  | boolean
  | null
  | undefined
  | { readonly items: readonly string[] }
  | { readonly listLength: number }
  | { readonly fields: number }
  | { readonly type: string };

type NoValues = Readonly<Record<never, never>>;
