/** A notice in the reader's language: whom it concerns, what is the matter, where and when. */

import type { Season } from '../engine/season/season.ts';
import type { Notice, NoticeFigures, NoticeKind } from '../explain/notices/notice.ts';
import { noticesWords } from './en/notices.ts';
import { type Format, formatFor } from './format/format.ts';
import { isolated } from './format/isolated.ts';
import type { Reader } from './reader.ts';

export interface NoticeText {
  /** Of the planting, else of the zone, else of the garden. */
  readonly name: string;
  /** What is the matter; goes on after the name and a colon. */
  readonly sentence: string;
  /** Zone, planting and weeks, those that there are. */
  readonly where: string;
}

/** `season`: the one that the notice is of. `gardenName`: stands where no zone is concerned. */
export function describeNotice(notice: Notice, season: Season, gardenName: string, reader: Reader): NoticeText {
  const zone = season.zones.find((each) => each.zone.id === notice.zoneId);
  const planting = zone?.plantings.find((each) => each.planting.id === notice.plantingId);
  const names = [zone?.zone.name, planting?.planting.name].filter((name) => name !== undefined).map(isolated);
  const weeks = weeksOf(notice, season, reader);
  return {
    name: names.at(-1) ?? isolated(gardenName),
    sentence: sentenceOf(notice, season, reader),
    where: [...names, weeks].filter((part) => part !== '').join(', '),
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
