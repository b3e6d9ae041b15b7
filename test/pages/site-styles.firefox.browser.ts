/**
 * What a site's own styles may do to every table, cell and button of a page, and what is left of it in the sheet: on screen and on paper.
 * The sites: five class-less stylesheets from npm (water.css, sakura.css, mvp.css, Pico, Simple.css; all MIT), the resets that many sites
 * begin with, the club's hostile one, and tables that a site scrolls as blocks or stacks on narrow screens.
 */
import { expect } from 'chai';
import '../../src/elements/grid/define.ts';
import '../../src/elements/plan/define.ts';
import { clearPage, html, onPage, quiet, until } from '../elements/shared/on-page.ts';
import { mixedGarden } from '../support/small-plans.ts';

/** An address, or the rules themselves. */
const SITES: Readonly<Record<string, string>> = {
  'none of its own': '',
  'water.css': '/node_modules/water.css/out/water.css',
  'sakura.css': '/node_modules/sakura.css/css/sakura.css',
  'mvp.css': '/node_modules/mvp.css/mvp.css',
  'Pico, class-less': '/node_modules/@picocss/pico/css/pico.classless.css',
  'Simple.css': '/node_modules/simpledotcss/simple.css',
  'the club’s hostile styles': '/demo/club/hostile.css',
  'a reset of all margins and boxes': '* { margin: 0; padding: 0; border: 0; box-sizing: border-box; font: inherit; }',
  'a reset of everything': '*, ::before, ::after { all: unset; } html, body, main, div { display: block; }',
  'tables that scroll as blocks': 'table { display: block; overflow-x: auto; max-width: 100%; }',
  'cells that are stacked on narrow screens':
    '@media (max-width: 6000px) { table, thead, tbody, tr, th, td { display: block; width: 100%; } thead { display: none } }',
  'cells that are flexible': 'tr { display: flex; flex-wrap: wrap; } td, th { flex: 1 0 100%; position: relative; }',
  'tables as grids, with space between':
    'table, tbody, tr { display: grid; gap: 1rem; } td { padding: 2em; } table { border-collapse: collapse; width: 100%; margin: 2em auto; }',
};

async function styled(site: string): Promise<HTMLElement> {
  if (!site.startsWith('/')) {
    const style = document.createElement('style');
    style.textContent = site;
    document.head.append(style);
    return style;
  }
  const link = document.createElement('link');
  link.rel = 'stylesheet';
  link.href = site;
  await new Promise((resolve, reject) => {
    link.onload = resolve;
    link.onerror = () => reject(new Error(`${site} did not come`));
    document.head.append(link);
  });
  return link;
}

async function sheetOn(site: string): Promise<HTMLElement> {
  added = await styled(site);
  const place = onPage(
    html`<runnel-plan .plan=${mixedGarden()}><runnel-grid today="2027-07-14" license-key="non-commercial-and-evaluation"></runnel-grid></runnel-plan>`,
  );
  // As wide as a page may be, whatever the site makes of its own.
  place.style.cssText =
    'position: absolute; inset: 0 auto auto 0; inline-size: 1000px; max-inline-size: none; margin: 0; padding: 0';
  const grid = place.querySelector('runnel-grid');
  if (grid === null) throw new Error('there is no grid');
  await quiet(place.querySelector('runnel-plan') as Element);
  await until(() => grid.querySelector('td.runnel-cell') !== null, 'the sheet is drawn');
  return grid;
}

let added: HTMLElement | undefined;

const boxOf = (element: Element) => element.getBoundingClientRect();
const isDrawn = (element: Element) => boxOf(element).width > 0 && boxOf(element).height > 0;
const cellsOf = (row: Element) => [...row.querySelectorAll(':scope > :is(td, th)')].filter(isDrawn);
const rowsOf = (table: Element) => [...table.querySelectorAll('tr')].filter((row) => cellsOf(row).length > 0);

const DISPLAYS = { thead: 'table-header-group', tbody: 'table-row-group', tr: 'table-row', 'td, th': 'table-cell' };

function expectSame(one: number | undefined, other: number | undefined): void {
  expect(one).to.be.closeTo(other ?? Number.NaN, 1.5);
}

/** Cells of a row stand side by side, rows beneath one another, and all rows' cells in the same columns. */
function expectTable(table: Element): void {
  expect(getComputedStyle(table).display).to.equal('table');
  expect(getComputedStyle(table).overflowX).to.equal('visible');
  for (const [parts, display] of Object.entries(DISPLAYS)) {
    const drawn = [...table.querySelectorAll(parts)].filter(isDrawn);
    for (const part of drawn) expect(getComputedStyle(part).display, parts).to.equal(display);
  }
  const rows = rowsOf(table).map((row) => cellsOf(row).map(boxOf));
  for (const [at, boxes] of rows.entries()) {
    for (const box of boxes) expectSame(box.top, boxes[0]?.top);
    for (const [index, box] of boxes.slice(1).entries()) expectSame(box.left, boxes[index]?.right);
    if (at > 0) expect(boxes[0]?.top).to.be.at.least((rows[at - 1]?.[0]?.bottom ?? 0) - 1.5);
  }
  expectColumns(rows);
}

/** Rows of as many cells, which is all but those with a heading over several columns. */
function expectColumns(rows: readonly (readonly DOMRect[])[]): void {
  const last = rows.at(-1) ?? [];
  for (const boxes of rows.filter(({ length }) => length === last.length)) {
    for (const [at, box] of boxes.entries()) {
      expectSame(box.left, last[at]?.left);
      expectSame(box.right, last[at]?.right);
    }
  }
}

/** What stands in a cell lies within it. */
function expectReadable(cell: Element): void {
  const text = document.createRange();
  text.selectNodeContents(cell);
  const [inside, box] = [text.getBoundingClientRect(), boxOf(cell)];
  if (inside.width === 0) return;
  expect(inside.top, cell.textContent ?? '').to.be.at.least(box.top - 1.5);
  expect(inside.bottom, cell.textContent ?? '').to.be.at.most(box.bottom + 1.5);
  expect(inside.left, cell.textContent ?? '').to.be.at.least(box.left - 1.5);
  expect(inside.right, cell.textContent ?? '').to.be.at.most(box.right + 1.5);
}

/** Shows what is meant for paper on the screen, where both browsers can be measured. */
function onPaper(): void {
  const copies = [...document.styleSheets, ...document.adoptedStyleSheets].map((sheet) => {
    const copy = new CSSStyleSheet();
    copy.replaceSync([...sheet.cssRules].map(({ cssText }) => cssText).join('\n'));
    for (const rule of copy.cssRules) {
      if (!(rule instanceof CSSMediaRule)) continue;
      const { media } = rule;
      if (/\bprint\b/.test(media.mediaText)) media.mediaText = 'all';
      else if (/\bscreen\b/.test(media.mediaText)) media.mediaText = 'not all';
    }
    return copy;
  });
  for (const { ownerNode } of [...document.styleSheets]) (ownerNode as Element).remove();
  document.adoptedStyleSheets = copies;
}

describe('the sheet in a site whose styles are its own', () => {
  let adopted: CSSStyleSheet[] = [];
  let ownStyles: Element[] = [];

  afterEach(() => {
    clearPage();
    added?.remove();
    if (adopted.length > 0) document.adoptedStyleSheets = adopted;
    document.head.append(...ownStyles);
  });

  for (const [name, site] of Object.entries(SITES)) {
    it(`has all its cells where they belong, on screen: ${name}`, async () => {
      const grid = await sheetOn(site);
      const tables = [...grid.querySelectorAll('.handsontable table.htCore')].filter(isDrawn);
      expect(tables.length).to.be.greaterThan(1);
      for (const table of tables) expectTable(table);
      const cells = [...grid.querySelectorAll('.ht_master td.runnel-cell')].filter(isDrawn);
      expect(cells.length).to.be.greaterThan(12);
      for (const cell of cells) expectReadable(cell);
      // The frozen names stand beside their figures.
      const names = [...grid.querySelectorAll('.ht_clone_inline_start tbody tr')].map(boxOf);
      const rows = [...grid.querySelectorAll('.ht_master tbody tr')].map(boxOf);
      expect(names.length).to.be.greaterThan(2);
      for (const [at, box] of names.entries()) {
        expect(box.top).to.be.closeTo(rows[at]?.top ?? 0, 1.5);
        expect(box.height).to.be.closeTo(rows[at]?.height ?? 0, 1.5);
      }
      const heads = [...grid.querySelectorAll('.ht_clone_top thead th')].filter(isDrawn);
      expect(heads.length).to.be.greaterThan(3);
    });

    it(`has all its cells where they belong, on paper: ${name}`, async () => {
      const grid = await sheetOn(site);
      dispatchEvent(new Event('beforeprint'));
      await until(() => grid.querySelector('.runnel-grid__print') !== null, 'the tables for paper are there');
      adopted = [...document.adoptedStyleSheets];
      ownStyles = [...document.styleSheets]
        .map(({ ownerNode }) => ownerNode as Element)
        .filter((node) => node !== added);
      onPaper();
      const paper = grid.querySelector('.runnel-grid__print');
      if (paper === null) throw new Error('there is nothing for paper');
      const tables = [...paper.querySelectorAll('table')];
      expect(tables.length).to.equal(3);
      for (const table of tables) {
        expectTable(table);
        const rows = rowsOf(table);
        // ETo, rain, two zones, the whole garden, and their headings.
        expect(rows.length).to.equal(6);
        const widest = Math.max(...rows.map((row) => cellsOf(row).length));
        for (const row of rows) expect(cellsOf(row).length).to.equal(widest);
        for (const cell of table.querySelectorAll('td')) expectReadable(cell);
        expect(Number.parseFloat(getComputedStyle(table.querySelector('td') as Element).fontSize)).to.be.within(8, 14);
      }
      expect(getComputedStyle(grid.querySelector('.runnel-grid__tools') as Element).display).to.equal('none');
      dispatchEvent(new Event('afterprint'));
    });
  }
});
