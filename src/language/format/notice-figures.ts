import type { Quantity } from '../../engine/units.ts';
import type { Notice } from '../../explain/notices/notice.ts';
import type { Reader } from '../reader.ts';
import { formatCount } from './count.ts';
import { formatList } from './list.ts';
import { formatMinutes } from './minutes.ts';
import { formatPercent } from './number.ts';
import { formatQuantity } from './quantity.ts';

type Written = (figure: string) => string;

/** A notice's figures, written for a reader; each is asked by its name in the engine. */
export interface NoticeFigures {
  readonly volume: Written;
  readonly depth: Written;
  readonly length: Written;
  readonly spacing: Written;
  readonly pressure: Written;
  readonly flow: Written;
  /** A whole day and more is said in hours. */
  readonly minutes: Written;
  readonly days: Written;
  readonly percent: Written;
  /** False also for a figure that the notice does not have. */
  readonly isAbove0: (figure: string) => boolean;
  /** The zones that can run together, group by group. */
  readonly groups: () => string;
}

/** The words that figures are counted in. */
export interface FigureWords {
  readonly day: { readonly one: string; readonly other: string };
  readonly hour: { readonly one: string; readonly other: string };
}

const DAY_MINUTES = 1440;

/** `zoneName` gives the name of a zone by its id. */
export function noticeFigures(
  { figures, groups = [] }: Pick<Notice, 'figures' | 'groups'>,
  words: FigureWords,
  reading: Reader,
  zoneName: (id: string) => string,
): NoticeFigures {
  const { locale } = reading;
  const values: Readonly<Record<string, number | undefined>> = figures;
  const at = (figure: string) => values[figure] ?? Number.NaN;
  const written =
    (quantity: Quantity): Written =>
    (figure) =>
      formatQuantity(at(figure), quantity, reading);
  return {
    volume: written('volume'),
    depth: written('depth'),
    length: written('length'),
    spacing: written('spacing'),
    pressure: written('pressure'),
    flow: written('supplyFlow'),
    minutes: (figure) =>
      at(figure) < DAY_MINUTES
        ? formatMinutes(at(figure), reading)
        : formatCount(Math.round(at(figure) / 60), words.hour, locale),
    days: (figure) => formatCount(at(figure), words.day, locale),
    percent: (figure) => formatPercent(at(figure), locale),
    isAbove0: (figure) => at(figure) > 0,
    groups: () => groups.map((ids) => formatList(ids.map(zoneName), locale)).join('; '),
  };
}
