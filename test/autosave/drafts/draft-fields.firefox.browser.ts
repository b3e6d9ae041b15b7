import { sendKeys, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/files/define.ts';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/grid/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { autosave as words } from '../../../src/language/en/autosave.ts';
import { gardenZones } from '../../../src/language/en/garden-zones.ts';
import { sizes } from '../../../src/language/en/sizes.ts';
import { cell, click, LICENSE_KEY } from '../../elements/grid/grid-page.ts';
import { accessibilityFaults } from '../../elements/shared/axe.ts';
import { clearPage, html, onPage, quiet, until } from '../../elements/shared/on-page.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearStorage } from '../clear-storage.ts';

const PREFIX = 'runnel-typed:';

/** Of the plan of one test: what a page before has not written to the disk yet comes back under its own key. */
let storageKey = '';
let plans = 0;

/** What the browser would show at the next visit if the tab were killed now: the fields in words, and their texts. */
function stored(): readonly (readonly [string, string])[] {
  return Object.keys(localStorage)
    .filter((key) => key.startsWith(PREFIX) && key.endsWith(`:${storageKey}`))
    .map((key) => JSON.parse(localStorage.getItem(key) ?? ''))
    .map(({ of, text }) => [of, text] as const);
}

async function visit(): Promise<RunnelPlan> {
  const place = onPage(html`<runnel-plan locale="en" storage-key=${storageKey} .plan=${mixedGarden()}>
    <runnel-grid license-key=${LICENSE_KEY} today="2027-07-14"></runnel-grid>
    <runnel-garden today="2027-04-01"></runnel-garden>
    <runnel-files></runnel-files>
  </runnel-plan>`);
  const plan = place.querySelector('runnel-plan') as RunnelPlan;
  await until(() => plan.autosave.status === 'saved', 'autosave has begun');
  await until(() => plan.querySelector('td.runnel-cell') !== null, 'the grid is drawn');
  await quiet(plan);
  return plan;
}

/** Fields that somebody may have left are looked at once whoever owns them has had its turn. */
const checked = () => new Promise((resolve) => setTimeout(() => setTimeout(resolve)));

function inShadow(plan: Element, name: string): ShadowRoot {
  const root = plan.querySelector(name)?.shadowRoot;
  if (!root) throw new Error(`there is no ${name}`);
  return root;
}

/** A field of the tomatoes, which are unfolded first. */
async function plantingField(plan: Element, field: string): Promise<HTMLInputElement> {
  const garden = inShadow(plan, 'runnel-garden');
  const unfold = async (words: string) => {
    const summary = [...garden.querySelectorAll('summary')].find(({ textContent }) => textContent.includes(words));
    if (summary === undefined) throw new Error(`nothing to unfold says ${words}`);
    summary.click();
    await until(() => summary.parentElement?.querySelector('.part-body') != null, `${words} is unfolded`);
    await quiet(plan);
  };
  await unfold('Beds');
  await unfold('Tomatoes');
  const input = garden.querySelector<HTMLInputElement>(`[name="planting-tomatoes-${field}"]`);
  if (input === null) throw new Error(`there is no field ${field}`);
  return input;
}

describe('what is typed and not entered', () => {
  before(() => setViewport({ width: 1400, height: 800 }));
  beforeEach(async () => {
    storageKey = `typed-${Date.now()}-${plans++}`;
    await clearStorage();
  });
  afterEach(clearPage);

  it('in a form is stored under the names of field, planting and zone until the field is left', async () => {
    const plan = await visit();
    const name = await plantingField(plan, 'name');
    name.focus();
    name.select();
    await sendKeys({ type: 'Paste tomatoes' });
    await until(() => stored()[0]?.[1] === 'Paste tomatoes', 'the text is stored');
    expect(stored()).to.deep.equal([[`${gardenZones.planting.name.label}, Tomatoes, Beds`, 'Paste tomatoes']]);
    await sendKeys({ press: 'Tab' });
    await until(() => stored().length === 0, 'nothing is unfinished any more');
    expect(plan.plan?.zones[0]?.plantings[0]?.name).to.equal('Paste tomatoes');
  });

  it('in a form goes when Enter enters it', async () => {
    const plan = await visit();
    const name = await plantingField(plan, 'name');
    name.focus();
    await sendKeys({ type: 'x' });
    await until(() => stored().length === 1, 'the text is stored');
    await sendKeys({ press: 'Enter' });
    await until(() => stored().length === 0, 'it is entered');
  });

  it('and was refused stays, for as long as it stands in the form', async () => {
    const plan = await visit();
    const size = await plantingField(plan, 'size');
    size.focus();
    size.select();
    await sendKeys({ type: 'twelve' });
    await sendKeys({ press: 'Tab' });
    await until(() => size.getAttribute('aria-invalid') === 'true', 'it is refused');
    await until(() => stored()[0]?.[1] === 'twelve', 'it is stored');
    await checked();
    expect(stored()).to.deep.equal([[`${sizes.field.label}, Tomatoes, Beds`, 'twelve']]);
    size.focus();
    size.select();
    await sendKeys({ type: '8' });
    await sendKeys({ press: 'Tab' });
    await until(() => stored().length === 0, 'it is entered');
  });

  it('in a cell is stored under the cell’s name, and goes with Escape and with Enter', async () => {
    const plan = await visit();
    const grid = plan.querySelector('runnel-grid') as Element;
    for (const [end, week, named] of [
      ['Escape', '2027-07-19', 'July 19'],
      ['Enter', '2027-07-26', 'July 26'],
    ] as const) {
      await click(cell(grid, 'beds', week));
      await sendKeys({ type: '36' });
      await until(() => stored()[0]?.[1] === '36', 'the text is stored');
      expect(stored()[0]?.[0]).to.equal(`Minutes of the week: Beds, week of ${named}`);
      await sendKeys({ press: end });
      await until(() => stored().length === 0, `${end} ends it`);
    }
    expect(plan.plan?.choices?.['beds']?.['2027-07-19']).to.equal(undefined);
    expect(plan.plan?.choices?.['beds']?.['2027-07-26']).to.deep.equal({ minutes: 36 });
  });

  it('in a note stays until the note is saved or given up, wherever the keyboard is', async () => {
    const plan = await visit();
    const grid = plan.querySelector('runnel-grid') as Element;
    for (const button of ['Cancel', 'Save note']) {
      await click(cell(grid, 'beds', '2027-07-19'), 'right');
      const item = () => [...document.querySelectorAll('td')].find(({ textContent }) => textContent === 'Note…');
      await until(() => item() !== undefined, 'the menu is open');
      await click(item() as Element);
      await until(() => document.querySelector('.runnel-note textarea') !== null, 'the note is open');
      await sendKeys({ type: 'Mulch first' });
      await until(() => stored()[0]?.[1] === 'Mulch first', 'the text is stored');
      await sendKeys({ press: 'Tab' });
      await checked();
      expect(stored(), 'while its button has the keyboard').to.have.length(1);
      const wanted = [...document.querySelectorAll('.runnel-note button')].find(({ textContent }) =>
        textContent.includes(button),
      );
      await click(wanted as Element);
      await until(() => stored().length === 0, `${button} ends it`);
    }
  });

  it('in the box for rows stays while other things are done', async () => {
    const plan = await visit();
    const files = inShadow(plan, 'runnel-files');
    const box = files.querySelector('textarea') as HTMLTextAreaElement;
    box.closest('details')?.setAttribute('open', '');
    box.focus();
    await sendKeys({ type: 'date,rain' });
    await until(() => stored()[0]?.[1] === 'date,rain', 'the text is stored');
    const name = await plantingField(plan, 'name');
    name.focus();
    await sendKeys({ type: 'x' });
    await sendKeys({ press: 'Enter' });
    await until(() => plan.plan?.zones[0]?.plantings[0]?.name !== 'Tomatoes', 'the name is another');
    await checked();
    expect(stored()).to.deep.equal([['The table, with its headings', 'date,rain']]);
  });

  it('is shown at the next visit with its field, and can be deleted', async () => {
    localStorage.setItem(`${PREFIX}gone-1:${storageKey}`, JSON.stringify({ of: 'Name, Tomatoes', text: 'Paste toma' }));
    const plan = await visit();
    await until(() => plan.autosave.drafts.length > 0, 'it is found');
    await quiet(plan);
    const strip = plan.shadowRoot?.querySelector('runnel-plan-autosave')?.shadowRoot as ShadowRoot;
    expect(strip.querySelector('.draft p')?.textContent).to.equal(words.draft('Name, Tomatoes'));
    expect(strip.querySelector('textarea')?.value).to.equal('Paste toma');
    expect(await accessibilityFaults(plan.shadowRoot?.querySelector('runnel-plan-autosave') as Element)).to.deep.equal(
      [],
    );
    const button = [...strip.querySelectorAll('button')].find(
      ({ textContent }) => textContent === words.choices['delete-draft'],
    );
    button?.click();
    await until(() => strip.querySelector('textarea') === null, 'it is gone');
    expect(stored()).to.deep.equal([]);
  });

  it('in a tab that is still there is not shown in another', async () => {
    const plan = await visit();
    const name = await plantingField(plan, 'name');
    name.focus();
    await sendKeys({ type: 'x' });
    await until(() => stored().length === 1, 'the text is stored');
    localStorage.setItem(
      `${PREFIX}gone-1:${storageKey}`,
      JSON.stringify({ of: 'Name', text: 'Of a tab that is gone' }),
    );
    const beside = document.createElement('runnel-plan');
    beside.storageKey = storageKey;
    document.querySelector('main')?.append(beside);
    await until(() => beside.autosave.drafts.length > 0, 'what is left is found');
    expect(beside.autosave.drafts.map(({ text }) => text)).to.deep.equal(['Of a tab that is gone']);
  });
});
