/** A notice's remedy in the reader's language: what is changed, and what that comes to. */
import { dayNumber } from '../engine/calendar.ts';
import type { Season } from '../engine/season/season.ts';
import { isOfKind, type Notice } from '../explain/notices/notice.ts';
import type { Edit } from '../plan/edits/edit.ts';
import { weekdayMask } from '../plan/to-garden/weekday-masks.ts';
import type { Remedy } from '../remedies/notices/remedy.ts';
import { remediesWords } from './en/remedies.ts';
import { formatFor } from './format/format.ts';
import type { Reader } from './reader.ts';

/** More zones than these are counted. */
const MOST_NAMED = 3;

const A_MONDAY = dayNumber('2001-01-01');

/** What is changed, as an order to the gardener, without a full stop. */
export function describeRemedy(remedy: Remedy, notice: Notice, reader: Reader): string {
  const { kind, figures, zoneIds = [], edit, seasonWith } = remedy;
  const format = formatFor(reader);
  const { change } = remediesWords(reader.language);
  const at = (figure: string) => figures[figure] ?? Number.NaN;
  const { zone, planting } = namesIn(seasonWith);
  const noticed = planting(notice.plantingId ?? '');
  switch (kind) {
    case 'close-loop':
    case 'uphill':
      return change[kind](noticed);
    case 'feed-middle':
      return change[kind](format, noticed, at('runs'), at('runLengthM'));
    case 'cut-in-two':
      return change[kind](planting(cutIn(edit) ?? notice.plantingId ?? ''), zone(zoneIds[1] ?? ''));
    case 'wider-spacing':
    case 'closer-spacing':
      return change.spacing(format, noticed, at('spacingM'));
    case 'split-zone':
      return change[kind](format, zone(zoneIds[0] ?? ''), zone(zoneIds[1] ?? ''), movedIn(edit).map(planting));
    case 'other-days':
    case 'more-days':
      return change[kind](wateringDays(editsIn(edit), zone, reader));
    case 'fewer-minutes': {
      const zones = zonesSetIn(edit);
      const named = zones.length > MOST_NAMED ? change.zones(format, zones.length) : format.list(zones.map(zone));
      return change[kind](format, named, at('minutesLess'), at('weeks'));
    }
    case 'larger-tank':
      return change[kind](
        format,
        at('capacityLitres'),
        isOfKind(notice, 'tank-dry') ? notice.figures.capacityLitres : Number.NaN,
      );
  }
}

/** What it comes to, sentence by sentence: what is left of the trouble, water, minutes, pressure, and what goes short. */
export function describeRemedyEffects(remedy: Remedy, notice: Notice, reader: Reader): readonly string[] {
  const { remaining, figures, unmetLitresMore } = remedy;
  const { leastPressureKpa } = figures;
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
    ...(isShort ? [words[unmetLitresMore > 0 ? 'shortMore' : 'shortLess'](volume(unmetLitresMore))] : []),
  ];
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
    zone: (id: string) => zones.find((each) => each.zone.id === id)?.zone.name ?? id,
    planting: (id: string) => plantings.find((each) => each.id === id)?.name ?? id,
  };
}

/** `Beds and Pots on Mon and Thu; Hedge on Tue`: zones with the same days are named together. */
function wateringDays(edits: readonly Edit[], zone: (id: string) => string, reader: Reader): string {
  const zones = new Map<number, string[]>();
  for (const edit of edits) {
    if (edit.type !== 'change-zone' || !Array.isArray(edit.change.wateringDays)) continue;
    const days = weekdayMask(edit.change.wateringDays);
    zones.set(days, [...(zones.get(days) ?? []), zone(edit.zone)]);
  }
  const { onDays } = remediesWords(reader.language).change;
  return [...zones].map(([days, names]) => onDays(formatFor(reader), names, A_MONDAY, days)).join('; ');
}

function editsIn(edit: Edit): readonly Edit[] {
  return edit.type === 'together' ? edit.edits.flatMap(editsIn) : [edit];
}

/** The planting that gives half of itself away. */
function cutIn(edit: Edit): string | undefined {
  return editsIn(edit).flatMap((each) => (each.type === 'change-planting' ? [each.planting] : []))[0];
}

function movedIn(edit: Edit): readonly string[] {
  return editsIn(edit).flatMap((each) => (each.type === 'move-planting' ? [each.planting] : []));
}

function zonesSetIn(edit: Edit): readonly string[] {
  return [...new Set(editsIn(edit).flatMap((each) => (each.type === 'set-minutes' ? [each.zone] : [])))];
}
