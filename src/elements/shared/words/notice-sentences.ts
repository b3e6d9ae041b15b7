/** One sentence for each kind of notice. It goes on after the name of the planting or zone and a colon: any name fits. */
import type { NoticeKind } from '../../../explain/notices/notice.ts';
import type { NoticeFigures } from '../../../language/format/notice-figures.ts';

type Sentence = (figures: NoticeFigures) => string;

export const NOTICE_SENTENCES: Readonly<Record<NoticeKind, Sentence>> = {
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
    `set by hand to ${minutes('minutes')} in all; the calculation would give ${minutes('computedMinutes')}.`,
  'too-long': ({ minutes }) =>
    `${minutes('minutesPerDay')} a watering day, longer than the ${minutes('windowMinutes')} in which water may run.`,
  'refill-weekly': ({ depth }) =>
    `meant to be watered deep and seldom, yet due every week. A week uses ${depth('weeklyDemandMm')}; the soil holds ${depth('readilyAvailableMm')} at hand.`,
  'crop-early': ({ days }) =>
    `${days('daysEarly')} in the ground before the day it is planted on, for which no water is reckoned.`,
  'crop-past': ({ days }) =>
    `${days('daysPast')} in the ground beyond its last growth stage, for which no water is reckoned.`,
  'out-of-season': () => 'in the ground on no day of this season, so never watered.',
  'line-too-long': ({ length, pressure }) =>
    `a line of ${length('runLengthM')} is longer than the ${length('longestRunM')} that its pressure carries: ${pressure('inletPressureKpa')} at its start, ${pressure('leastPressureKpa')} at its weakest emitter.`,
  'pressure-low': ({ pressure }) =>
    `${pressure('inletPressureKpa')} at the start of its line does not do even for the first emitter.`,
  'flow-too-great': ({ flow }) =>
    `asks for ${flow('flowLpm')}, more than the ${flow('sourceLpm')} that the source gives.`,
  'flow-together': ({ flow, days, groups }) =>
    `on ${days('days')} the zones that water ask for up to ${flow('flowLpm')} together, and the source gives ${flow('sourceLpm')}. These can run at once: ${groups()}.`,
  'window-too-short': ({ minutes, days, isAbove0 }) =>
    isAbove0('windowMinutes')
      ? `on ${days('days')} watering takes up to ${minutes('minutesNeeded')}, with its pauses, and water may run ${minutes('windowMinutes')}.`
      : `on ${days('days')} there is watering though no water may run.`,
  'allowance-exceeded': ({ volume, isAbove0 }) =>
    isAbove0('weekAllowanceLitres')
      ? `up to ${volume('usedLitres')} a week, and the allowance is ${volume('weekAllowanceLitres')}: ${volume('overLitres')} too much in all.`
      : `${volume('usedLitres')} over the season, and the allowance is ${volume('seasonAllowanceLitres')}: ${volume('overLitres')} too much.`,
  'tank-dry': ({ volume, isAbove0 }) =>
    `the tank of ${volume('capacityLitres')} runs dry; ${volume('mainsLitres')} must come from elsewhere. ${
      isAbove0('sizeLitres')
        ? `One of ${volume('sizeLitres')} would last.`
        : `With a tank of any size ${volume('missingLitres')} would be missing.`
    }`,
  'emitters-far-apart': ({ spacing }) =>
    `emitters every ${spacing('spacingM')}; in this soil what they wet joins up to ${spacing('widestSpacingM')}.`,
  'line-downhill': () => 'a line lies on the downhill side of the plants, and water runs away from their roots.',
  'no-climate': ({ days, isAbove0 }) =>
    isAbove0('otherDays')
      ? `reference ET is 0 on ${days('days')}, as if plants used nothing. Right while the ground is frozen; else a month is missing.`
      : 'its climate is not filled in yet, so nobody can say what plants use. No minutes here does not mean that they need no water.',
};
