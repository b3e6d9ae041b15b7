/** A notice in the reader's language: whom it concerns, what is the matter, where and when. */

import type { Season } from '../engine/season/season.ts';
import { type Notice, type NoticeFigures, type NoticeKind, plantingsOf } from '../explain/notices/notice.ts';
import { noticesWords } from './en/notices.ts';
import { type Format, formatFor } from './format/format.ts';
import { isolated } from './format/isolated.ts';
import type { Reader } from './reader.ts';

export interface NoticeText {
  /** Of the planting or the few of them, else of the zone, else of the garden. */
  readonly name: string;
  /** What is the matter; goes on after the name and a colon. */
  readonly sentence: string;
  /** Zone, planting and weeks, those that there are. */
  readonly where: string;
}

/** More plantings than these go by their zone. */
const MOST_NAMED = 3;

/** `season`: the one that the notice is of. `gardenName`: stands where no zone is concerned. */
export function describeNotice(notice: Notice, season: Season, gardenName: string, reader: Reader): NoticeText {
  const zone = season.zones.find((each) => each.zone.id === notice.zoneId);
  const plantings = plantingsOf(notice).map((id) =>
    isolated(zone?.plantings.find(({ planting }) => planting.id === id)?.planting.name ?? id),
  );
  const zoneName = zone && isolated(zone.zone.name);
  const weeks = weeksOf(notice, season, reader);
  const isFew = plantings.length > 0 && plantings.length <= MOST_NAMED;
  const where = [zoneName, plantings.length === 1 ? plantings[0] : undefined, weeks];
  return {
    name: isFew ? formatFor(reader).list(plantings) : (zoneName ?? isolated(gardenName)),
    sentence: sentenceOf(notice, season, reader),
    where: where.filter((part) => part !== undefined && part !== '').join(', '),
  };
}

function sentenceOf<Kind extends NoticeKind>(
  { kind, figures, groups = [] }: Notice<Kind>,
  { zones }: Season,
  reader: Reader,
): string {
  const { sentences } = noticesWords(reader.language);
  const sentence: (format: Format, figures: NoticeFigures[Kind], groups: readonly (readonly string[])[]) => string =
    sentences[kind];
  const zoneName = (id: string) => isolated(zones.find(({ zone }) => zone.id === id)?.zone.name ?? id);
  return sentence(
    formatFor(reader),
    figures,
    groups.map((ids) => ids.map(zoneName)),
  );
}

function weeksOf({ firstWeek, lastWeek, weeks = [] }: Notice, { garden }: Season, reader: Reader): string {
  if (firstWeek === undefined || lastWeek === undefined) return '';
  const { firstDay } = garden.span;
  const [first, last] = [firstDay + 7 * firstWeek, firstDay + 7 * lastWeek + 6];
  const format = formatFor(reader);
  const hasGaps = weeks.length < lastWeek - firstWeek + 1;
  return hasGaps
    ? noticesWords(reader.language).someWeeks(format, weeks.length, first, last)
    : format.days(first, last);
}
