/** A notice's remedy in words: what is changed, and what that comes to. */
import { isOfKind, type Notice } from '../../explain/notices/notice.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatList } from '../../language/format/list.ts';
import { formatPercent } from '../../language/format/number.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Remedy } from '../../remedies/notices/remedy.ts';
import { noticeRemedyWords as words } from '../shared/words/notice-remedy-words.ts';
import { daysInWords } from './days-in-words.ts';
import { longMinutes } from './long-minutes.ts';

/** More zones than these are counted. */
const MOST_NAMED = 3;

export interface RemedyAsked {
  readonly remedy: Remedy;
  readonly notice: Notice;
  readonly reading: Reader;
}

/** What is changed, as an order to the gardener. */
export function changeInWords({ remedy, notice, reading }: RemedyAsked): string {
  const { kind, figures, zoneIds = [], edit, seasonWith } = remedy;
  const change = words.change;
  const at = (figure: string) => figures[figure] ?? Number.NaN;
  const zone = (id: string | undefined) => seasonWith.zones.find((each) => each.zone.id === id)?.zone.name ?? id ?? '';
  const plantings = seasonWith.garden.zones.flatMap((each) => each.plantings);
  const planting = (id: string | undefined) => plantings.find((each) => each.id === id)?.name ?? id ?? '';
  const list = (ids: readonly string[], name: (id: string) => string) => formatList(ids.map(name), reading.locale);
  switch (kind) {
    case 'close-loop':
    case 'uphill':
      return change[kind](planting(notice.plantingId));
    case 'feed-middle':
      return change[kind](
        planting(notice.plantingId),
        formatCount(at('runs'), words.runs, reading.locale),
        formatQuantity(at('runLengthM'), 'length', reading),
      );
    case 'cut-in-two':
      return change[kind](planting(cutIn(edit) ?? notice.plantingId), zone(zoneIds[1]));
    case 'wider-spacing':
    case 'closer-spacing':
      return change.spacing(planting(notice.plantingId), formatQuantity(at('spacingM'), 'spacing', reading));
    case 'split-zone':
      return change[kind](list(movedIn(edit), planting), zone(zoneIds[0]), zone(zoneIds[1]));
    case 'other-days':
    case 'more-days':
      return change[kind](daysInWords(editsIn(edit), zone, reading.locale));
    case 'fewer-minutes':
      return change[kind](
        zonesInWords(zonesSetIn(edit), (ids) => list(ids, zone), reading.locale),
        longMinutes(at('minutesLess'), reading),
        formatCount(at('weeks'), words.weeks, reading.locale),
      );
    case 'larger-tank':
      return change[kind](
        formatQuantity(at('capacityLitres'), 'volume', reading),
        formatQuantity(isOfKind(notice, 'tank-dry') ? notice.figures.capacityLitres : Number.NaN, 'volume', reading),
      );
  }
}

/** What it comes to: what is left of the trouble, water, minutes, pressure, and what goes short. */
export function effectInWords({ remedy, notice, reading }: RemedyAsked): readonly string[] {
  const { remaining, figures, unmetLitresMore } = remedy;
  const volume = (litres: number) => formatQuantity(Math.abs(litres), 'volume', reading);
  const pressure = (kpa: number | undefined) => formatQuantity(kpa ?? Number.NaN, 'pressure', reading);
  const { leastPressureKpa } = figures;
  const isShort = volume(unmetLitresMore) !== volume(0);
  return [
    remaining > 0 ? words.leaves(formatPercent(Math.max(0.01, remaining), reading.locale)) : words.mends,
    seasonInWords(remedy, reading),
    ...(leastPressureKpa === undefined
      ? []
      : [
          words.pressure(
            pressure(leastPressureKpa),
            pressure(isOfKind(notice, 'line-too-long') ? notice.figures.leastPressureKpa : undefined),
          ),
        ]),
    ...(isShort ? [words[unmetLitresMore > 0 ? 'shortMore' : 'shortLess'](volume(unmetLitresMore))] : []),
  ];
}

function seasonInWords({ litresMore, minutesMore }: Remedy, reading: Reader): string {
  const change = (amount: number, write: (amount: number) => string, same: string) => {
    const written = write(Math.abs(amount));
    if (written === write(0)) return same;
    return amount > 0 ? words.more(written) : words.less(written);
  };
  const water = change(litresMore, (litres) => formatQuantity(litres, 'volume', reading), words.sameWater);
  const time = change(minutesMore, (minutes) => longMinutes(minutes, reading), words.sameMinutes);
  const isAsNow = water === words.sameWater && time === words.sameMinutes;
  return isAsNow ? words.asNow : words.season(water, time);
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

/** A few by name, many by number. */
function zonesInWords(ids: readonly string[], named: (ids: readonly string[]) => string, locale: string): string {
  return ids.length > MOST_NAMED ? formatCount(ids.length, words.zones, locale) : named(ids);
}

function zonesSetIn(edit: Edit): readonly string[] {
  return [...new Set(editsIn(edit).flatMap((each) => (each.type === 'set-minutes' ? [each.zone] : [])))];
}
