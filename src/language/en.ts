/**
 * English: the type of every other language, but for the late words of `late-words.ts`. Each area stands in a file of its own in `en/`;
 * what shows it imports that file, so that a page loads the words of what is on it.
 */
import { autosave } from './en/autosave.ts';
import { cautions } from './en/cautions.ts';
import { chart } from './en/chart.ts';
import { chartYears } from './en/chart-years.ts';
import { csv } from './en/csv.ts';
import { dates } from './en/dates.ts';
import { doubts } from './en/doubts.ts';
import { edits } from './en/edits.ts';
import { entry } from './en/entry.ts';
import { faultList } from './en/fault-list.ts';
import { faults } from './en/faults.ts';
import { fieldNames } from './en/field-names.ts';
import { fieldUnits } from './en/field-units.ts';
import { gardenPlace } from './en/garden-place.ts';
import { grid } from './en/grid.ts';
import { gridTools } from './en/grid-tools.ts';
import { howDeep } from './en/how-deep.ts';
import { names } from './en/names.ts';
import { notices } from './en/notices.ts';
import { page } from './en/page.ts';
import { planElement } from './en/plan-element.ts';
import { planner } from './en/planner.ts';
import { remedies } from './en/remedies.ts';
import { sheet } from './en/sheet.ts';
import { sheetActions } from './en/sheet-actions.ts';
import { shownYear } from './en/shown-year.ts';
import { units } from './en/units.ts';
import { versionChanges } from './en/version-changes.ts';
import { week } from './en/week.ts';

export const en = {
  autosave,
  cautions,
  chart,
  chartYears,
  csv,
  dates,
  doubts,
  edits,
  entry,
  faultList,
  faults,
  fieldNames,
  fieldUnits,
  gardenPlace,
  grid,
  howDeep,
  gridTools,
  names,
  notices,
  page,
  planElement,
  planner,
  remedies,
  shownYear,
  sheet,
  sheetActions,
  units,
  versionChanges,
  week,
};

/** What a language has to say, area by area. A missing, an extra or a wrongly parametered message does not compile. */
export type Words = typeof en;
