/** What of the steps to a plan comes back when its tab was closed. */
import { expect } from 'chai';
import { OpenTabs } from '../../../src/autosave/drafts/open-tabs.ts';
import '../../../src/elements/planner/define.ts';
import { start as say } from '../../../src/language/en/start.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const KEY = 'non-commercial-and-evaluation';

/** `key`: what one test has stored may be mirrored, and come back in another. */
async function opened(key = 'steps') {
  const place = onPage(
    html`<runnel-planner license-key=${KEY} locale="en" storage-key=${key} today="2027-03-10" full-page></runnel-planner>`,
  );
  const planner = await settled(place, 'runnel-planner');
  await until(() => planner.querySelector('runnel-start') !== null, 'the steps are there');
  const start = await settled(planner, 'runnel-start');
  const named = <Found extends HTMLElement>(name: string) =>
    start.shadowRoot?.querySelector<Found>(`[name="${name}"]`) ?? null;
  const press = async (name: string) => {
    await until(() => named(name) !== null, `there is ${name}`);
    named(name)?.click();
    await quiet(start);
  };
  const search = () => start.shadowRoot?.querySelector('runnel-plant-search')?.shadowRoot;
  return { planner, start, named, press, search };
}

function type(field: HTMLInputElement | null | undefined, typed: string): void {
  if (!field) throw new Error('there is no field');
  field.value = typed;
  field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
}

const keptKeys = () => Object.keys(localStorage).filter((key) => key.startsWith('runnel-step:'));
const keptTexts = () => keptKeys().map((key) => localStorage.getItem(key));

describe('the steps to a plan, in a tab that is closed', () => {
  const before = history.state;

  afterEach(() => {
    clearPage();
    history.replaceState(before, '');
    localStorage.clear();
  });

  it('are gone on with at the same step, with all that was typed in a row', async () => {
    const { planner, start, named, press, search } = await opened();
    await press('new-plan');
    for (let step = 0; step < 3; step += 1) await press('next');
    await until(() => named('row-name') !== null && search()?.querySelector('input') !== null, 'the row is there');
    expect(start.shadowRoot?.querySelector('.without-weather')?.textContent).to.include(say.season.noWeather);
    type(named<HTMLInputElement>('row-name'), 'Hedge');
    type(named<HTMLInputElement>('row-size'), '5 plants');
    type(search()?.querySelector('input'), 'lavender');
    await until(() => search()?.querySelector('[role=option]') !== null, 'the plant is found');
    search()?.querySelector<HTMLElement>('[role=option]')?.click();
    await quiet(planner);
    const says = start.shadowRoot?.querySelectorAll('.wide .help')[1]?.textContent;
    expect(says).to.include(say.plants.spreadListed);
    dispatchEvent(new PageTransitionEvent('pagehide'));
    await until(() => localStorage.getItem('runnel:steps') !== null, 'the plan is stored');
    clearPage();
    history.replaceState(before, '');

    const again = await opened();
    await until(() => again.named('row-name') !== null, 'the step is there again');
    expect(again.start.step).to.equal('plants');
    await until(() => again.named<HTMLInputElement>('row-name')?.value === 'Hedge', 'the row is there again');
    expect(again.named<HTMLInputElement>('row-size')?.value).to.equal('5 plants');
    expect(again.search()?.querySelector('input')?.value).to.equal('lavender');
    expect(again.start.shadowRoot?.querySelectorAll('.wide .help')[1]?.textContent).to.equal(says);
    await again.press('add-row');
    const plan = () => again.planner.querySelector('runnel-plan')?.plan;
    await until(() => plan()?.zones[0]?.plantings[0]?.name === 'Hedge', 'it is added');
    again.start.tellStep();
    const kept = () => keptTexts();
    expect(kept()).to.have.length(1);
    expect(kept()[0]).not.to.include('Hedge');
    await again.press('leave');
    expect(kept()).to.deep.equal([]);
  });

  it('leave a row to the tab that is typing it, for as long as that is open', async () => {
    const first = await opened('shared');
    await first.press('template-porch');
    const { name } = say.templates.porch;
    await until(() => localStorage.getItem('runnel:shared')?.includes(name) === true, 'the plan is stored');
    clearPage();
    history.replaceState(before, '');
    for (const key of keptKeys()) localStorage.removeItem(key);
    const row = { name: 'Fern', plant: '', size: '3 pots 10 in', from: '', mix: 'peat', isUnderRoof: true };
    const kept = (tab: string, at: number, change: object = {}) =>
      localStorage.setItem(
        `runnel-step:${tab}:shared`,
        JSON.stringify({ step: 'plants', plan: name, row, tab, at, ...change }),
      );
    kept('open', 2);
    const other = new OpenTabs('step:shared', 'open');
    other.connect();
    const second = await opened('shared');
    await until(() => second.named('row-name') !== null, 'the step is there');
    await new Promise((resolve) => setTimeout(resolve, 400));
    expect(second.named<HTMLInputElement>('row-name')?.value).to.equal('');
    expect(keptKeys()).to.include('runnel-step:open:shared');
    other.disconnect();
    clearPage();
    history.replaceState(before, '');

    const third = await opened('shared');
    await until(() => third.named<HTMLInputElement>('row-name')?.value === 'Fern', 'the row is there');
    expect(third.named<HTMLInputElement>('row-size')?.value).to.equal('3 pots 10 in');
    expect(third.named<HTMLSelectElement>('row-mix')?.value).to.equal('peat');
    expect(keptKeys()).not.to.include('runnel-step:open:shared');
  });

  it('take of a stored row what is one, say that the rest was not read, and survive anything', async () => {
    const first = await opened('odd');
    await first.press('template-porch');
    const plan = say.templates.porch.name;
    await until(() => localStorage.getItem('runnel:odd')?.includes(plan) === true, 'the plan is stored');
    clearPage();
    history.replaceState(before, '');
    const row = {
      name: 'Fern',
      size: 12,
      need: { kind: 'crop', crop: 'nettle' },
      listed: { type: 'plant' },
      mix: ['peat'],
      more: 1,
    };
    localStorage.setItem('runnel-step:a:odd', JSON.stringify({ step: 'plants', plan, row, tab: 'a', at: 9e15 }));
    localStorage.setItem('runnel-step:b:odd', '{"step": ["plants"], "tab": 3}');
    localStorage.setItem('runnel-step:c:odd', 'null');
    localStorage.setItem('runnel-step:d:odd', '{');
    const again = await opened('odd');
    await until(() => again.named<HTMLInputElement>('row-name')?.value === 'Fern', 'its name is there');
    expect(again.named<HTMLInputElement>('row-size')?.value).to.equal('');
    expect(again.start.shadowRoot?.textContent).to.include(say.plants.keptInPart);
    type(again.named<HTMLInputElement>('row-size'), '2 x 3 ft');
    await again.press('add-row');
    await until(
      () => again.planner.querySelector('runnel-plan')?.plan?.zones[0]?.plantings.at(-1)?.name === 'Fern',
      'it is added',
    );
    expect(again.start.shadowRoot?.textContent).not.to.include(say.plants.keptInPart);
  });
});
