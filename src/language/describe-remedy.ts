/** A notice's remedy in the reader's language: what is changed, and what that comes to. */

import { dayNumber } from '../engine/calendar.ts';
import type { Season } from '../engine/season/season.ts';
import { isOfKind, type Notice } from '../explain/notices/notice.ts';
import { weekdayMask } from '../plan/to-garden/weekday-masks.ts';
import type { MonthDays, Remedy, Trade, ZoneWateringDays } from '../remedies/notices/remedy.ts';
import { describeMixRemedy } from './describe-mix-remedy.ts';
import { remediesWords } from './en/remedies.ts';
import { formatFor } from './format/format.ts';
import { isolated } from './format/isolated.ts';
import type { Reader } from './reader.ts';

/** More zones than these are counted. */
const MOST_NAMED = 3;

const A_MONDAY = dayNumber('2001-01-01');

/** What is changed, as an order to the gardener, without a full stop. */
export function describeRemedy(remedy: Remedy, reader: Reader): string {
  const format = formatFor(reader);
  const { change } = remediesWords(reader.language);
  const { zone, planting } = namesIn(remedy.seasonWith);
  switch (remedy.kind) {
    case 'close-loop':
    case 'uphill':
      return change[remedy.kind](planting(remedy.plantingId));
    case 'feed-middle':
      return change['feed-middle'](format, planting(remedy.plantingId), remedy.runs, remedy.runLengthM);
    case 'cut-in-two':
      return change['cut-in-two'](planting(remedy.plantingId), zone(remedy.newZoneId));
    case 'wider-spacing':
    case 'closer-spacing':
      return change.spacing(format, planting(remedy.plantingId), remedy.spacingM);
    case 'split-zone': {
      const { zoneId, newZoneId, plantingIds } = remedy;
      return change['split-zone'](format, zone(zoneId), zone(newZoneId), plantingIds.map(planting));
    }
    case 'other-emitters':
    case 'other-runs':
    case 'shut-off':
    case 'own-zone':
    case 'zone-rule':
      return describeMixRemedy({ changes: [remedy.change] }, planting, reader);
    case 'own-zone-and-days': {
      const split = describeMixRemedy({ changes: [remedy.change] }, planting, reader);
      return change['own-zone-and-days'](split, wateringDaysText(remedy.wateringDays, zone, reader));
    }
    case 'no-shut-off':
    case 'keep-watered':
      return change[remedy.kind](planting(remedy.plantingId));
    case 'smaller-step':
      return change['smaller-step'](format, zone(remedy.zoneId), remedy.timerStepMinutes);
    case 'more-room':
      return change['more-room'](format, planting(remedy.plantingId), remedy.targetDepletion);
    case 'more-starts':
      return change['more-starts'](format, zone(remedy.zoneId), remedy.startsADay);
    case 'other-days':
      return change['other-days'](wateringDaysText(remedy.wateringDays, zone, reader));
    case 'more-days': {
      const days = Math.max(...remedy.wateringDays.map(({ weekdays }) => weekdays.length));
      return change['more-days'](format, days, wateringDaysText(remedy.wateringDays, zone, reader));
    }
    case 'days-by-month':
      return change['days-by-month'](format, zone(remedy.zoneId), monthsByDays(remedy.months));
    case 'fewer-minutes': {
      const { zoneIds, minutesLess, weeks } = remedy;
      const isMany = zoneIds.length > MOST_NAMED;
      const zones = isMany ? change.zones(format, zoneIds.length) : format.list(zoneIds.map(zone));
      return change['fewer-minutes'](format, zones, minutesLess, weeks);
    }
    case 'shut-weeks':
      return change['shut-weeks'](format, remedy.plantingIds.map(planting), remedy.weeks);
    case 'minutes-as-now':
      return change['minutes-as-now'](format, remedy.zoneIds.map(zone), remedy.weeks);
    case 'together':
      return remedy.parts.map((part) => describeRemedy({ ...remedy, ...part }, reader)).join('. ');
    case 'larger-tank':
      return change['larger-tank'](format, remedy.capacityLitres, remedy.capacityLitresBefore);
  }
}

/** What it comes to, sentence by sentence: what is left of the trouble, water, minutes, pressure, and what goes short. */
export function describeRemedyEffects(remedy: Remedy, notice: Notice, reader: Reader): readonly string[] {
  const { remaining, unmetLitresMore, leastPressureKpa, trade } = remedy;
  const format = formatFor(reader);
  const words = remediesWords(reader.language);
  const volume = (litres: number) => format.quantity(Math.abs(litres), 'volume');
  const isShort = volume(unmetLitresMore) !== volume(0);
  return [
    remaining > 0 ? words.remains(format, Math.max(0.01, remaining)) : words.fixes,
    seasonText(remedy, reader),
    ...(leastPressureKpa === undefined || !isOfKind(notice, 'line-too-long')
      ? []
      : [words.pressure(format, leastPressureKpa, notice.figures.leastPressureKpa)]),
    ...(trade === undefined ? [] : [tradeText(trade, remedy, reader)]),
    ...(isShort && trade === undefined
      ? [words[unmetLitresMore > 0 ? 'shortMore' : 'shortLess'](volume(unmetLitresMore))]
      : []),
  ];
}

function tradeText({ savedLitres, lostLitres, plantingIds }: Trade, { seasonWith }: Remedy, reader: Reader): string {
  const format = formatFor(reader);
  const plantings = plantingIds.map(namesIn(seasonWith).planting);
  return remediesWords(reader.language).trade(format, savedLitres, plantings, lostLitres);
}

function seasonText({ litresMore, minutesMore }: Remedy, reader: Reader): string {
  const format = formatFor(reader);
  const words = remediesWords(reader.language);
  const change = (amount: number, write: (amount: number) => string, same: string) => {
    const written = write(Math.abs(amount));
    if (written === write(0)) return same;
    return amount > 0 ? words.more(written) : words.less(written);
  };
  const water = change(litresMore, (litres) => format.quantity(litres, 'volume'), words.sameWater);
  const time = change(minutesMore, format.duration, words.sameMinutes);
  const isAsNow = water === words.sameWater && time === words.sameMinutes;
  return isAsNow ? words.asNow : words.season(water, time);
}

/** Names by id; what is not there goes by its id. */
function namesIn({ zones, garden }: Season) {
  const plantings = garden.zones.flatMap((each) => each.plantings);
  return {
    zone: (id: string) => isolated(zones.find((each) => each.zone.id === id)?.zone.name ?? id),
    planting: (id: string) => isolated(plantings.find((each) => each.id === id)?.name ?? id),
  };
}

/** `Beds and Pots on Mon and Thu; Hedge on Tue in July`: zones with the same days in the same months are named together. */
function wateringDaysText(days: readonly ZoneWateringDays[], zone: (id: string) => string, reader: Reader): string {
  const groups = new Map<string, { readonly mask: number; readonly months: readonly number[]; names: string[] }>();
  for (const { zoneId, weekdays, months = [] } of days) {
    const mask = weekdayMask(weekdays);
    const key = `${mask} ${months}`;
    const group = groups.get(key) ?? { mask, months, names: [] };
    group.names.push(zone(zoneId));
    groups.set(key, group);
  }
  const { onDays } = remediesWords(reader.language).change;
  return [...groups.values()]
    .map(({ mask, months, names }) => onDays(formatFor(reader), names, { monday: A_MONDAY, mask, months }))
    .join('; ');
}

/** Months with as many watering days together, the most first. */
function monthsByDays(months: readonly MonthDays[]): readonly (readonly [days: number, months: readonly number[]])[] {
  const counts = [...new Set(months.map(({ days }) => days))].sort((one, other) => other - one);
  return counts.map((count) => [count, months.filter(({ days }) => days === count).map(({ month }) => month)]);
}
