/** One sentence for each kind of notice. */
import type { NoticeKind } from '../../../engine/notices/notice.ts';
import { formatCount } from '../format/count.ts';
import { formatMinutes } from '../format/minutes.ts';
import { formatPercent } from '../format/number.ts';
import { formatQuantity, type Reading } from '../format/quantity.ts';

/** A notice's figures, written for a reader; each is asked by its name in the engine. */
export interface NoticeFigures {
  readonly volume: (name: string) => string;
  readonly depth: (name: string) => string;
  readonly minutes: (name: string) => string;
  readonly days: (name: string) => string;
  readonly percent: (name: string) => string;
  readonly isAbove0: (name: string) => boolean;
}

type Sentence = (figures: NoticeFigures) => string;

const DAY = { one: 'day', other: 'days' } as const;
const WHOLE_DAY_MINUTES = 1440;

/** Each goes on after the name of the planting or zone and a colon, so that any name fits. */
const SENTENCES: Readonly<Record<NoticeKind, Sentence>> = {
  'no-line': ({ volume }) => `no line brings the ${volume('neededLitres')} of irrigation that it needs.`,
  dry: ({ volume, days }) =>
    `dry. Short of water on ${days('shortDays')}, by ${volume('unmetLitres')} of what the plants would use.`,
  short: ({ volume, days, isAbove0 }) =>
    isAbove0('shortDays')
      ? `short of water on ${days('shortDays')}, by ${volume('unmetLitres')}.`
      : 'not brought back to its target.',
  'never-enough': ({ minutes }) =>
    `never enough. At worst it asks for ${minutes('minutesAsked')} a watering day, and its zone runs ${minutes('minutesPerDay')}.`,
  over: ({ volume, percent }) =>
    `${volume('drainedLitres')} of the ${volume('appliedLitres')} given drains below the roots, ${percent('drainedShare')}.`,
  closed: ({ volume, isAbove0 }) =>
    isAbove0('unmetLitres')
      ? `closed while plants in it go short by ${volume('unmetLitres')}.`
      : 'closed while plants in it ask for water.',
  'hand-set': ({ minutes }) =>
    `set by hand to ${minutes('minutes')} in all; the calculation would give ${minutes('calculatedMinutes')}.`,
  'too-long': ({ minutes }) =>
    `${minutes('minutesPerDay')} a watering day, longer than the ${minutes('windowMinutes')} in which water may run.`,
  'refill-weekly': ({ depth }) =>
    `meant to be watered deep and seldom, yet due every week. A week uses ${depth('weeklyDemandMm')}; the soil holds ${depth('readilyAvailableMm')} at hand.`,
  'crop-past': ({ days }) =>
    `${days('daysPast')} in the ground beyond its last growth stage, for which no water is reckoned.`,
  'out-of-season': () => 'in the ground on no day of this season, so never watered.',
  'line-too-long': () => 'a line is longer than the pressure carries.',
  'pressure-low': () => 'not even the first emitter has the pressure that it needs.',
  'flow-too-great': () => 'asks for more flow than the source gives.',
  'flow-together': () => 'zones that water on the same day ask for more flow together than the source gives.',
  'window-too-short': () => 'a watering day takes longer than the hours in which water may run.',
  'allowance-exceeded': () => 'more water is used than the allowance gives.',
  'tank-dry': () => 'the tank runs dry.',
  'emitters-far-apart': () => 'its emitters stand too far apart for the soil.',
  'line-downhill': () => 'a line lies on the downhill side of the plants, and water runs away from their roots.',
};

/** What is the matter, to go on after a name and a colon. */
export function noticeSentence(
  { kind, figures }: { readonly kind: NoticeKind; readonly figures: Readonly<Record<string, number>> },
  reading: Reading,
): string {
  const at = (figure: string) => figures[figure] ?? Number.NaN;
  return SENTENCES[kind]({
    volume: (figure) => formatQuantity(at(figure), 'volume', reading),
    depth: (figure) => formatQuantity(at(figure), 'depth', reading),
    minutes: (figure) => minutesOrHours(at(figure), reading.locale),
    days: (figure) => formatCount(at(figure), DAY, reading.locale),
    percent: (figure) => formatPercent(at(figure), reading.locale),
    isAbove0: (figure) => at(figure) > 0,
  });
}

/** A whole day's minutes are said as hours. */
function minutesOrHours(minutes: number, locale: string): string {
  if (minutes < WHOLE_DAY_MINUTES) return formatMinutes(minutes, locale);
  return formatCount(Math.round(minutes / 60), { one: 'hour', other: 'hours' }, locale);
}
