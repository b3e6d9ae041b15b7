/** What of the steps to a plan comes back when its tab was closed. */
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import { start as say } from '../../../src/language/en/start.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const KEY = 'non-commercial-and-evaluation';

async function opened() {
  const place = onPage(
    html`<runnel-planner license-key=${KEY} locale="en" storage-key="steps" today="2027-03-10" full-page></runnel-planner>`,
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
    expect(again.named<HTMLInputElement>('row-name')?.value).to.equal('Hedge');
    expect(again.named<HTMLInputElement>('row-size')?.value).to.equal('5 plants');
    expect(again.search()?.querySelector('input')?.value).to.equal('lavender');
    expect(again.start.shadowRoot?.querySelectorAll('.wide .help')[1]?.textContent).to.equal(says);
    await again.press('add-row');
    const plan = () => again.planner.querySelector('runnel-plan')?.plan;
    await until(() => plan()?.zones[0]?.plantings[0]?.name === 'Hedge', 'it is added');
    again.start.tellStep();
    expect(localStorage.getItem('runnel-step:steps')).not.to.include('Hedge');
    await again.press('leave');
    expect(localStorage.getItem('runnel-step:steps')).to.equal(null);
  });
});
