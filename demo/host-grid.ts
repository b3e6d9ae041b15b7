/** A host's own grid with a season in it: the add-on alone, no element. */
import Handsontable from 'handsontable';
import { describeFault } from '../src/language/describe-fault.ts';
import { readerFor } from '../src/language/reader.ts';
import { computeSeason } from '../src/plan/compute-season.ts';
import { tryEdit } from '../src/plan/edits/apply-edit.ts';
import type { Fault } from '../src/plan/reading/fault.ts';
import { readPlan } from '../src/plan/reading/read-plan.ts';
import type { Plan } from '../src/plan/schema/plan-schema.ts';
import {
  adoptSheetStyles,
  bindingOf,
  hostWeekColumns,
  monthHeaders,
  type RowReference,
  registerSeason,
  SEASON_KEY,
  type SeasonSetting,
  SeasonSheet,
  seasonMenuItems,
  unitsHeading,
  weekHeaders,
} from '../src/sheet/index.ts';

/** A row of the host's: its own data, and which zone it is about, or which planting behind a shut-off, if any. */
interface ScheduleRow {
  readonly task: string;
  readonly zone?: string;
  readonly planting?: string;
  crew: string;
  valve: string;
  remark: string;
}

const rowOf = (row: unknown): RowReference | undefined => {
  const { task, zone, planting } = row as ScheduleRow;
  if (task === 'Rain gauge') return 'rain';
  return zone === undefined ? undefined : { zone, planting };
};

/** The demo's own day. */
const TODAY = '2027-06-16';

function scheduleOf({ zones }: Plan): ScheduleRow[] {
  const crews = ['Saturday crew', 'School class', 'Early risers'];
  return [
    { task: 'Rain gauge', crew: 'Whoever is there', valve: '', remark: 'By the shed' },
    ...zones.flatMap(({ id, name, plantings }, at) => {
      const own = { crew: crews[at % crews.length] ?? '', valve: String(at + 1), remark: '' };
      const behindShutOffs = plantings.filter(({ shutOff }) => shutOff === true);
      return [
        { task: name, zone: id, ...own },
        ...behindShutOffs.map((each) => ({
          task: `Shut-off: ${each.name}`,
          zone: id,
          planting: each.id,
          ...own,
          remark: 'Days that it is open',
        })),
      ];
    }),
    { task: 'Turn the compost', crew: 'School class', valve: '', remark: 'No water needed' },
  ];
}

function showSchedule(first: Plan): void {
  const box = document.querySelector<HTMLElement>('#schedule');
  const menu = document.querySelector<HTMLButtonElement>('#menu');
  const undo = document.querySelector<HTMLButtonElement>('#undo');
  const redo = document.querySelector<HTMLButtonElement>('#redo');
  const total = document.querySelector('#total');
  if (box === null || menu === null || undo === null || redo === null || total === null) return;
  const past: Plan[] = [];
  const undone: Plan[] = [];
  let plan = first;
  const sheet = new SeasonSheet({ plan, season: computeSeason(plan), today: TODAY, locale: 'en-US', readOnly: false });
  const stand = (next: Plan) => {
    plan = next;
    sheet.update({ ...sheet.state, plan, season: computeSeason(plan, sheet.state.season) });
    undo.disabled = past.length === 0;
    redo.disabled = undone.length === 0;
    total.textContent = sheet.describe({ row: { kind: 'total' }, column: { kind: 'season' } });
  };
  const step = (from: Plan[], to: Plan[]) => (): boolean => {
    const next = from.pop();
    if (next === undefined) return false;
    to.push(plan);
    stand(next);
    return true;
  };
  const steps = { undo: step(past, undone), redo: step(undone, past) };
  undo.addEventListener('click', steps.undo);
  redo.addEventListener('click', steps.redo);
  const hot: Handsontable.Core = new Handsontable(box, {
    licenseKey: 'non-commercial-and-evaluation',
    colorScheme: 'auto',
    data: scheduleOf(plan),
    columns: [
      { data: 'task', readOnly: true, width: 150 },
      { data: 'crew', width: 120 },
      { data: 'valve', width: 60 },
      ...hostWeekColumns(sheet, rowOf, 92),
      { data: 'remark', width: 200 },
    ],
    nestedHeaders: [
      ['Schedule', { label: unitsHeading(sheet), colspan: 2 }, ...monthHeaders(sheet), 'Notes'],
      ['Task', 'Crew', 'Valve', ...weekHeaders(sheet), 'Remark'],
    ],
    rowHeights: 56,
    height: 'auto',
    fixedColumnsStart: 1,
    autoRowSize: false,
    autoColumnSize: false,
    contextMenu: {
      items: { ...seasonMenuItems(() => bindingOf(hot)), line: { name: '---------' }, undo: {}, redo: {} },
    },
    [SEASON_KEY]: {
      sheet,
      rowOf,
      onEdit: (edit) => {
        const result = tryEdit(plan, edit);
        if (result.ok) {
          past.push(plan);
          undone.length = 0;
          stand(result.plan);
        }
        return result;
      },
      // The season's last change; where there is none, or the cell is one of the page's own, the grid's.
      onHistory: (step) => {
        const { row, col } = hot.getSelectedRangeActive()?.highlight ?? {};
        const isOfSeason = bindingOf(hot)?.cell(row ?? -1, col ?? -1) !== undefined;
        if (isOfSeason) return steps[step]();
        hot.getPlugin('undoRedo')[step]();
        return true;
      },
      onWhy: () => {
        const { row, col } = hot.getSelectedRangeActive()?.highlight ?? {};
        const cell = bindingOf(hot)?.cell(row ?? -1, col ?? -1);
        if (cell !== undefined) total.textContent = sheet.describe(cell);
      },
    } satisfies SeasonSetting,
  });
  // For a finger and the keyboard: what the right button opens.
  menu.addEventListener('click', () => {
    if (hot.getSelectedRangeActive() === undefined) hot.selectCell(1, 3);
    const { row, col } = hot.getSelectedRangeActive()?.highlight ?? {};
    const { left, bottom } = (hot.getCell(row ?? 0, col ?? 0, true) ?? box).getBoundingClientRect();
    hot.listen();
    const contextMenu = hot.getPlugin('contextMenu');
    contextMenu.open({ left, top: bottom, width: 0, height: 0 });
    contextMenu.menu?.focus();
  });
  stand(plan);
}

/** A fault in the page's own language. */
function faultText(fault: Fault): string {
  const { where, expected } = describeFault(fault, readerFor(document.documentElement.lang, 'us'));
  return `${where}: ${expected}`;
}

registerSeason(Handsontable);
adoptSheetStyles(document);
const answer = await fetch('plans/lantern-lane.runnel.json');
const read = readPlan(await answer.text());
const note = document.querySelector('.note');
if (read.ok) showSchedule(read.plan);
else if (note) note.textContent = `The plan could not be read: ${read.faults.map(faultText).join('; ')}.`;
