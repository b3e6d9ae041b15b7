/** Asked before a reading is taken that may be a slip of the finger. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const doubts = {
  toCome: ({ day }: Format, first: DayNumber) => `${day(first)} is still to come.`,
  farAbove: ({ spelled, month }: Format, { mm, days, mostMm, month: of }: DoubtedRain) =>
    `${spelled(mm, 'depth')} in ${days === 1 ? 'a day' : 'a week'} is a lot: the most in the years that this plan reckons with is ${spelled(mostMm, 'depth')}, in ${month(of)}.`,
  again: (question: string) => `${question} Type it once more to save it.`,
  keep: 'Save it anyway',
  'too-much-eto-a-day': ({ spelled }: Format, mostMm: number) =>
    `No grass uses that much water in a day: type at most ${spelled(mostMm, 'depth')}.`,
};

/** Rain of so many days from the first on, and the most that so many had in that month. */
export interface DoubtedRain {
  readonly mm: number;
  readonly days: 1 | 7;
  readonly mostMm: number;
  /** 1 = January. */
  readonly month: number;
}

export const doubtsWords = area('doubts', doubts);
