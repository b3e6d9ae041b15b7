import { expect } from 'chai';
import Papa from 'papaparse';
import '../../../src/elements/grid/define.ts';
import type { RunnelGrid } from '../../../src/elements/grid/runnel-grid.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { LICENSE_KEY } from '../grid/grid-page.ts';
import { clearPage, quiet } from '../shared/on-page.ts';
import { all, button, type FilesPage, filesPage, saved, say } from './files-page.ts';

async function withGrid(): Promise<FilesPage & { readonly grid: RunnelGrid }> {
  const page = await filesPage();
  const grid = document.createElement('runnel-grid');
  grid.licenseKey = LICENSE_KEY;
  page.plan.append(grid);
  await quiet(page.plan);
  return { ...page, grid };
}

const offers = (page: FilesPage): readonly string[] =>
  all<HTMLOptionElement>(page, '.season option').map(({ text }) => text);

async function rowsOf(page: FilesPage): Promise<readonly (readonly string[])[]> {
  const { text } = await saved(() => button(page, say.saveTable).click());
  return Papa.parse<string[]>(text, { skipEmptyLines: true }).data;
}

function choose(grid: Element, selector: string, value: string, event: string): void {
  const field = grid.querySelector<HTMLInputElement | HTMLSelectElement>(selector);
  if (field === null) throw new Error(`there is no ${selector}`);
  field.value = value;
  field.dispatchEvent(new Event(event, { bubbles: true }));
}

describe('runnel-files beside a grid', () => {
  before(async function load() {
    // On a busy machine it takes longer than a test may.
    this.timeout(60_000);
    await import('../../../src/sheet/grid/sheet-grid.ts');
  });
  afterEach(clearPage);

  it('writes what the sheet shows: its figures, order, filter and unfolded plantings', async () => {
    const page = await withGrid();
    expect(offers(page)[0]).to.equal(say.extents.shown);
    expect((await rowsOf(page)).slice(1).map(([zone, planting]) => `${zone}/${planting}`)).to.deep.equal([
      'Beds/',
      'Beds/',
      'Beds/',
      'Containers/',
      'Containers/',
      'Containers/',
    ]);
    page.grid.measure = 'minutes';
    choose(page.grid, '.runnel-grid__more label:last-of-type select', 'volume', 'change');
    const unfold = [...page.grid.querySelectorAll('button')].find(({ textContent }) => textContent === 'Unfold all');
    unfold?.click();
    await quiet(page.plan);
    const byWater = (await rowsOf(page)).slice(1);
    const totals = byWater.filter(([, planting]) => planting === '');
    expect(byWater.map(([, , measure]) => measure)).to.deep.equal(byWater.map(() => 'Minutes to run'));
    expect(byWater.length).to.equal(5);
    expect(totals.map(([zone]) => zone)).to.deep.equal(
      [...(page.plan.season?.zones ?? [])]
        .map(({ zone }) => zone.name)
        .sort((one, other) => seasonGallons(page, other) - seasonGallons(page, one)),
    );
    choose(page.grid, "input[type='search']", 'pots', 'input');
    await quiet(page.plan);
    expect((await rowsOf(page)).slice(1).map(([zone, planting]) => `${zone}/${planting}`)).to.deep.equal([
      'Containers/',
      'Containers/Pots by the door',
    ]);
  });

  it('writes everything on demand, whatever the sheet shows', async () => {
    const page = await withGrid();
    page.grid.measure = 'rain';
    await quiet(page.plan);
    const [choice] = all<HTMLSelectElement>(page, '.season select');
    if (choice === undefined) throw new Error('there is no choice');
    choice.value = 'all';
    choice.dispatchEvent(new Event('change'));
    await quiet(page.plan);
    const names = (await rowsOf(page)).map(([, , measure]) => measure);
    expect(names).to.include.members(['Rain', 'Reference ET', 'Minutes to run', 'State', 'Drained past the roots']);
  });

  it('offers no sheet once the grid is gone, and again once it is back', async () => {
    const page = await withGrid();
    page.grid.remove();
    await quiet(page.plan);
    expect(offers(page)).not.to.include(say.extents.shown);
    page.plan.append(page.grid);
    await quiet(page.plan);
    expect(offers(page)).to.include(say.extents.shown);
  });
});

function seasonGallons({ plan }: FilesPage, name: string): number {
  const zone = plan.season?.zones.find((each) => each.zone.name === name);
  if (zone === undefined) throw new Error(`there is no zone ${name}`);
  return Array.from({ length: zone.weeks }, (_, week) => zoneFigure(zone, 'litres', week)).reduce(
    (sum, litres) => sum + litres,
    0,
  );
}
