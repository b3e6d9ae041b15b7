/** What an edit is called: in undo and redo, in announcements, in the list of what was done. */
import type { BatchAction } from '../../plan/edits/edit.ts';
import type { PlanLine } from '../../plan/schema/plan-schema.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import { isoDay, isoWeekOf } from '../format/iso-day.ts';
import type { Forms } from '../format/plural.ts';

const WEEKS = { one: 'week', other: 'weeks' };
const CELLS = { one: 'cell', other: 'cells' };
const DAYS = { one: 'day', other: 'days' };
const ZONES = { one: 'zone', other: 'zones' };
const PLANTINGS = { one: 'planting', other: 'plantings' };

/** What a batch of edits touches. */
export interface Batch {
  readonly count: number;
  /** Names of the zones whose own weeks, days or plantings it changes. */
  readonly zones: readonly string[];
  /** Names of the plantings that it moves or changes. */
  readonly plantings: readonly string[];
  /** Name of the zone that it adds; empty where it adds none. */
  readonly newZone: string;
}

export const edits = {
  /** `day`: ISO, of the week's first day. */
  inWeek: (format: Format, zone: string, day: string, what: string) =>
    `${zone}, ${isoWeekOf(format, day, 'long')}: ${what}`,
  minutesByHand: ({ minutes }: Format, amount: number) => `${minutes(amount)} set by hand`,
  minutesComputed: 'computed minutes',
  minutesRun: ({ minutes }: Format, amount: number) => `${minutes(amount)} run`,
  /** In place of what was logged by day. */
  minutesRunForDays: ({ minutes }: Format, amount: number) => `${minutes(amount)} run, instead of runs by day`,
  minutesRunGone: 'minutes run taken out',
  daysRunGone: 'runs by day taken out',
  daysRun: ({ count }: Format, days: number) => `what ran on ${count(days, DAYS)}`,
  closed: 'closed',
  open: 'open again',
  openDays: ({ count }: Format, planting: string, days: number) => `${planting} open on ${count(days, DAYS)}`,
  openDaysComputed: (planting: string) => `${planting} open on computed days`,
  openDaysByHand: 'open days set by hand',
  /** `day`: ISO. */
  onDay: (format: Format, zone: string, day: string, what: string) =>
    `${zone}, ${isoDay(format, day, 'long')}: ${what}`,
  /** `open`: plantings whose shut-off was open; undefined where it is not said. */
  dayRun: (format: Format, amount: number, open: readonly string[] | undefined) => {
    const run = `${format.minutes(amount)} run`;
    if (open === undefined) return run;
    return open.length === 0 ? `${run}, every shut-off shut` : `${run}, ${format.list(open)} open`;
  },
  /** `total`: minutes of the week, which the day takes the place of. */
  dayRunForTotal: ({ minutes }: Format, run: string, total: number) =>
    `${run}, instead of ${minutes(total)} in the week`,
  dayRunGone: 'run taken out',
  note: (text: string) => `note “${text}”`,
  noteGone: 'note taken out',
  aNote: 'a note',
  allComputed: 'all computed',

  /** In mm; undefined where the normals count again. `day`: ISO, of the week's first day. */
  weekRain: (format: Format, day: string, mm: number | undefined) =>
    `Rain, ${isoWeekOf(format, day, 'long')}: ${depth(format, mm)}`,
  /** `through`: ISO, the day that it was read through. */
  weekRainThrough: (format: Format, day: string, mm: number, through: string) =>
    `Rain, ${isoWeekOf(format, day, 'long')}: ${depth(format, mm)}, read through ${isoDay(format, through, 'long')}`,
  weekEto: (format: Format, day: string, mm: number | undefined) =>
    `Reference ET, ${isoWeekOf(format, day, 'long')}: ${depth(format, mm)}`,
  /** Of the whole garden. */
  ofWeek: (format: Format, day: string, what: string) => `${isoWeekOf(format, day, 'long')}: ${what}`,
  /** In L; undefined where it is taken out. */
  meter: (format: Format, day: string, litres: number | undefined) =>
    `Water meter, ${isoDay(format, day, 'long')}: ${litres === undefined ? 'reading taken out' : format.quantity(litres, 'volume')}`,
  dayRain: (format: Format, day: string, mm: number) =>
    `Weather of ${isoDay(format, day, 'long')}: rain ${depth(format, mm)}`,
  dayWeather: (format: Format, day: string, fields: readonly string[]) =>
    `Weather of ${isoDay(format, day, 'long')}: ${format.list(fields)}`,
  dayWeatherGone: (format: Format, day: string) => `Weather of ${isoDay(format, day, 'long')}: taken out`,
  forecast: (format: Format, issued: string, days: number) =>
    `Forecast of ${isoDay(format, issued, 'long')}: ${format.count(days, DAYS)}`,
  forecastGone: (format: Format, issued: string) => `Forecast of ${isoDay(format, issued, 'long')}: taken out`,
  climate: 'Climate changed',
  /** `eto`, `rain`: times the usual; both left out where the weeks are as usual again. `day`: ISO, the first. */
  departure: (
    format: Format,
    day: string,
    weeks: number,
    { eto, rain }: { readonly eto?: number | undefined; readonly rain?: number | undefined },
  ) => {
    const says = [
      ...(eto === undefined ? [] : [`ETo ${format.percent(eto)} of usual`]),
      ...(rain === undefined ? [] : [`rain ${format.percent(rain)} of usual`]),
    ];
    const span = `${format.count(weeks, WEEKS)} from ${isoDay(format, day, 'long')}`;
    return `${span}: ${says.length === 0 ? 'weather as usual' : format.list(says)}`;
  },

  planRenamed: (name: string) => `Plan renamed “${name}”`,
  planNotes: 'Notes of the plan changed',
  assumed: 'What is assumed in the plan changed',
  whatIf: (name: string) => `What-if “${name}” kept beside the plan`,
  whatIfGone: (name: string) => `What-if “${name}” taken out`,
  season: (format: Format, firstDay: string, weeks: number) =>
    `Season: from ${isoDay(format, firstDay)}, ${format.count(weeks, WEEKS)}`,
  /** `lost`: entries that lie outside the new season. */
  seasonCut: (format: Format, firstDay: string, weeks: number, lost: number) =>
    `Season: from ${isoDay(format, firstDay)}, ${format.count(weeks, WEEKS)}; ${format.count(lost, { one: 'entry', other: 'entries' })} outside it taken out`,
  site: ({ list }: Format, fields: readonly string[]) => `Site changed: ${list(fields)}`,
  supply: ({ list }: Format, fields: readonly string[]) => `Supply changed: ${list(fields)}`,
  units: { us: 'Units changed to US', metric: 'Units changed to metric' },

  zoneAdded: (zone: string) => `${zone} added`,
  zoneRemoved: (zone: string) => `Zone ${zone} removed`,
  zoneMoved: (zone: string) => `Zone ${zone} moved`,
  inZone: (zone: string, what: string) => `${zone}: ${what}`,
  inPlanting: (zone: string, planting: string, what: string) => `${zone}, ${planting}: ${what}`,
  renamed: (name: string) => `renamed “${name}”`,
  changed: ({ list }: Format, fields: readonly string[]) => `${list(fields)} changed`,
  plantingAdded: (zone: string, planting: string) => `${zone}: ${planting} added`,
  plantingRemoved: (zone: string, planting: string) => `${zone}: ${planting} removed`,
  plantingMoved: (zone: string, planting: string) => `${zone}: ${planting} moved`,
  plantingMovedTo: (planting: string, from: string, to: string) => `${planting} moved from ${from} to ${to}`,
  lineAdded: (line: string) => `line added, ${line}`,
  lineChanged: (line: string) => `line changed, ${line}`,
  lineRemoved: 'line removed',
  /** A line in a few words: L/h of an emitter, m between emitters. */
  line: {
    dripline: ({ quantity }: Format, lph: number, spacingM: number) =>
      `dripline with ${quantity(lph, 'emitterFlow')} emitters every ${quantity(spacingM, 'spacing')}`,
    point: ({ count, quantity }: Format, emitters: number, lph: number) =>
      `${count(emitters, { one: 'point emitter', other: 'point emitters' })} (${quantity(lph, 'emitterFlow')})`,
    spray: ({ count, quantity }: Format, sprays: number, lph: number) =>
      `${count(sprays, { one: 'micro-spray', other: 'micro-sprays' })} (${quantity(lph, 'emitterFlow')})`,
    solid: () => 'solid line',
  } satisfies Record<PlanLine['kind'], unknown>,

  batch: {
    'paste-cells': ({ count }: Format, batch: Batch) => `Paste ${count(batch.count, CELLS)}`,
    'cut-cells': ({ count }: Format, batch: Batch) => `Cut ${count(batch.count, CELLS)}`,
    'fill-cells': ({ count }: Format, batch: Batch) => `Fill ${count(batch.count, CELLS)}`,
    'change-cells': ({ count }: Format, batch: Batch) => `Change ${count(batch.count, CELLS)}`,
    'clear-cells': ({ count }: Format, batch: Batch) => `Use computed figures in ${count(batch.count, CELLS)}`,
    'close-weeks': (format: Format, batch: Batch) =>
      `${named(format, batch.zones, ZONES)}: close ${format.count(batch.count, WEEKS)}`,
    'open-weeks': (format: Format, batch: Batch) =>
      `${named(format, batch.zones, ZONES)}: open ${format.count(batch.count, WEEKS)}`,
    'log-weeks': (format: Format, batch: Batch) =>
      `${named(format, batch.zones, ZONES)}: log ${format.count(batch.count, WEEKS)} as run`,
    'log-runs': (format: Format, batch: Batch) => `${named(format, batch.zones, ZONES)}: log as run`,
    'set-shut-offs': ({ count }: Format, batch: Batch) =>
      `Set ${count(batch.count, { one: 'shut-off', other: 'shut-offs' })}`,
    'remove-day-rain': ({ count }: Format, batch: Batch) => `Take out rain of ${count(batch.count, DAYS)}`,
    'remove-day-eto': ({ count }: Format, batch: Batch) => `Take out reference ET of ${count(batch.count, DAYS)}`,
    'import-minutes': () => 'Minutes from a file',
    'import-rain': () => 'Rain from a file',
    'import-weather': () => 'Weather from a file',
    'import-season': () => 'Season from a file',
    'take-climate': () => 'Climate and years',
    'take-readings': () => 'Weather of past days',
    'use-computed': (format: Format, batch: Batch) => `${named(format, batch.zones, ZONES)}: use computed figures`,
    'split-zone': (format: Format, batch: Batch) => `${named(format, batch.plantings, PLANTINGS)} to ${batch.newZone}`,
    'cut-planting': (format: Format, batch: Batch) =>
      `${named(format, batch.plantings, PLANTINGS)}: half of it to ${batch.newZone}`,
    'set-watering-days': (format: Format, batch: Batch) => `${named(format, batch.zones, ZONES)}: other watering days`,
    'cut-minutes': () => 'Fewer minutes in the weeks that ask too much',
  } satisfies Record<BatchAction, (format: Format, batch: Batch) => string>,
  several: (parts: readonly string[]) => parts.join('; '),
  andMore: ({ count }: Format, first: string, more: number) =>
    `${first}, and ${count(more, { one: 'more change', other: 'more changes' })}`,
  nothing: 'Nothing changed',
};

/** More names than this are counted. */
const MOST_NAMED = 3;

const named = ({ count, list }: Format, names: readonly string[], forms: Forms): string =>
  names.length > MOST_NAMED ? count(names.length, forms) : list(names);

const depth = ({ quantity }: Format, mm: number | undefined): string =>
  mm === undefined ? 'as normal' : quantity(mm, 'depth');

export const editsWords = area('edits', edits);
