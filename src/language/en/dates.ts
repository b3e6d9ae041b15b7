/** Days and weeks within other texts. What is said here is part of how dates are written: it takes them as texts. */
import { area } from '../area.ts';

export const dates = {
  /** `day`: the week's first, as the language writes it. */
  weekOf: (day: string) => `week of ${day}`,
};

export const datesWords = area('dates', dates);
