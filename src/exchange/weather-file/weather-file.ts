/** What a file of daily weather was understood as: shown to a person before anything of it is taken. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { DailyRecord, RecordReading } from '../../engine/record/daily-record.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { RowFault } from '../csv/imported.ts';
import type { FormChoice, FormQuestion } from '../csv/table-form.ts';

/** The layouts that are read, each by its own row of `WEATHER_FILE_LAYOUTS`. */
export type WeatherFileKind =
  | 'open-meteo-json'
  | 'open-meteo-csv'
  | 'ghcn-daily'
  | 'ncei-access'
  | 'ncei-search'
  | 'log';

export interface WeatherFile {
  readonly kind: WeatherFileKind;
  /** A grid of a model, not a gauge. */
  readonly isModel: boolean;
  /** Those that the file has days of; empty where it names none. */
  readonly places: readonly FilePlace[];
  /** The one that was read; undefined where the file names none or a person has to choose. */
  readonly place: FilePlace | undefined;
  /** What a person has to say first: until then there is no record. */
  readonly asked: readonly WeatherQuestion[];
  /** In which units the figures were read; undefined for what the file has not. */
  readonly units: { readonly depth: FileUnits | undefined; readonly temperature: FileUnits | undefined };
  /** All days from the first to the last, of the place that was read; undefined where nothing could be taken. */
  readonly record: DailyRecord | undefined;
  readonly leftOut: readonly LeftOut[];
  /** Rows that could not be read, by line. */
  readonly faults: readonly RowFault[];
  /** Why nothing of it can be taken. */
  readonly refused: WeatherFileRefusal | undefined;
}

/** A station, or a point of a model's grid. */
export interface FilePlace {
  readonly id: string;
  readonly name: string | undefined;
  readonly latitudeDeg: number | undefined;
  readonly longitudeDeg: number | undefined;
  readonly elevationM: number | undefined;
  /** IANA name. */
  readonly timeZone: string | undefined;
}

export interface FileUnits {
  readonly system: UnitSystem;
  /** How it is known: by the layout, by what the file says, by what is physically possible, or by what a person said. */
  readonly by: 'layout' | 'file' | 'size' | 'choice';
}

export type WeatherQuestion = 'place' | 'units' | FormQuestion;

/** What a person has said of a file. */
export interface WeatherFileChoice extends FormChoice {
  /** Id of one of its places. */
  readonly place?: string | undefined;
  /** Where it names none: °F and inches, or °C and millimetres. */
  readonly units?: UnitSystem | undefined;
}

/** Figures that were not taken, or taken as something else, and why; the first stands for the others. */
export interface LeftOut {
  readonly cause: LeftOutCause;
  readonly reading: RecordReading;
  readonly count: number;
  readonly first: { readonly day: DayNumber; readonly text: string };
}

export type LeftOutCause =
  /** The office's own check rejects it. */
  | 'flagged'
  /** No place on earth has it. */
  | 'impossible'
  /** A sum of several days. */
  | 'accumulated'
  /** Too little rain to measure: 0. */
  | 'trace'
  /** Neither a number nor a mark of a missing one. */
  | 'unread'
  /** The day stands there twice, with another figure: the first counts. */
  | 'twice'
  /** The day's highest temperature is below its lowest: neither is taken. */
  | 'high-below-low';

export type WeatherFileRefusal =
  /** Figures of hours, not of days. */
  | { readonly code: 'hourly' }
  /** No day could be read, or none of the readings that are known. */
  | { readonly code: 'no-days' }
  /** So many figures of one reading are beyond what is physically possible that its unit is another; `value`: one of them, as written. */
  | {
      readonly code: 'wrong-units';
      readonly reading: RecordReading;
      readonly day: DayNumber | undefined;
      readonly value: string;
    }
  /** The server's own words. */
  | { readonly code: 'service'; readonly reason: string }
  /** It begins as such a file does, and goes on otherwise; `what`: what is missing or unlike. */
  | { readonly code: 'layout'; readonly what: string };

/** One layout: how it is told, and how it is read, in steps, so that a page need not wait for thirty years. */
export interface WeatherFileLayout {
  readonly kind: WeatherFileKind;
  /** `start`: the first lines of the text, without a byte order mark. */
  readonly isLike: (start: string) => boolean;
  readonly read: (text: string, choice: WeatherFileChoice, locale: string) => Generator<void, WeatherFile>;
}

/** What holds of a file of which nothing is known yet. */
export function unreadFile(kind: WeatherFileKind): WeatherFile {
  return {
    kind,
    isModel: kind === 'open-meteo-csv' || kind === 'open-meteo-json',
    places: [],
    place: undefined,
    asked: [],
    units: { depth: undefined, temperature: undefined },
    record: undefined,
    leftOut: [],
    faults: [],
    refused: undefined,
  };
}
