/** Why a typed number, unit or amount cannot be read, in whole sentences. */
import { area } from '../area.ts';

export const entry = {
  unread: {
    'not-a-number': (typed: string) => `“${typed}” is not a number.`,
    /** `mark`: comma or point. */
    'decimal-mark': (typed: string, mark: string) =>
      `“${typed}” is not a number here: use “${mark}” as the decimal mark.`,
    ambiguous: (typed: string, whole: string, decimal: string) =>
      `“${typed}” could be ${whole} or ${decimal}: write it one of these two ways.`,
    'no-unit': (unit: string) => `“${unit}” is not a unit this cell takes.`,
    'minutes-beyond-59': 'Minutes after hours go from 0 to 59.',
  },
};

export const entryWords = area('entry', entry);
