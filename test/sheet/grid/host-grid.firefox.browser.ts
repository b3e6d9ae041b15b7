import { sendKeys, sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import Handsontable from 'handsontable';
import { entryWords } from '../../../src/language/en/entry.ts';
import { US_ENGLISH } from '../../../src/language/language.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { Fault } from '../../../src/plan/reading/fault.ts';
import { WHOLE_PLAN } from '../../../src/plan/reading/place.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import {
  adoptSheetStyles,
  bindingOf,
  hostWeekColumns,
  type RowReference,
  registerSeason,
  SEASON_KEY,
  type SeasonSetting,
  SeasonSheet,
  seasonMenuItems,
} from '../../../src/sheet/index.ts';
import { chord } from '../../elements/shared/chord.ts';
import { until } from '../../elements/shared/on-page.ts';
import { mixedGarden } from '../../support/small-plans.ts';

interface HostRow {
  readonly zone?: string;
  readonly rain?: boolean;
  crew: string;
}

const rowOf = (row: unknown): RowReference | undefined => {
  const { zone, rain } = row as HostRow;
  if (rain) return 'rain';
  return zone === undefined ? undefined : { zone };
};

const DATA = (): HostRow[] => [
  { rain: true, crew: 'Anyone' },
  { zone: 'beds', crew: 'Saturday crew' },
  { crew: 'Compost' },
  { zone: 'containers', crew: 'School class' },
];

const plain = (text: string | null): string => (text ?? '').replaceAll('\u00a0', ' ');

const isOfBeds = (title: string): boolean => plain(title).startsWith('Beds, week of');

/** Columns of the host's before the weeks. */
const OWN = 1;
const JUNE_7 = OWN + 9;

let hot: Handsontable.Core;
let box: HTMLElement;
let sheet: SeasonSheet;
let edits: Edit[];
let plan: Plan;

/** A page's own grid, a plan that the page keeps itself, and the season between its columns. */
function hostGrid(): void {
  edits = [];
  plan = mixedGarden();
  sheet = new SeasonSheet({ plan, season: computeSeason(plan), locale: 'en-US', readOnly: false });
  box = document.createElement('div');
  document.body.append(box);
  const setting: SeasonSetting = {
    sheet,
    rowOf,
    onEdit: (edit) => {
      edits.push(edit);
      plan = applyEdit(plan, edit);
      sheet.update({ ...sheet.state, plan, season: computeSeason(plan, sheet.state.season) });
    },
  };
  hot = new Handsontable(box, {
    licenseKey: 'non-commercial-and-evaluation',
    data: DATA(),
    columns: [{ data: 'crew', width: 120 }, ...hostWeekColumns(sheet, rowOf, 70), { data: 'crew', readOnly: true }],
    rowHeights: 56,
    width: 1200,
    height: 400,
    contextMenu: { items: seasonMenuItems(() => bindingOf(hot)) },
    [SEASON_KEY]: setting,
  });
}

function td(row: number, column: number): HTMLElement {
  bindingOf(hot)?.titles.writeAll();
  return hot.getCell(row, column, true) as HTMLElement;
}

async function click(target: Element, button: 'left' | 'right' = 'left'): Promise<void> {
  const { left, top, width, height } = target.getBoundingClientRect();
  await sendMouse({ type: 'click', button, position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
}

async function enter(row: number, column: number, text: string): Promise<void> {
  await click(td(row, column));
  await sendKeys({ type: text });
  await sendKeys({ press: 'Enter' });
}

describe('a host’s own grid with a season in it', () => {
  before(async () => {
    await setViewport({ width: 1300, height: 700 });
    registerSeason(Handsontable);
    registerSeason(Handsontable);
    adoptSheetStyles(document);
  });

  beforeEach(hostGrid);

  afterEach(() => {
    if (!hot.isDestroyed) hot.destroy();
    box.remove();
  });

  it('needs no element', () => {
    for (const tag of ['runnel-grid', 'runnel-plan']) expect(customElements.get(tag)).to.equal(undefined);
    expect(document.querySelector('[class*=runnel-]')).not.to.equal(null);
  });

  it('shows the season in the rows that are about it, and nothing in the others', () => {
    expect(plain(td(1, JUNE_7).title)).to.contain('Beds, week of June 7');
    expect(plain(td(0, JUNE_7).title)).to.contain('Rain, week of June 7');
    expect(td(2, JUNE_7).textContent).to.equal('');
    expect(td(2, JUNE_7).title).to.equal('');
    expect(td(1, 0).textContent).to.equal('Saturday crew');
  });

  it('says nothing of the season in a cell that is the host’s own again', async () => {
    const columns = hot.countCols();
    const turns = [columns - 1, 0, columns - 1, JUNE_7];
    for (const column of turns) {
      hot.scrollViewportTo({ row: 0, col: column });
      const rendered = () => [hot.getFirstRenderedVisibleColumn() ?? columns, hot.getLastRenderedVisibleColumn() ?? -1];
      await until(() => {
        const [first = columns, last = -1] = rendered();
        const titled = [...hot.rootElement.querySelectorAll('td')].filter((each) => isOfBeds(each.title));
        return first <= column && column <= last && titled.length > 5;
      }, `column ${column} is in view, and the season’s cells have titles`);
      const drawn = [...hot.rootElement.querySelectorAll('td')];
      const own = drawn.filter((cell) => cell.textContent === 'Saturday crew');
      expect(own.length + Number(column === JUNE_7)).to.be.greaterThan(0);
      for (const cell of own) expect([cell.title, cell.className.includes('runnel')]).to.deep.equal(['', false]);
    }
  });

  it('is blank where a zone goes or the season ends, and filled where they come back', async () => {
    const figures = td(1, JUNE_7).textContent;
    const show = (edited: Plan) => sheet.update({ ...sheet.state, plan: edited, season: computeSeason(edited) });
    for (const edit of [
      { type: 'remove-zone', zone: 'beds' },
      { type: 'set-season', season: { firstDay: '2027-04-05', weeks: 8 } },
    ] satisfies Edit[]) {
      show(applyEdit(plan, edit));
      expect([td(1, JUNE_7).textContent, td(1, JUNE_7).title], edit.type).to.deep.equal(['', '']);
      show(plan);
      expect(td(1, JUNE_7).textContent, edit.type).to.equal(figures);
    }
  });

  it('takes another season from the grid’s settings, and leaves nothing of it when it is taken out', () => {
    const setting = hot.getSettings()[SEASON_KEY] as SeasonSetting;
    const other = applyEdit(plan, { type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 333 });
    const next = new SeasonSheet({ ...sheet.state, plan: other, season: computeSeason(other) });
    hot.updateSettings({ [SEASON_KEY]: { ...setting, sheet: next } });
    expect(plain(td(1, JUNE_7).textContent)).to.contain('333');
    hot.updateSettings({
      [SEASON_KEY]: undefined,
      columns: [{ data: 'crew' }, { data: 'crew' }],
    } as Handsontable.GridSettings);
    expect([...hot.rootElement.querySelectorAll('td')].filter(({ title }) => title !== '')).to.deep.equal([]);
  });

  it('keeps what a block means that holds an empty cell of the host’s', () => {
    hot.setSourceDataAtCell(3, 'crew', null);
    sheet.show({ measure: 'volume' });
    const ranges = [{ startRow: 3, startCol: 0, endRow: 3, endCol: 2 }];
    const clipboard = hot.getPlugin('copyPaste') as unknown as {
      getRangedData(from: typeof ranges): unknown[][];
      paste(text: string): void;
    };
    const copied = clipboard.getRangedData(ranges);
    hot.runHooks('beforeCopy', copied as never, ranges as never);
    sheet.show({ measure: 'all' });
    const minutes = [1, 2].map((column) => plain(td(3, column).lastChild?.textContent ?? '').trim());
    hot.selectCell(1, 0);
    clipboard.paste(copied.map((line) => line.map((value) => value ?? '').join('\t')).join('\n'));
    expect(minutes[0]).to.match(/^\d+$/);
    const set = edits.flatMap((edit) => (edit.type === 'together' ? edit.edits : [edit]));
    // The beds water on three days, by a timer of whole minutes.
    const settable = minutes.map((text) => 3 * Math.round(Number(text) / 3));
    expect(set.map((edit) => edit.type === 'set-minutes' && edit.minutes)).to.deep.equal(settable);
  });

  it('leaves rows to the host that are pasted below its last', async () => {
    const rows = hot.countRows();
    hot.selectCell(rows - 1, 0);
    (hot.getPlugin('copyPaste') as unknown as { paste(text: string): void }).paste('one\ntwo\nthree');
    await until(() => hot.countRows() === rows + 2, 'there are two rows more');
    expect(hot.getDataAtCol(0).slice(-3)).to.deep.equal(['one', 'two', 'three']);
  });

  it('says why where the host refuses an edit, and keeps what was typed', async () => {
    const setting = hot.getSettings()[SEASON_KEY] as SeasonSetting;
    const values = { place: WHOLE_PLAN, found: 3, reason: 'a word with the treasurer' };
    const faults: readonly Fault[] = [{ path: 'choices', code: 'refused-by-page', values }];
    hot.updateSettings({ [SEASON_KEY]: { ...setting, onEdit: () => ({ ok: false, faults }) } });
    const callout = () => document.querySelector('.runnel-callout:not([hidden])')?.textContent ?? '';
    await enter(1, JUNE_7, '3');
    await until(() => callout().includes('a word with the treasurer'), 'it is said');
    expect((document.activeElement as HTMLTextAreaElement).value).to.equal('3');
    expect(td(1, JUNE_7).title).not.to.contain('set by hand');
    await sendKeys({ press: 'Escape' });
    hot.selectCell(1, JUNE_7);
    const items = seasonMenuItems(() => bindingOf(hot));
    items['runnel-close']?.callback?.();
    await until(() => callout().includes('a word with the treasurer'), 'it is said of the menu as well');
    items['runnel-note']?.callback?.();
    const note = document.querySelector<HTMLTextAreaElement>('.runnel-note textarea');
    if (note === null) throw new Error('there is no form for the note');
    note.value = 'Mulched';
    document.querySelector<HTMLButtonElement>('.runnel-note button')?.click();
    expect(note.isConnected).to.equal(true);
    expect(callout()).to.contain('a word with the treasurer');
  });

  it('says nothing of an edit or a step that comes to nothing', () => {
    const setting = hot.getSettings()[SEASON_KEY] as SeasonSetting;
    hot.updateSettings({ [SEASON_KEY]: { ...setting, onEdit: () => undefined, onHistory: () => undefined } });
    const announced = () => document.querySelector('.runnel-announcement')?.textContent;
    bindingOf(hot)?.step('undo');
    sheet.show({ measure: 'rain' });
    bindingOf(hot)?.edit({ type: 'close-week', zone: 'beds', week: '2027-06-07', closed: true });
    sheet.show({ measure: 'all' });
    expect(announced()).to.equal('');
  });

  it('gives the season’s figures to whoever asks the grid', () => {
    expect(hot.getDataAtCell(1, JUNE_7)).to.equal(
      sheet.value({ row: sheet.rows[2] as never, column: { kind: 'week', week: 9 } }),
    );
    expect(hot.getDataAtCell(2, JUNE_7)).to.equal(null);
  });

  it('sends what is typed out as an edit, and keeps what is typed into its own cells', async () => {
    const later = td(1, JUNE_7 + 1).textContent;
    await enter(1, JUNE_7, '3');
    expect(plain(td(1, JUNE_7).title)).to.contain('3 minutes set by hand');
    expect(td(1, JUNE_7 + 1).textContent).not.to.equal(later);
    await enter(1, 0, 'Early risers');
    await enter(0, JUNE_7, '0.75');
    expect(edits).to.deep.equal([
      { type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes: 3 },
      { type: 'set-week-rain', week: '2027-06-07', rain: 0.75 },
    ]);
    expect((hot.getSourceDataAtRow(1) as HostRow).crew).to.equal('Early risers');
    expect(Object.keys(hot.getSourceDataAtRow(1) as HostRow)).to.have.members(['zone', 'crew']);
  });

  it('takes a block across its own columns and the season’s', () => {
    hot.selectCell(1, 0);
    hot.populateFromArray(1, 0, [['New crew', '', '12']], undefined, undefined, 'CopyPaste.paste');
    expect(hot.getDataAtCell(1, 0)).to.equal('New crew');
    hot.populateFromArray(1, JUNE_7, [['12', '14']], undefined, undefined, 'CopyPaste.paste');
    expect(edits.at(-1)).to.deep.include({ type: 'together', action: 'paste-cells' });
  });

  it('leaves a cell alone that belongs to no zone', async () => {
    await enter(2, JUNE_7, '5');
    expect(edits).to.deep.equal([]);
  });

  it('refuses with words and keeps the rest of the grid as it was', async () => {
    await click(td(1, JUNE_7));
    await sendKeys({ type: 'abc' });
    await sendKeys({ press: 'Enter' });
    const callout = () => document.querySelector('.runnel-callout:not([hidden])')?.textContent;
    await until(() => callout() !== undefined, 'it is refused');
    expect(callout()).to.contain(entryWords(US_ENGLISH).unread['not-a-number']('abc'));
    await sendKeys({ press: 'Escape' });
    expect(edits).to.deep.equal([]);
  });

  it('has the season’s menu where the season is', async () => {
    await click(td(1, JUNE_7), 'right');
    const items = [...document.querySelectorAll('.htContextMenu td:not(.htSeparator)')].map(
      ({ textContent }) => textContent,
    );
    expect(items).to.include.members([entryWords(US_ENGLISH).clear.minutes, 'Close for the week', 'Note…', 'Copy']);
    expect(items).not.to.include('Hide this week');
    await sendKeys({ press: 'Escape' });
    await click(td(1, 0), 'right');
    const own = [...document.querySelectorAll('.htContextMenu td:not(.htSeparator)')].map(
      ({ textContent }) => textContent,
    );
    expect(own).not.to.include('Close for the week');
  });

  it('asks why and opens the note by keys, in cells of the season alone', async () => {
    const asked: unknown[] = [];
    hot.updateSettings({
      [SEASON_KEY]: {
        ...(hot.getSettings() as Record<string, object>)[SEASON_KEY],
        onWhy: (at: unknown) => asked.push(at),
      },
    } as Handsontable.GridSettings);
    await click(td(1, 0));
    await chord('Alt', 'Enter');
    await chord('Shift', 'F2');
    expect(document.querySelector('.runnel-note')).to.equal(null);
    await sendKeys({ press: 'Escape' });
    await click(td(1, JUNE_7));
    await chord('Alt', 'Enter');
    expect(asked).to.deep.equal([{ zone: 'beds', week: 9 }]);
    await chord('Shift', 'F2');
    await sendKeys({ type: 'mulch' });
    await chord('Control', 'Enter');
    expect(edits.at(-1)).to.deep.equal({ type: 'set-note', zone: 'beds', week: '2027-06-07', note: 'mulch' });
  });

  it('works while its rows are in another order', async () => {
    hot.rowIndexMapper.setIndexesSequence([3, 2, 1, 0]);
    hot.render();
    expect(plain(td(0, JUNE_7).title)).to.contain('Containers');
    await enter(0, JUNE_7 + 1, '20');
    expect(edits).to.deep.equal([{ type: 'set-minutes', zone: 'containers', week: '2027-06-14', minutes: 20 }]);
  });

  it('leaves nothing behind', () => {
    hot.destroy();
    expect(document.querySelector('.runnel-announcement')).to.equal(null);
    expect(() => sheet.show({ measure: 'volume' })).not.to.throw();
    expect(bindingOf(hot)).to.equal(undefined);
  });
});
