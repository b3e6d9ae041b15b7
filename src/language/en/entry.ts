/** Why a typed number, unit or amount cannot be read, and why an entry into a cell is refused: whole sentences. */

import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' };
const CYCLES = { one: 'cycle', other: 'cycles' };

const became = ({ spelledMinutes, count }: Format, { minutes, stepMinutes, days, cycles }: Rounded) =>
  `${spelledMinutes(minutes)}: the timer runs in steps of ${spelledMinutes(stepMinutes)}${cycles > 1 ? ` in each of ${count(cycles, CYCLES)}` : ''} on each of ${count(days, DAYS)}.`;

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
  /** Several sentences, one after the other. */
  sentences: (sentences: readonly string[]) => sentences.join(' '),

  /** What can be typed, behind the reason why something cannot. */
  hints: {
    minutes: ({ quantity }: Format, litres: number) =>
      `Type the minutes of this week, such as 45, 1 h 20 or ${quantity(litres, 'volume')}.`,
    /** `unit`: inches, millimeters. */
    rain: (unit: string) => `Type the rain of the whole week, in ${unit}.`,
    eto: (unit: string) => `Type the reference ET of the whole week, in ${unit}.`,
    openDays: ({ number, count }: Format, most: number) =>
      `Type on how many of the ${count(most, { one: 'watering day', other: 'watering days' })} the shut-off is open, such as ${number(most)} of ${number(most)}.`,
  },

  /** Of cells in which nothing can be entered. */
  fixed: {
    'read-only': 'This plan is open for reading only.',
    name: 'Change names where the garden is described, not in the sheet.',
    season: 'The season’s figures are added up from its weeks: change a week.',
    total: 'The whole garden’s figures are added up from its zones: change a zone.',
    'rain-counted':
      'Rain counted is computed from the rain that fell: enter the gauge in the row Rain, or show minutes.',
    'no-shut-off': (planting: string, zone: string) =>
      `${planting} has no shut-off: its line is open whenever ${zone} runs. Change the zone’s minutes.`,
  },

  refused: {
    range: ({ number }: Format, typed: string, least: number, most: number, unit: string) =>
      `“${typed}” does not fit: type a number from ${number(least)} to ${number(most, 1)}\u00a0${unit}.`,
    'bare-soil': (zone: string) =>
      `Nothing in ${zone} is in the ground in this week, so its minutes would water bare soil.`,
    closed: (zone: string) => `${zone} is closed for this week: open the week first, then set its minutes.`,
    'zone-unit': 'A zone’s week takes minutes or a volume.',
    'no-flow': (zone: string) =>
      `No line of ${zone} gives water in this week, so a volume cannot be turned into minutes.`,
    'too-much': ({ spelled }: Format, zone: string, mostLitres: number) =>
      `${zone} gives ${spelled(mostLitres, 'volume')} at most, running all week: type less.`,
    'depth-unit': (typed: string) => `“${typed}” is not a depth of water.`,
    'too-much-eto': ({ spelled }: Format, mostMm: number) =>
      `No grass uses that much water in a week: type at most ${spelled(mostMm, 'depth')}.`,
    'planting-unit': 'A planting’s figures follow from its zone; its shut-off can be set.',
    'whole-days': ({ number, count }: Format, typed: string, most: number) =>
      `“${typed}” does not fit: type a whole number from ${number(0)} to ${count(most, DAYS)}.`,
    'not-in-ground': (planting: string) =>
      `${planting} is not in the ground in this week, so its shut-off waters bare soil.`,
  },

  /** Why a week's total cannot be: its days have figures of their own. */
  ownDays: {
    all: {
      rain: ({ spelled }: Format, mm: number) =>
        `Every day of this week has its own rain, ${spelled(mm, 'depth')} in all.`,
      eto: ({ spelled }: Format, mm: number) =>
        `Every day of this week has its own reference ET, ${spelled(mm, 'depth')} in all.`,
    },
    /** `which`: the days, as a list. */
    some: {
      rain: ({ plural, spelled }: Format, which: string, days: number, mm: number) =>
        `${plural(days, {
          one: `${which} has rain of its own`,
          other: `${which} have rain of their own`,
        })}, ${spelled(mm, 'depth')} in all.`,
      eto: ({ plural, spelled }: Format, which: string, days: number, mm: number) =>
        `${plural(days, {
          one: `${which} has reference ET of its own`,
          other: `${which} have reference ET of their own`,
        })}, ${spelled(mm, 'depth')} in all.`,
    },
    atLeast: 'Type at least that.',
    fromTemperatures: 'It follows from the temperatures in the log: import others to change it.',
    /** `item`: of the cell's menu. */
    clear: (item: string) => `To clear it, choose “${item}”.`,
    clearTwice: (item: string) => `To clear it, choose “${item}” twice: once for the week’s total, once for its days.`,
  },

  /** What a typed total does to days that a weather service or a file filled in. */
  filledDays: {
    rain: ({ count }: Format, days: number) =>
      `Your total counts: the rain that was filled in on ${count(days, DAYS)} was taken out. Undo brings it back.`,
    eto: ({ count }: Format, days: number) =>
      `Your total counts: the weather that was filled in on ${count(days, DAYS)} was taken out. Undo brings it back.`,
  },

  /** What a timer's steps made of a volume, and of minutes. */
  rounded: (format: Format, wantedLitres: number, litres: number, run: Rounded) =>
    `${format.spelled(wantedLitres, 'volume')} became ${format.spelled(litres, 'volume')}, ${became(format, run)}`,
  settable: (format: Format, typed: number, run: Rounded) =>
    `${format.spelledMinutes(typed)} became ${became(format, run)}`,

  /** The menu's item that takes back what was typed, by what the cells hold. */
  clear: {
    minutes: 'Use computed minutes',
    openDays: 'Use computed days',
    weather: 'Clear what was typed',
    mixed: 'Use computed figures',
  },
};

/** Minutes of a week that an entry became, and why: steps of the timer, in equal cycles, on so many watering days. */
export interface Rounded {
  readonly minutes: number;
  readonly stepMinutes: number;
  readonly days: number;
  /** Of each day. */
  readonly cycles: number;
}

export type EntryWords = typeof entry;

export const entryWords = area('entry', entry);
