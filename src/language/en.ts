/**
 * English, whole: the type of every other language. Each area stands in a file of its own in `en/`; what shows it imports that file,
 * so that a page loads the words of what is on it.
 */
import { autosave } from './en/autosave.ts';
import { cautions } from './en/cautions.ts';
import { chart } from './en/chart.ts';
import { csv } from './en/csv.ts';
import { dates } from './en/dates.ts';
import { edits } from './en/edits.ts';
import { entry } from './en/entry.ts';
import { faultList } from './en/fault-list.ts';
import { faults } from './en/faults.ts';
import { fieldNames } from './en/field-names.ts';
import { fieldUnits } from './en/field-units.ts';
import { files } from './en/files.ts';
import { garden } from './en/garden.ts';
import { gardenPlace } from './en/garden-place.ts';
import { gardenZones } from './en/garden-zones.ts';
import { grid } from './en/grid.ts';
import { mix } from './en/mix.ts';
import { names } from './en/names.ts';
import { notices } from './en/notices.ts';
import { page } from './en/page.ts';
import { planElement } from './en/plan-element.ts';
import { planner } from './en/planner.ts';
import { remedies } from './en/remedies.ts';
import { sheet } from './en/sheet.ts';
import { sheetActions } from './en/sheet-actions.ts';
import { trace } from './en/trace.ts';
import { traceCheck } from './en/trace-check.ts';
import { traceLabels } from './en/trace-labels.ts';
import { traceMinutes } from './en/trace-minutes.ts';
import { traceNeed } from './en/trace-need.ts';
import { traceValues } from './en/trace-values.ts';
import { traceWeather } from './en/trace-weather.ts';
import { units } from './en/units.ts';
import { versionChanges } from './en/version-changes.ts';
import { week } from './en/week.ts';

export const en = {
  autosave,
  cautions,
  chart,
  csv,
  dates,
  edits,
  entry,
  faultList,
  faults,
  fieldNames,
  fieldUnits,
  files,
  garden,
  gardenPlace,
  gardenZones,
  grid,
  mix,
  names,
  notices,
  page,
  planElement,
  planner,
  remedies,
  sheet,
  sheetActions,
  trace,
  traceCheck,
  traceLabels,
  traceMinutes,
  traceNeed,
  traceValues,
  traceWeather,
  units,
  versionChanges,
  week,
};

/** What a language has to say, area by area. A missing, an extra or a wrongly parametered message does not compile. */
export type Words = typeof en;
