/** What another language may be: checked by the compiler alone. A line marked as an error fails the check where it is none. */
import type { Format } from '../../src/language/format/format.ts';
import { en, type Words } from '../../src/language/index.ts';

// All that English says, in other words. What a message leaves out of its values is for another test.
const told = ({ day }: Format, first: number): string => day(first);
const planner = { ...en.planner, undo: 'Deshacer' };
const week = { ...en.week, before: told, closeFrom: ({ weekday }: Format, day: number) => weekday(day) };
export const whole = { ...en, planner, week } satisfies Words;

const { chart: _, ...withoutChart } = en;
// @ts-expect-error an area is missing
export const missingArea = withoutChart satisfies Words;

const { undo: __, ...withoutUndo } = en.planner;
// @ts-expect-error a message is missing
export const missingMessage = { ...en, planner: withoutUndo } satisfies Words;

// @ts-expect-error there is no such area
export const extraArea = { ...en, sky: { title: 'El cielo' } } satisfies Words;

// @ts-expect-error there is no such message
export const extraMessage = { ...en, dates: { ...en.dates, again: 'Otra vez' } } satisfies Words;

const textForFunction = { ...en.week, before: 'Empieza pronto' };
// @ts-expect-error a text stands where a message takes values
export const withText = { ...en, week: textForFunction } satisfies Words;

const functionForText = { ...en.planner, undo: () => 'Deshacer' };
// @ts-expect-error a function stands where a text is
export const withFunction = { ...en, planner: functionForText } satisfies Words;

const otherValue = { ...en.week, closeFrom: (_format: Format, day: string) => day };
// @ts-expect-error the value is a number and no text
export const withOtherValue = { ...en, week: otherValue } satisfies Words;

const moreValues = { ...en.week, closeFrom: ({ weekday }: Format, day: number, all: number) => weekday(day + all) };
// @ts-expect-error it is given no third value
export const withMoreValues = { ...en, week: moreValues } satisfies Words;

const number = { ...en.week, closeFrom: (_format: Format, day: number) => day };
// @ts-expect-error a message is a text and no number
export const withNumber = { ...en, week: number } satisfies Words;
