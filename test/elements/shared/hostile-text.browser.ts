import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/files/define.ts';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/mix/define.ts';
import '../../../src/elements/notices/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/planner/define.ts';
import '../../../src/elements/trace/define.ts';
import '../../../src/elements/weather/define.ts';
import '../../../src/elements/week/define.ts';
import { seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { isolated } from '../../../src/language/format/isolated.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { ATTACK_TAG, FORMULA_STARTS, hostileGarden } from '../../support/hostile-plan.ts';
import {
  ACTIONS,
  afterwards,
  callout,
  cell,
  click,
  gridPage,
  LICENSE_KEY,
  menuItem,
  nameCell,
  press,
  type,
} from '../grid/grid-page.ts';
import { clearPage, html, onPage, quiet, until } from './on-page.ts';

const TITLE = 'Tests of a page that nobody writes into';

const plan = hostileGarden();
const [zone] = plan.zones;
if (zone === undefined) throw new Error('the garden has zones');

/** All elements, in shadow roots too. */
function everything(root: ParentNode = document): readonly Element[] {
  const below = root instanceof Element && root.shadowRoot ? everything(root.shadowRoot) : [];
  return [...below, ...root.querySelectorAll('*')].flatMap((element) => [
    element,
    ...(element.shadowRoot ? everything(element.shadowRoot) : []),
  ]);
}

/** What no text of the plan may have become. */
const attacks = () =>
  everything().filter(
    (each) => each.localName === ATTACK_TAG || each.localName === 'img' || each.hasAttribute('onerror'),
  );

/** Waits for something to come from the network that is no image: an attack's image that was asked for before has failed by then. */
const failedImage = () =>
  new Promise((resolve) => {
    const image = new Image();
    image.addEventListener('error', resolve);
    image.src = '/package.json';
  });

/** What a reader is given of an element: its text, and what stands in its fields. */
const shownIn = (place: Element) =>
  everything(place)
    .flatMap((each) => [
      ...[...each.childNodes]
        .filter(({ nodeType }) => nodeType === Node.TEXT_NODE)
        .map(({ nodeValue }) => nodeValue ?? ''),
      ...('value' in each && typeof each.value === 'string' ? [each.value] : []),
    ])
    .join('\n')
    .replaceAll('\u2060', '');

/** A field of one line shows no tabs and breaks, and no reader minds. */
const loose = (text: string) => text.replaceAll(/\s+/g, ' ');

async function opened(tag: string): Promise<Element> {
  const view = document.createElement(tag);
  view.setAttribute('license-key', LICENSE_KEY);
  if (tag === 'runnel-chart') view.setAttribute('scope', 'zone');
  const place = onPage(html`<runnel-plan .plan=${plan}>${view}</runnel-plan>`);
  const around = place.querySelector('runnel-plan');
  if (around === null) throw new Error('there is no plan');
  around.select({ zone: zone?.id, planting: 'tomatoes', week: 14 });
  await quiet(around);
  for (const folded of everything(view)) if (folded instanceof HTMLDetailsElement) folded.open = true;
  await quiet(around);
  return view;
}

/** Which name of the plan an element is sure to show. */
const SHOWN: Readonly<Record<string, string>> = {
  'runnel-chart': zone.name,
  'runnel-garden': zone.name,
  'runnel-grid': zone.name,
  'runnel-mix': zone.plantings[0]?.name ?? '',
  'runnel-notices': zone.name,
  'runnel-planner': plan.name,
  'runnel-trace': zone.name,
  'runnel-weather': plan.site.climate.source ?? '',
  'runnel-week': zone.name,
};

describe('a text of the plan that looks like a formula or like markup', () => {
  before(async () => {
    document.title = TITLE;
    await setViewport({ width: 1400, height: 800 });
  });
  afterEach(() => {
    clearPage();
    expect(document.title).to.equal(TITLE);
  });

  for (const [tag, name] of Object.entries(SHOWN)) {
    it(`is only shown in ${tag}`, async () => {
      const view = await opened(tag);
      await until(() => loose(shownIn(view)).includes(loose(name)), `${tag} shows the name as it is`);
      await failedImage();
      expect(attacks()).to.deep.equal([]);
    });
  }

  it('is only shown in the table of the chart and by its names', async () => {
    const view = await opened('runnel-chart');
    const table = view.shadowRoot?.querySelector('table');
    expect(table?.rows.length).to.equal(31);
    const spoken = everything(view).flatMap((each) => [
      each.getAttribute('aria-label'),
      each.getAttribute('aria-valuetext'),
    ]);
    expect(spoken.join(' ')).to.contain('Irrigation');
    expect(attacks()).to.deep.equal([]);
  });

  it('is only shown by the sheet’s callouts, menu and note', async () => {
    const page = await gridPage(plan);
    await click(nameCell(page.grid, zone.name));
    await press('Enter');
    await afterwards(page);
    const tomatoes = zone.plantings[0]?.name ?? '';
    await click(cell(page.grid, 'beds/tomatoes', '2027-06-07'));
    await type('5');
    expect(callout()).to.contain(`${isolated(tomatoes)} has no shut-off`);
    await click(cell(page.grid, 'beds', '2027-07-05'), 'right');
    await click(menuItem(ACTIONS.menu.note));
    const box = document.querySelector('.runnel-note');
    expect(box?.getAttribute('aria-label')).to.contain(isolated(zone.name));
    expect(box?.querySelector('textarea')?.value).to.equal(plan.choices?.['beds']?.['2027-07-05']?.note);
    expect(cell(page.grid, 'beds', '2027-07-12').title).to.contain(
      plan.choices?.['beds']?.['2027-07-12']?.note ?? 'a note',
    );
    expect(attacks()).to.deep.equal([]);
    await press('Escape');
  });

  it('is only text on the clipboard, and in a sheet that is given out', async () => {
    const page = await gridPage(plan);
    const copied = { plain: '', markup: '' };
    // After the sheet has put its block there.
    const onCopy = ({ clipboardData }: ClipboardEvent) => {
      copied.plain = clipboardData?.getData('text/plain') ?? '';
      copied.markup = clipboardData?.getData('text/html') ?? '';
    };
    window.addEventListener('copy', onCopy);
    await click(nameCell(page.grid, zone.name));
    await press(...FORMULA_STARTS.map(() => 'Shift+ArrowDown'));
    await press('Control+c');
    window.removeEventListener('copy', onCopy);
    const table = new DOMParser().parseFromString(copied.markup, 'text/html');
    expect(table.querySelectorAll(`${ATTACK_TAG}, img, script`).length).to.equal(0);
    const cells = [...table.querySelectorAll('td')].map(({ textContent }) => textContent);
    expect(cells.pop()).to.equal('"Sun" beds');
    expect(cells.length).to.equal(FORMULA_STARTS.length);
    for (const text of cells) expect(text.startsWith("'"), text).to.equal(true);
    expect(copied.plain.match(/1\+1/g)?.length).to.equal(FORMULA_STARTS.length);
    expect(copied.plain.match(/' ?[=+\-@]1\+1/g)?.length).to.equal(FORMULA_STARTS.length);
    // What a name with a quote is in a field that takes the text.
    const field = document.body.appendChild(document.createElement('textarea'));
    field.focus();
    await press('Control+v');
    await until(() => field.value !== '', 'the block is pasted');
    field.remove();
    expect(field.value.split('\n').at(-1)).to.equal('"""Sun"" beds"');
    const csv = seasonToCsv(computeSeason(plan), { units: 'us', measures: ['minutes'], withPlantings: true });
    expect(csv.match(/1\+1/g)?.length).to.be.greaterThan(2 * FORMULA_STARTS.length);
    expect(csv.match(/' ?[=+\-@]1\+1/g)?.length).to.equal(csv.match(/1\+1/g)?.length);
  });
});
