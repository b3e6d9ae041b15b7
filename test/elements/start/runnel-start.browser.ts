import { expect } from 'chai';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/start/define.ts';
import { START_STEPS } from '../../../src/elements/start/start-steps.ts';
import { start as say } from '../../../src/language/en/start.ts';
import { startKnown } from '../../../src/language/en/start-known.ts';
import { weather } from '../../../src/language/en/weather.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';
import { startOnPage } from './start-page.ts';

const text = (root: ParentNode, selector: string) => root.querySelector(selector)?.textContent ?? '';

describe('runnel-start', () => {
  afterEach(clearPage);

  for (const way of ['new-plan', 'template-vegetables', 'template-border', 'template-porch', 'template-club']) {
    it(`passes axe at each step of ${way}`, async function () {
      this.timeout(60_000);
      const { element, root, press, named } = await startOnPage();
      expect(await accessibilityFaults(element)).to.deep.equal([]);
      await press(way);
      for (const step of START_STEPS) {
        await until(() => text(root, '#step-title') === say[step].title, `the step ${step} is there`);
        expect(await accessibilityFaults(element), step).to.deep.equal([]);
        if (named('next') !== null) await press('next');
      }
      if (way !== 'new-plan') {
        await press('show-season');
        await until(() => text(root, '#step-title') === say.season.title, 'the season is there');
        expect(text(root, '.three')).to.match(/takes [\d,]+\sgal/);
        expect(await accessibilityFaults(element)).to.deep.equal([]);
      }
    });
  }

  it('shows all that is assumed in one list, and takes out of it what was told or found right', async () => {
    const { root, plan, press } = await startOnPage();
    await press('new-plan');
    const names = () => [...root.querySelectorAll('.assumptions li')].map((item) => text(item, '.quiet'));
    const all = Object.values(say.assumptions.names);
    await until(() => names().length > 0, 'the list is there');
    expect(names()).to.deep.equal(all.filter((name) => name !== say.assumptions.names.climate));
    root.querySelector<HTMLElement>('.assumptions li .does button:last-child')?.click();
    await until(() => plan.plan?.assumed?.includes('season') === false, 'the season is right');
    await until(() => root.querySelector('[value=clay]') !== null, 'the step is there');
    root.querySelector<HTMLInputElement>('input[type=radio][value=clay]')?.click();
    await until(() => plan.plan?.site.soil === 'clay', 'the soil is told');
    expect(plan.plan?.assumed).not.to.include('soil');
    await until(() => !names().includes(say.assumptions.names.soil), 'the list is shorter');
  });

  it('has the published table of a place nearby on top, and shows one from far away as assumed, with its distance', async () => {
    const { root, plan, named, press } = await startOnPage();
    await press('new-plan');
    await until(() => named('climate-table') !== null, 'the tables are there');
    const table = () => named('climate-table') as HTMLSelectElement;
    const says = () => text(root, '#climate-table-says').replaceAll(/\s+/g, ' ').trim();
    expect(says()).to.equal(weather.tables.placeFirst);
    const at = (place: string, latitude: number, longitude: number) =>
      plan.edit({ type: 'change-site', change: { place, latitude, longitude, timeZone: 'America/Los_Angeles' } });
    at('Davis, CA', 38.55, -121.74);
    await until(() => says() === weather.tables.nearFirst, 'some are near');
    const groups = () => [...table().querySelectorAll('optgroup')].map(({ label }) => label);
    expect(groups()).to.deep.equal([weather.tables.near, weather.tables.regions, weather.tables.far]);
    expect(table().options[1]?.label.replaceAll(/\s/g, ' ')).to.equal('Sacramento, California, 14 mi away');
    const take = (id: string) => {
      table().value = id;
      table().dispatchEvent(new Event('change', { bubbles: true }));
    };
    take('sacramento');
    await until(() => plan.plan?.site.climate.eto?.[6] === 8.4, 'the table is taken');
    expect(plan.plan?.assumed).not.to.include('climate');
    at('Seattle, WA', 47.61, -122.33);
    await until(() => groups().length === 1, 'none is near');
    expect(says()).to.match(/^None is near: Sacramento, California, the nearest, is 630 mi away\./);
    take('san-francisco');
    await until(() => plan.plan?.site.climate.eto?.[6] === 4.9, 'the other table is taken');
    expect(plan.plan?.site.climate.source.replaceAll(/\s/g, ' ')).to.match(/; of a place 680 mi away$/);
    expect(plan.plan?.assumed).to.include.members(['climate', 'soil']);
    await until(() => text(root, '.assumptions').includes(say.assumptions.climate), 'it is in the list');
  });

  it('says first, on the way on, that a town was typed and not picked, and has it still on the way back', async () => {
    const { root, named, press } = await startOnPage();
    await press('new-plan');
    await until(() => named('place') !== null, 'the step is there');
    const town = () => named('place') as HTMLInputElement;
    town().value = 'Sacramento';
    town().dispatchEvent(new Event('input', { bubbles: true }));
    await until(() => root.querySelector('.places button') !== null, 'places are found');
    town().dispatchEvent(new Event('change', { bubbles: true }));
    await press('next');
    await until(() => text(root, '.search .refused') === weather.place.unpicked('Sacramento'), 'it says what to do');
    expect(text(root, '#step-title')).to.equal(say.where.title);
    expect(root.activeElement).to.equal(town());
    await press('next');
    await until(() => text(root, '#step-title') === say.water.title, 'whoever goes on all the same is let through');
    await press('back');
    await until(() => named('place') !== null, 'the step is there again');
    expect(town().value).to.equal('Sacramento');
    root.querySelector<HTMLElement>('.places button')?.click();
    await until(() => town().value === '', 'it is picked');
    expect(root.querySelector('.search .refused')).to.equal(null);
  });

  it('has in its fold of files and months neither the place nor the tables a second time', async () => {
    const { root, press } = await startOnPage();
    await press('new-plan');
    await until(() => root.querySelector('.weather summary') !== null, 'the fold is there');
    root.querySelector<HTMLElement>('.weather summary')?.click();
    const inFold = () => root.querySelector('runnel-weather')?.shadowRoot;
    await until(() => Boolean(inFold()?.querySelector('[name=climate-kind]')), 'the months are there');
    expect(inFold()?.querySelectorAll('[name=climate-table], [name=place], [type=search], h2')).to.have.length(0);
    expect(inFold()?.textContent).to.include(weather.file.title);
  });

  it('shows beside each step what is known by then: the weather, the water, the watering days, what grows', async () => {
    const { root, plan, named, press } = await startOnPage();
    const finding = () => text(root, '.finding').replaceAll(/\s/g, ' ');
    const inStrip = (selector: string) => root.querySelectorAll(`.strip ${selector}`).length;
    await press('new-plan');
    await until(() => finding() === startKnown.none, 'nothing is known');
    expect([inStrip('.unknown'), inStrip('.rain'), inStrip('.source-guess')]).to.deep.equal([2, 0, 1]);
    const eto = [1, 1.8, 3.2, 4.7, 6.4, 7.7, 8.4, 7.2, 5.4, 3.7, 1.7, 0.9];
    plan.edit({ type: 'set-climate', climate: { source: 'A table', eto, rain: eto.map(() => 1) } });
    await until(() => /^Sun and wind take [\d.]+ in, rain brings [\d.]+ in$/.test(finding()), 'the weather is known');
    expect([inStrip('.unknown'), inStrip('.rain')]).to.deep.equal([1, 30]);
    await press('next');
    // 5 gal a minute are 300 an hour, which is what 500 emitters of 0.6 gal an hour give.
    await until(() => finding() === '5 gpm feed up to 500 emitters at once', 'the water is known');
    await press('next');
    await until(() => finding() === '3 hours a day bring up to 900 gal', 'the hours are known');
    // On three days of thirty weeks.
    expect(root.querySelector('.strip .days-run')?.getAttribute('d')?.match(/M/g)).to.have.length(90);
    expect(text(root, '.progress .done:nth-child(2) small')).to.match(/^5\sgpm$/);
    await press('next');
    const bed = { kind: 'bed', length: 12, width: 4 } as const;
    const dripline = {
      kind: 'dripline',
      flow: 0.6,
      spacing: 12,
      layout: { kind: 'rows', rows: 3, length: 12 },
    } as const;
    const need = { kind: 'class', class: 'moderate' } as const;
    const add = (id: string, lines: readonly (typeof dripline)[]) =>
      plan.edit({ type: 'add-planting', zone: 'zone-1', planting: { id, name: id, need, extent: bed, lines } });
    add('watered', [dripline]);
    add('dry', []);
    await until(() => /^2 plantings use up to \d+ gal a week$/.test(finding()), 'what they use is known');
    expect(inStrip('.unknown')).to.equal(0);
    expect([inStrip('.need'), inStrip('.lack')]).to.deep.equal([30, 30]);
    await press('next');
    await until(() => root.querySelector('.bed') !== null, 'the bed is drawn');
    // An emitter a foot, in three rows of 12 ft.
    expect(root.querySelectorAll('.bed circle')).to.have.length(36);
    expect(named('show-season')).not.to.equal(null);
  });

  it('says beside Skip what stays assumed, and nothing of what was told', async () => {
    const { root, plan, named, press } = await startOnPage();
    const skips = () => text(root, '.skip .quiet').replaceAll(/\s/g, ' ');
    await press('new-plan');
    await until(() => skips() === say.where.skip, 'no weather is known');
    await press('next');
    await until(() => skips() === 'Stays assumed: Hose bib · 5 gpm', 'the source is assumed');
    await until(() => root.querySelector('[value=main]') !== null, 'the step is there');
    root.querySelector<HTMLInputElement>('input[type=radio][value=main]')?.click();
    await until(() => skips() === 'Stays assumed: 5 gpm', 'the source is told');
    expect(plan.plan?.supply?.sources[0]?.name).to.equal(say.sources.main);
    expect(plan.plan?.assumed).not.to.include('source');
    await press('next');
    await until(() => skips() === 'Stays assumed: 1 zone · Tue, Thu, and Sat · 5:00 AM, 3 h', 'the timer is assumed');
    await press('more-zones');
    const rest = 'Stays assumed: Tue, Thu, and Sat · 5:00 AM, 3 h';
    await until(() => skips() === rest, 'the zones are told, the days of both assumed');
    expect(named('fewer-zones')?.hasAttribute('disabled')).to.equal(false);
  });

  it('shows a number of days a week as the days that the season waters on', async () => {
    const { root, plan, press } = await startOnPage();
    await press('new-plan');
    await until(() => plan.plan !== undefined, 'the plan is open');
    plan.edit({ type: 'change-zone', zone: 'zone-1', change: { wateringDays: 2 } });
    await press('next');
    await press('next');
    await until(() => root.querySelector('.days') !== null, 'the step is there');
    const days = [...root.querySelectorAll<HTMLInputElement>('.day input')].map(({ checked }) => checked);
    expect(days).to.deep.equal([false, false, false, true, false, false, true]);
    expect(plan.season?.garden.zones[0]?.wateringDays).to.equal(0b1001000);
  });

  it('tells of a plant the classes that the list has by region', async () => {
    const { root, press } = await startOnPage();
    await press('new-plan');
    for (let step = 0; step < 3; step += 1) await press('next');
    await until(() => root.querySelector('runnel-plant-search') !== null, 'the step is there');
    const search = root.querySelector('runnel-plant-search')?.shadowRoot as ShadowRoot;
    const input = search.querySelector('input') as HTMLInputElement;
    input.value = 'western redbud';
    input.dispatchEvent(new Event('input'));
    await until(() => search.querySelector('[role=option]') !== null, 'it is found');
    search.querySelector<HTMLElement>('[role=option]')?.click();
    const says = () => [...root.querySelectorAll('.wide .help')].map(({ textContent }) => textContent).join(' ');
    await until(() => says().includes('very low: North-Central Coast and Central Valley; low: '), 'it is told');
  });

  it('goes on where it was left when the plan stands on the page again', async () => {
    const { plan, element, press } = await startOnPage();
    await press('template-border');
    await until(() => plan.plan !== undefined, 'the garden is open');
    const kept = plan.plan;
    clearPage();
    const place = onPage(html`<runnel-plan locale="en" .plan=${kept}><runnel-start></runnel-start></runnel-plan>`);
    const again = await settled(place, 'runnel-start');
    expect(element.isConnected).to.equal(false);
    again.shadowRoot?.querySelector<HTMLElement>('[name=resume]')?.click();
    await quiet(again);
    await until(() => text(again.shadowRoot as ShadowRoot, '#step-title') === say.where.title, 'the steps are there');
  });

  it('takes pots by what one holds, keeps a row that is being typed while the steps are left, and a size that nobody typed anew', async () => {
    const { root, plan, element, named, press } = await startOnPage();
    await press('new-plan');
    for (let step = 0; step < 3; step += 1) await press('next');
    await until(() => named('row-size') !== null, 'the step is there');
    const field = (name: string) => named(name) as HTMLInputElement;
    const type = async (name: string, typed: string) => {
      field(name).value = typed;
      field(name).dispatchEvent(new Event('input', { bubbles: true, composed: true }));
      await quiet(element);
    };
    await type('row-name', 'Herbs');
    await type('row-size', '2 pots 5 gal');
    expect(root.textContent).to.match(/Each is taken as 13\sin across/);
    element.begin();
    await quiet(element);
    await press('resume');
    await until(() => named('row-size') !== null, 'the step is there again');
    expect([field('row-name').value, field('row-size').value]).to.deep.equal(['Herbs', '2 pots 5 gal']);
    await press('add-row');
    const planting = () => plan.plan?.zones[0]?.plantings[0];
    await until(() => planting() !== undefined, 'it is added');
    expect(planting()).to.deep.include({
      container: { volume: 5 },
      extent: { kind: 'canopy', count: 2, diameter: 13 },
    });
    root.querySelector<HTMLElement>('[aria-label="Change Herbs"]')?.click();
    await quiet(element);
    expect(field('row-size').value).to.equal('2 × 5 gal');
    await type('row-name', 'Thyme');
    await press('add-row');
    await until(() => planting()?.name === 'Thyme', 'it is changed');
    expect(planting()).to.deep.include({
      container: { volume: 5 },
      extent: { kind: 'canopy', count: 2, diameter: 13 },
    });
  });
});
