/** An edit in a short sentence, for undo and announcements: `Beds, week of July 5: 45 min set by hand`. */

import { toSi, type UnitSystem } from '../engine/units.ts';
import type {
  DayRunEdit,
  Edit,
  GardenEdit,
  LineEdit,
  PlantingEdit,
  TogetherEdit,
  WeatherEdit,
  WeekEdit,
  ZoneEdit,
} from '../plan/edits/edit.ts';
import { entriesOutside } from '../plan/edits/garden-edits.ts';
import type { Plan, PlanChoice, PlanLine } from '../plan/schema/plan-schema.ts';
import { shortText } from '../plan/words/short-text.ts';
import { describeRecord, firstDayOfWeek } from './describe-record.ts';
import { describeDayRun, describeTotalRun, runOfWeek } from './describe-run.ts';
import { type Batch, editsWords } from './en/edits.ts';
import { fieldName } from './field-name.ts';
import { formatFor } from './format/format.ts';
import { isolated } from './format/isolated.ts';
import type { Reader } from './reader.ts';

/** `plan`: before the edit, so that what it takes out still has its name. Never throws: what is not there goes by its id. */
export function describeEdit(plan: Plan, edit: Edit, reader: Reader): string {
  switch (edit.type) {
    case 'set-minutes':
    case 'set-minutes-run':
    case 'set-week-run':
    case 'close-week':
    case 'set-open-days':
    case 'set-note':
    case 'set-choice':
      return weekEdit(plan, edit, reader);
    case 'set-day-run':
      return dayRunEdit(plan, edit, reader);
    case 'set-week-rain':
    case 'set-week-eto':
    case 'set-week-note':
    case 'set-meter':
    case 'set-day-weather':
    case 'change-day-weather':
    case 'set-forecast':
    case 'set-climate':
    case 'set-departure':
      return weatherEdit(plan, edit, reader);
    case 'rename-plan':
    case 'set-plan-notes':
    case 'set-assumed':
    case 'set-season':
    case 'change-site':
    case 'change-supply':
    case 'set-what-if':
    case 'convert-units':
      return gardenEdit(plan, edit, reader);
    case 'add-zone':
    case 'change-zone':
    case 'remove-zone':
    case 'move-zone':
      return zoneEdit(plan, edit, reader);
    case 'add-planting':
    case 'change-planting':
    case 'remove-planting':
    case 'move-planting':
      return plantingEdit(plan, edit, reader);
    case 'add-line':
    case 'replace-line':
    case 'remove-line':
      return lineEdit(plan, edit, reader);
    case 'together':
      return togetherEdit(plan, edit, reader);
  }
}

function weekEdit(plan: Plan, edit: WeekEdit, reader: Reader): string {
  const zone = zoneName(plan, edit.zone);
  const day = firstDayOfWeek(plan, edit.week);
  return editsWords(reader.language).inWeek(formatFor(reader), zone, day, weekChange(plan, edit, reader));
}

function weekChange(plan: Plan, edit: WeekEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor(reader);
  switch (edit.type) {
    case 'set-minutes':
      return edit.minutes === undefined ? words.minutesComputed : words.minutesByHand(format, edit.minutes);
    case 'set-minutes-run':
      return describeTotalRun(edit.minutes, runOfWeek(plan, edit.zone, edit.week), reader);
    case 'set-week-run': {
      const { run } = edit;
      if (typeof run === 'number') return describeTotalRun(run, runOfWeek(plan, edit.zone, edit.week), reader);
      return run === undefined ? words.daysRunGone : words.daysRun(format, Object.keys(run.days).length);
    }
    case 'close-week':
      return edit.closed ? words.closed : words.open;
    case 'set-open-days': {
      const name = plantingName(plan, edit.planting);
      return edit.days === undefined ? words.openDaysComputed(name) : words.openDays(format, name, edit.days);
    }
    case 'set-note':
      return edit.note === undefined || edit.note === '' ? words.noteGone : words.note(shortText(edit.note));
    case 'set-choice':
      return choiceText(edit.choice, reader);
  }
}

function dayRunEdit(plan: Plan, { zone, day, run }: DayRunEdit, reader: Reader): string {
  const name = zoneName(plan, zone);
  const open = run?.open?.map((id) => plantingName(plan, id));
  const what = describeDayRun(run && { minutes: run.minutes, open }, runOfWeek(plan, zone, day), reader);
  return editsWords(reader.language).onDay(formatFor(reader), name, shortText(day), what);
}

function choiceText(choice: PlanChoice = {}, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor(reader);
  const parts = [
    ...(choice.closed ? [words.closed] : []),
    ...(choice.minutes === undefined ? [] : [words.minutesByHand(format, choice.minutes)]),
    ...(choice.openDays === undefined ? [] : [words.openDaysByHand]),
    ...(choice.note === undefined ? [] : [words.aNote]),
  ];
  return parts.length === 0 ? words.allComputed : format.list(parts);
}

function weatherEdit(plan: Plan, edit: WeatherEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor({ ...reader, units: plan.units });
  const mm = (depth: number | undefined) => depth && toSi(depth, 'depth', plan.units);
  switch (edit.type) {
    case 'set-week-rain': {
      const day = firstDayOfWeek(plan, edit.week);
      return edit.rain === undefined || edit.through === undefined
        ? words.weekRain(format, day, mm(edit.rain))
        : words.weekRainThrough(format, day, toSi(edit.rain, 'depth', plan.units), shortText(edit.through));
    }
    case 'set-week-eto':
      return words.weekEto(format, firstDayOfWeek(plan, edit.week), mm(edit.eto));
    case 'set-week-note':
    case 'set-meter':
      return describeRecord(plan, edit, reader);
    case 'set-day-weather':
    case 'change-day-weather': {
      const { source: _, ...weather } = (edit.type === 'set-day-weather' ? edit.weather : edit.change) ?? {};
      const day = shortText(edit.day);
      if (weather.rain !== undefined) return words.dayRain(format, day, toSi(weather.rain, 'depth', plan.units));
      const isGone = Object.values(weather).every((value) => value === undefined);
      return isGone ? words.dayWeatherGone(format, day) : words.dayWeather(format, day, fieldsOf(weather, reader));
    }
    case 'set-forecast': {
      const [issued, days] = [shortText(edit.issued), edit.days];
      return days ? words.forecast(format, issued, Object.keys(days).length) : words.forecastGone(format, issued);
    }
    case 'set-climate':
      return words.climate;
    case 'set-departure':
      return words.departure(format, shortText(edit.from), edit.weeks, edit);
  }
}

function gardenEdit(plan: Plan, edit: GardenEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor(reader);
  switch (edit.type) {
    case 'rename-plan':
      return words.planRenamed(isolated(shortText(edit.name)));
    case 'set-plan-notes':
      return words.planNotes;
    case 'set-assumed':
      return words.assumed;
    case 'set-season': {
      const { firstDay, weeks } = edit.season;
      const lost = entriesOutside(plan, edit.season);
      return lost === 0 ? words.season(format, firstDay, weeks) : words.seasonCut(format, firstDay, weeks, lost);
    }
    case 'change-site':
      return words.site(format, fieldsOf(edit.change, reader));
    case 'change-supply':
      return words.supply(format, fieldsOf(edit.change, reader));
    case 'set-what-if':
      return words[edit.edits === undefined ? 'whatIfGone' : 'whatIf'](isolated(shortText(edit.name)));
    case 'convert-units':
      return words.units[edit.units];
  }
}

function zoneEdit(plan: Plan, edit: ZoneEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  switch (edit.type) {
    case 'add-zone':
      return words.zoneAdded(isolated(shortText(edit.zone.name)));
    case 'change-zone':
      return words.inZone(zoneName(plan, edit.zone), changeText(edit.change, reader));
    case 'remove-zone':
      return words.zoneRemoved(zoneName(plan, edit.zone));
    case 'move-zone':
      return words.zoneMoved(zoneName(plan, edit.zone));
  }
}

function plantingEdit(plan: Plan, edit: PlantingEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  const zone = zoneName(plan, edit.zone);
  if (edit.type === 'add-planting') return words.plantingAdded(zone, isolated(shortText(edit.planting.name)));
  const planting = plantingName(plan, edit.planting);
  switch (edit.type) {
    case 'change-planting':
      return words.inPlanting(zone, planting, changeText(edit.change, reader));
    case 'remove-planting':
      return words.plantingRemoved(zone, planting);
    case 'move-planting':
      return edit.toZone === edit.zone
        ? words.plantingMoved(zone, planting)
        : words.plantingMovedTo(planting, zone, zoneName(plan, edit.toZone));
  }
}

function lineEdit(plan: Plan, edit: LineEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  return words.inPlanting(zoneName(plan, edit.zone), plantingName(plan, edit.planting), lineChange(plan, edit, reader));
}

function lineChange(plan: Plan, edit: LineEdit, reader: Reader): string {
  const { lineAdded, lineChanged, lineRemoved } = editsWords(reader.language);
  if (edit.type === 'remove-line') return lineRemoved;
  const line = lineText(edit.line, plan.units, reader);
  return edit.type === 'add-line' ? lineAdded(line) : lineChanged(line);
}

function lineText(line: PlanLine, units: UnitSystem, reader: Reader): string {
  const words = editsWords(reader.language).line;
  const format = formatFor({ ...reader, units });
  if (line.kind === 'solid') return words.solid();
  const lph = toSi(line.flow, 'emitterFlow', units);
  switch (line.kind) {
    case 'dripline':
      return words.dripline(format, lph, toSi(line.spacing, 'spacing', units));
    case 'point':
    case 'spray':
      return words[line.kind](format, line.count, lph);
  }
}

function changeText(change: { readonly name?: string | undefined }, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor(reader);
  const { name, ...rest } = change;
  const fields = fieldsOf(rest, reader);
  return format.list([
    ...(name === undefined ? [] : [words.renamed(shortText(name))]),
    ...(fields.length === 0 ? [] : [words.changed(format, fields)]),
  ]);
}

/** More parts than this are counted. */
const MOST_PARTS = 2;

function togetherEdit(plan: Plan, { action, edits }: TogetherEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor(reader);
  const isNamed = action !== undefined && Object.hasOwn(words.batch, action);
  if (isNamed) return words.batch[action](format, batchOf(plan, edits));
  const parts = edits.slice(0, MOST_PARTS).map((edit) => describeEdit(plan, edit, reader));
  const [first] = parts;
  if (first === undefined) return words.nothing;
  return edits.length > MOST_PARTS ? words.andMore(format, first, edits.length - 1) : words.several(parts);
}

function batchOf(plan: Plan, edits: readonly Edit[]): Batch {
  const zones = new Set<string>();
  const plantings = new Set<string>();
  let newZone = '';
  for (const edit of edits.flatMap(single)) {
    if (edit.type === 'add-zone') newZone = isolated(shortText(edit.zone.name));
    else if ('zone' in edit) zones.add(zoneName(plan, edit.zone));
    if (edit.type === 'move-planting' || edit.type === 'change-planting') {
      plantings.add(plantingName(plan, edit.planting));
    }
  }
  return { count: edits.length, zones: [...zones], plantings: [...plantings], newZone };
}

/** Those that an edit is made of. */
const single = (edit: Edit): readonly Edit[] => (edit.type === 'together' ? edit.edits.flatMap(single) : [edit]);

function fieldsOf(change: object, { language }: Reader): readonly string[] {
  const told = Object.keys(change).filter((field, _, all) => field !== 'assumed' || all.length === 1);
  return told.map((field) => fieldName([field], language));
}

function zoneName(plan: Plan, id: string): string {
  return isolated(shortText(plan.zones.find((zone) => zone.id === id)?.name ?? id));
}

function plantingName(plan: Plan, id: string): string {
  const plantings = plan.zones.flatMap((zone) => zone.plantings);
  return isolated(shortText(plantings.find((planting) => planting.id === id)?.name ?? id));
}
