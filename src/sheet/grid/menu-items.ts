/** The context menu in the trade's words. No name or note of the plan stands in it: its items are markup to Handsontable. */
import type { WeekMeasure } from '../../engine/week-measures.ts';
import { entryWords } from '../../language/en/entry.ts';
import { type SheetActionsWords, sheetActionsWords } from '../../language/en/sheet-actions.ts';
import type { Format } from '../../language/format/format.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { canBeLogged, closeWeeks, logAsRun, openShutOffs, shutOffWeeks, zoneWeeks } from '../entry/cell-actions.ts';
import { cellReference } from '../reference.ts';
import type { SheetCell } from '../sheet-cell.ts';
import { SINGLE_MEASURES } from '../sheet-view.ts';
import { wateringDayCount } from '../watering-days.ts';
import { copySelection } from './clipboard-hooks.ts';
import { enterEverywhere, selectedCells } from './entry-hooks.ts';
import { editNote } from './note-box.ts';
import type { SeasonBinding } from './season-binding.ts';

interface MenuItem {
  readonly key?: string;
  readonly name: string | (() => string);
  readonly hidden?: () => boolean;
  readonly disabled?: () => boolean;
  readonly callback?: () => void;
  readonly submenu?: { readonly items: MenuItem[] };
}

/** As `contextMenu: { items }` takes them; a host can put them among its own. */
export function seasonMenuItems(getBinding: () => SeasonBinding | undefined): Record<string, MenuItem> {
  const cells = (): readonly SheetCell[] => {
    const binding = getBinding();
    return binding === undefined ? [] : selectedCells(binding).map(({ cell }) => cell);
  };
  const act = (action: (binding: SeasonBinding) => void) => () => {
    const binding = getBinding();
    if (binding !== undefined) action(binding);
  };
  // Made when the menu opens: the reader's language may have come since.
  const named = (name: Name) => () => {
    const binding = getBinding();
    if (binding === undefined) return '';
    const { format, reader } = binding.setting.sheet;
    return name(sheetActionsWords(reader.language).menu, format);
  };
  const isReadOnly = () => getBinding()?.setting.sheet.state.readOnly === true;
  const none = (found: readonly unknown[]) => found.length === 0;
  const isClosed = () => zoneWeeks(cells()).every(({ row, week }) => row.zone.zone.choices.get(week)?.closed === true);
  return {
    'runnel-use-computed': {
      name: () => clearName(getBinding(), cells()),
      hidden: () => none(cells()),
      disabled: () =>
        isReadOnly() || none(cells().filter((cell) => getBinding()?.setting.sheet.read(cell, '').kind === 'edit')),
      callback: act((binding) => enterEverywhere(binding, '', 'clear-cells')),
    },
    'runnel-close': {
      name: named((menu) => (isClosed() ? menu.open : menu.close)),
      hidden: () => none(zoneWeeks(cells())),
      disabled: () => isReadOnly() || closeWeeks(cells(), !isClosed(), String) === undefined,
      callback: act((binding) => edit(binding, closeWeeks(cells(), !isClosed(), dayIn(binding)), cells())),
    },
    'runnel-run': {
      name: named((menu) => menu.logRun),
      hidden: () => none(zoneWeeks(cells())),
      disabled: () => isReadOnly() || !canBeLogged(cells()),
      callback: act((binding) => edit(binding, logAsRun(cells(), dayIn(binding)), cells())),
    },
    'runnel-shut-off': {
      name: named((menu) => menu.shutOff),
      hidden: () => none(shutOffWeeks(cells())),
      disabled: isReadOnly,
      submenu: { items: [0, 1, 2, 3, 4, 5, 6, 7].map((days) => shutOffItem(days, cells, act, named)) },
    },
    'runnel-note': {
      name: named((menu) => menu.note),
      hidden: () => cells().length !== 1 || noteable(cells()) === undefined,
      disabled: isReadOnly,
      callback: act((binding) => editNote(binding)),
    },
    'runnel-why': {
      name: named((menu) => menu.why),
      hidden: () => {
        const onWhy = getBinding()?.setting.onWhy;
        return onWhy === undefined || askable(cells()) === undefined;
      },
      callback: act(({ setting }) => {
        const cell = askable(cells());
        if (cell !== undefined) setting.onWhy?.(cellReference(cell));
      }),
    },
    'runnel-line-1': { name: '---------' },
    'runnel-copy': {
      name: named((menu) => menu.copy),
      hidden: () => none(cells()),
      callback: act((binding) => copySelection(binding)),
    },
    'runnel-copy-as': {
      name: named((menu) => menu.copyAs),
      hidden: () => none(cells()),
      submenu: { items: SINGLE_MEASURES.map((measure) => copyItem(measure, act, named)) },
    },
    'runnel-line-2': { name: '---------' },
    'runnel-hide-weeks': {
      name: named((menu, format) => menu.hideWeeks(format, weeksOf(cells()).length)),
      hidden: () => none(weeksOf(cells())) || isHostGrid(getBinding()),
      callback: act(({ setting: { sheet } }) => sheet.hideWeeks(weeksOf(cells()))),
    },
    'runnel-hide-zones': {
      name: named((menu, format) => menu.hideZones(format, zonesOf(cells()).length)),
      hidden: () => none(zonesOf(cells())) || isHostGrid(getBinding()),
      callback: act(({ setting: { sheet } }) => sheet.hideZones(zonesOf(cells()))),
    },
    'runnel-show-all': {
      name: named((menu) => menu.showAll),
      hidden: () => getBinding()?.setting.sheet.hidesSomething !== true,
      callback: act(({ setting: { sheet } }) => sheet.showAll()),
    },
  };
}

/** Asks for a change, and says beside the selected cell why where it is refused. */
function edit(binding: SeasonBinding, change: Edit | undefined, cells: readonly SheetCell[]): void {
  const why = binding.edit(change, cells);
  const at = binding.hot.getSelectedRangeActive()?.highlight;
  if (why !== undefined) binding.callout.showSoon(at?.row ?? 0, at?.col ?? 0, why);
}

const dayIn =
  ({ setting }: SeasonBinding) =>
  (week: number): string =>
    setting.sheet.weekDay(week);

const isHostGrid = (binding: SeasonBinding | undefined): boolean => binding?.setting.rowOf !== undefined;

function weeksOf(cells: readonly SheetCell[]): readonly number[] {
  return [...new Set(cells.flatMap(({ column }) => (column.kind === 'week' ? [column.week] : [])))];
}

function zonesOf(cells: readonly SheetCell[]): readonly string[] {
  return [...new Set(cells.flatMap(({ row }) => (row.kind === 'zone' ? [row.zone.zone.id] : [])))];
}

/** A cell that belongs to a zone's week. */
function noteable(cells: readonly SheetCell[]): SheetCell | undefined {
  return cells.find(({ row, column }) => (row.kind === 'zone' || row.kind === 'planting') && column.kind === 'week');
}

/** A cell of a week, whatever it is of. */
function askable(cells: readonly SheetCell[]): SheetCell | undefined {
  return cells.find(({ column }) => column.kind === 'week');
}

/** What the item that takes back says: by what the cells hold. */
function clearName(binding: SeasonBinding | undefined, cells: readonly SheetCell[]): string {
  if (binding === undefined) return '';
  const { clear } = entryWords(binding.setting.sheet.reader.language);
  const kinds = new Set(cells.map(({ row }) => (row.kind === 'eto' ? 'rain' : row.kind)));
  const [kind] = kinds;
  if (kinds.size !== 1 || kind === undefined) return clear.mixed;
  return { zone: clear.minutes, planting: clear.openDays, rain: clear.weather, total: clear.mixed }[kind];
}

type Act = (action: (binding: SeasonBinding) => void) => () => void;
type Name = (menu: SheetActionsWords['menu'], format: Format) => string;
type Named = (name: Name) => () => string;

function shutOffItem(days: number, cells: () => readonly SheetCell[], act: Act, named: Named): MenuItem {
  return {
    key: `runnel-shut-off:${days}`,
    name: named((menu, format) => menu.openOn(format, days)),
    hidden: () => shutOffWeeks(cells()).some(({ row, week }) => days > wateringDayCount(row.zone.zone, week)),
    callback: act((binding) => edit(binding, openShutOffs(cells(), days, dayIn(binding)), cells())),
  };
}

function copyItem(measure: WeekMeasure, act: Act, named: Named): MenuItem {
  return {
    key: `runnel-copy-as:${measure}`,
    name: named((menu) => menu.measures[measure]),
    callback: act((binding) => copySelection(binding, measure)),
  };
}
