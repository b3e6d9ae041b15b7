/** What stands over a plan that is shown in the weather of one of its years. */
import { area } from '../area.ts';

export const shownYear = {
  inYear: (calendarYear: number) =>
    `This is your plan in the weather of ${calendarYear}. Nothing can be changed or saved here.`,
  madeYear:
    'This is your plan in the weather of a year made from its monthly normals. Nothing can be changed or saved here.',
  back: 'Back to the plan',
};

export const shownYearWords = area('shownYear', shownYear);
