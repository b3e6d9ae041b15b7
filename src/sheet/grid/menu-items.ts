/** The context menu in the trade's words. No name or note of the plan stands in it: its items are markup to Handsontable. */
import type { Edit } from '../../plan/edits/edit.ts';
import { closeWeeks, logAsRun, openShutOffs, shutOffWeeks, zoneWeeks } from '../entry/cell-actions.ts';
import type { SheetCell } from '../sheet-cell.ts';
import type { Measure } from '../sheet-view.ts';
import { wateringDayCount } from '../watering-days.ts';
import { MENU_WORDS } from '../words.ts';
import { copySelection } from './clipboard-hooks.ts';
import { enterEverywhere, selectedCells } from './entry-hooks.ts';
import { editNote } from './note-box.ts';
import { placeOf, type SeasonBinding } from './season-binding.ts';

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
  const isReadOnly = () => getBinding()?.setting.sheet.state.readOnly === true;
  const none = (found: readonly unknown[]) => found.length === 0;
  const isClosed = () => zoneWeeks(cells()).every(({ row, week }) => row.zone.zone.choices.get(week)?.closed === true);
  return {
    'runnel-give-back': {
      name: MENU_WORDS.giveBack,
      hidden: () => none(cells()),
      disabled: () =>
        isReadOnly() || none(cells().filter((cell) => getBinding()?.setting.sheet.read(cell, '').kind === 'edit')),
      callback: act((binding) => enterEverywhere(binding, '', 'clear-cells')),
    },
    'runnel-close': {
      name: () => (isClosed() ? MENU_WORDS.open : MENU_WORDS.close),
      hidden: () => none(zoneWeeks(cells())),
      disabled: () => isReadOnly() || closeWeeks(cells(), !isClosed(), String) === undefined,
      callback: act((binding) => edit(binding, closeWeeks(cells(), !isClosed(), dayIn(binding)), cells())),
    },
    'runnel-run': {
      name: MENU_WORDS.logRun,
      hidden: () => none(zoneWeeks(cells())),
      disabled: () => isReadOnly() || logAsRun(cells(), String) === undefined,
      callback: act((binding) => edit(binding, logAsRun(cells(), dayIn(binding)), cells())),
    },
    'runnel-shut-off': {
      name: MENU_WORDS.shutOff,
      hidden: () => none(shutOffWeeks(cells())),
      disabled: isReadOnly,
      submenu: { items: [0, 1, 2, 3, 4, 5, 6, 7].map((days) => shutOffItem(days, cells, act)) },
    },
    'runnel-note': {
      name: MENU_WORDS.note,
      hidden: () => cells().length !== 1 || noteable(cells()) === undefined,
      disabled: isReadOnly,
      callback: act((binding) => editNote(binding)),
    },
    'runnel-why': {
      name: MENU_WORDS.why,
      hidden: () => {
        const onWhy = getBinding()?.setting.onWhy;
        return onWhy === undefined || askable(cells()) === undefined;
      },
      callback: act(({ setting }) => {
        const cell = askable(cells());
        if (cell !== undefined) setting.onWhy?.(placeOf(cell));
      }),
    },
    'runnel-line-1': { name: '---------' },
    'runnel-copy': {
      name: MENU_WORDS.copy,
      hidden: () => none(cells()),
      callback: act((binding) => copySelection(binding)),
    },
    'runnel-copy-as': {
      name: MENU_WORDS.copyAs,
      hidden: () => none(cells()),
      submenu: { items: (['volume', 'minutes', 'rain'] as const).map((measure) => copyItem(measure, act)) },
    },
    'runnel-line-2': { name: '---------' },
    'runnel-hide-weeks': {
      name: () => MENU_WORDS.hideWeeks(weeksOf(cells()).length),
      hidden: () => none(weeksOf(cells())) || isHostGrid(getBinding()),
      callback: act(({ setting: { sheet } }) => sheet.hideWeeks(weeksOf(cells()))),
    },
    'runnel-hide-zones': {
      name: () => MENU_WORDS.hideZones(zonesOf(cells()).length),
      hidden: () => none(zonesOf(cells())) || isHostGrid(getBinding()),
      callback: act(({ setting: { sheet } }) => sheet.hideZones(zonesOf(cells()))),
    },
    'runnel-show-all': {
      name: MENU_WORDS.showAll,
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

type Act = (action: (binding: SeasonBinding) => void) => () => void;

function shutOffItem(days: number, cells: () => readonly SheetCell[], act: Act): MenuItem {
  return {
    key: `runnel-shut-off:${days}`,
    name: MENU_WORDS.openOn(days),
    hidden: () => shutOffWeeks(cells()).some(({ row }) => days > wateringDayCount(row.zone.zone)),
    callback: act((binding) => edit(binding, openShutOffs(cells(), days, dayIn(binding)), cells())),
  };
}

function copyItem(measure: Exclude<Measure, 'all'>, act: Act): MenuItem {
  return {
    key: `runnel-copy-as:${measure}`,
    name: MENU_WORDS.measures[measure],
    callback: act((binding) => copySelection(binding, measure)),
  };
}
