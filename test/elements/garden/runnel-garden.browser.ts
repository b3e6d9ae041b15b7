import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelGarden } from '../../../src/elements/garden/runnel-garden.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { fieldUnits } from '../../../src/language/en/field-units.ts';
import { garden as say } from '../../../src/language/en/garden.ts';
import { gardenPlace } from '../../../src/language/en/garden-place.ts';
import { gardenZones } from '../../../src/language/en/garden-zones.ts';
import { sizes } from '../../../src/language/en/sizes.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { mixedGarden, tomatoes } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

interface Page {
  readonly garden: RunnelGarden;
  readonly plan: RunnelPlan;
}

async function shown(plan?: ReturnType<typeof mixedGarden>): Promise<Page> {
  const place = onPage(
    html`<runnel-plan locale="en" .plan=${plan}><runnel-garden today="2027-04-01"></runnel-garden></runnel-plan>`,
  );
  return { garden: await settled(place, 'runnel-garden'), plan: await settled(place, 'runnel-plan') };
}

/** In the garden, and in the weather that stands in its climate's section. */
const all = <E extends Element>({ garden }: Page, selector: string): E[] =>
  [garden.shadowRoot, weatherRoot(garden)].flatMap((root) => [...(root?.querySelectorAll<E>(selector) ?? [])]);

const weatherRoot = (garden: Element) => garden.shadowRoot?.querySelector('runnel-weather')?.shadowRoot;

function named<E extends HTMLElement>(page: Page, selector: string, words: string): E {
  const found = all<E>(page, selector).find((each) => (each.textContent ?? '').includes(words));
  if (found === undefined) throw new Error(`there is no ${selector} "${words}"`);
  return found;
}

/** The field or button of that name. */
function control(page: Page, name: string): HTMLInputElement {
  const [found] = all<HTMLInputElement>(page, `[name="${name}"]`);
  if (found === undefined) throw new Error(`there is no field "${name}"`);
  return found;
}

/** The only reason of a refusal that is shown, or undefined where none is. */
function refusedText(page: Page): string | undefined {
  const [shown, ...more] = all<HTMLElement>(page, '.refused').filter((each) => !each.hidden);
  expect(more).to.have.length(0);
  return shown?.textContent ?? undefined;
}

/** Unfolds sections, zones and plantings, each by the name in its summary. */
async function open(page: Page, ...names: readonly string[]): Promise<void> {
  for (const name of names) {
    const summary = named<HTMLElement>(page, 'summary', name);
    const details = summary.parentElement as HTMLDetailsElement;
    if (!details.open) summary.click();
    await until(() => details.querySelector('.part-body') !== null, `${name} is unfolded`);
    await quiet(page.garden);
  }
}

async function type(page: Page, name: string, text: string): Promise<void> {
  const input = control(page, name);
  input.value = text;
  input.dispatchEvent(new Event('change', { bubbles: true }));
  await quiet(page.garden);
}

/** Moves the focus with the Tab key until the element has it. */
async function tabTo({ garden }: Page, element: HTMLElement): Promise<void> {
  for (let step = 0; step < 120; step++) {
    if ([garden.shadowRoot, weatherRoot(garden)].some((root) => root?.activeElement === element)) return;
    await sendKeys({ press: 'Tab' });
  }
  throw new Error(`Tab never reaches ${element.outerHTML.slice(0, 80)}`);
}

describe('runnel-garden', () => {
  afterEach(clearPage);

  it('leads from nothing to a zone of two plantings with minutes, by the keyboard alone', async function () {
    this.timeout(60_000);
    const page = await shown();
    const press = async (name: string) => {
      await tabTo(page, control(page, name));
      await sendKeys({ press: 'Enter' });
      await quiet(page.garden);
    };
    await press('start-us');
    await until(() => page.plan.plan !== undefined, 'there is a plan');
    await quiet(page.garden);
    expect(page.plan.plan?.season.firstDay).to.equal('2027-04-05');

    const climate = () => weatherRoot(page.garden)?.textContent;
    await until(() => climate()?.includes(gardenPlace.climate.noClimate) === true, 'the weather is there');
    expect(climate()).to.contain(gardenPlace.climate.noClimate);
    await until(() => all(page, '[name="climate-table"]').length === 1, 'the tables are there');
    await tabTo(page, control(page, 'climate-table'));
    await sendKeys({ type: 'Fresno' });
    await sendKeys({ press: 'Tab' });
    await until(() => page.plan.plan?.site.climate.eto?.[6] === 8.4, 'the climate of Fresno is taken');

    expect(climate()).not.to.contain(gardenPlace.climate.noClimate);
    expect(climate()).to.contain(gardenPlace.climate.noRain);
    await press('add-zone');
    await until(() => all(page, '[name="zone-zone-1-add"]').length === 1, 'the zone is open');
    await press('zone-zone-1-add');
    await press('zone-zone-1-add');
    await until(() => page.plan.plan?.zones[0]?.plantings.length === 2, 'there are two plantings');

    const zone = page.plan.season?.zones[0];
    if (zone === undefined) throw new Error('there is no zone');
    expect(zoneFigure(zone, 'minutes', 13)).to.be.greaterThan(0);
    expect(zoneFigure(zone, 'litres', 13)).to.be.greaterThan(0);
  });

  it('says once, at the first of them, what is wrong with several plantings of a zone for one cause', async () => {
    const dry = ['Thyme', 'Sage', 'Mint'].map((name) => tomatoes({ id: name.toLowerCase(), name, lines: [] }));
    const [beds] = mixedGarden().zones;
    if (beds === undefined) throw new Error('there is no zone');
    const page = await shown(
      mixedGarden({ zones: [{ ...beds, rule: undefined, plantings: dry }], choices: undefined }),
    );
    await open(page, beds.name);
    await until(() => all(page, '.wrong').length === 3, 'all three say what is wrong');
    const [first, ...others] = all(page, '.wrong').map(({ textContent }) => textContent ?? '');
    expect(first).to.match(/Thyme.*Sage.*Mint/);
    for (const other of others) expect(other.replaceAll(/[\u2066-\u2069]/g, '')).to.equal('The same as at Thyme.');
  });

  it('refuses a number out of range at its field, in words, and loses nothing typed elsewhere', async () => {
    const page = await shown(mixedGarden());
    const zone = page.plan.plan?.zones[0];
    await open(page, zone?.name ?? '');
    await type(page, 'zone-beds-longestCycleMinutes', '25');
    await type(page, 'zone-beds-wateringDays', '9');
    const days = control(page, 'zone-beds-wateringDays');
    expect(days.value).to.equal('9');
    expect(days.getAttribute('aria-invalid')).to.equal('true');
    expect(refusedText(page)).to.contain('from 1 to 7');
    expect(page.plan.plan?.zones[0]?.longestCycleMinutes).to.equal(25);
    expect(page.plan.plan?.zones[0]?.wateringDays).to.equal(zone?.wateringDays);

    await type(page, 'zone-beds-wateringDays', '4');
    expect(refusedText(page)).to.equal(undefined);
    expect(page.plan.plan?.zones[0]?.wateringDays).to.equal(4);
    page.plan.undo();
    await quiet(page.garden);
    expect(control(page, 'zone-beds-wateringDays').value).to.equal('3');
  });

  it('takes a date that is typed when its field is left, so that no key moves the season', async () => {
    const page = await shown(mixedGarden());
    await open(page, say.sections.plan);
    const input = control(page, 'first-day');
    const { choices } = page.plan.plan ?? {};
    input.focus();
    for (const press of ['0', '4', '0', '6', '2', '0', '2', '7']) {
      await sendKeys({ press });
      expect(page.plan.plan?.choices).to.equal(choices);
      expect(page.plan.plan?.season.firstDay).to.equal('2027-04-05');
    }
    await sendKeys({ press: 'Enter' });
    expect(page.plan.plan?.season.firstDay).to.equal('2027-04-06');
    input.focus();
    await sendKeys({ press: 'ArrowUp' });
    const typed = input.value;
    expect(typed).not.to.equal('2027-04-06');
    expect(page.plan.plan?.season.firstDay).to.equal('2027-04-06');
    input.blur();
    expect(page.plan.plan?.season.firstDay).to.equal(typed);
  });

  it('takes a date that is picked at once', async () => {
    const page = await shown(mixedGarden());
    await open(page, say.sections.plan);
    await type(page, 'first-day', '2027-04-12');
    expect(page.plan.plan?.season.firstDay).to.equal('2027-04-12');
  });

  it('shows what was refused in its own plan and its own line alone, and keeps it when it is moved', async () => {
    const page = await shown(mixedGarden());
    await open(page, say.sections.plan);
    await type(page, 'weeks', '500');
    const main = page.plan.parentElement as HTMLElement;
    main.append(page.plan);
    await quiet(page.garden);
    expect(control(page, 'weeks').value).to.equal('500');
    page.plan.plan = { ...mixedGarden(), name: 'Another' };
    await quiet(page.garden);
    expect(control(page, 'weeks').value).to.equal('30');
    expect(refusedText(page)).to.equal(undefined);
  });

  it('refuses a word and an empty field that must have a number', async () => {
    const page = await shown(mixedGarden());
    await open(page, say.sections.site);
    await type(page, 'site-latitude', 'north');
    expect(control(page, 'site-latitude').value).to.equal('north');
    await type(page, 'site-latitude', '');
    expect(refusedText(page)).to.equal(say.refused.empty);
    expect(page.plan.plan?.site.latitude).to.equal(mixedGarden().site.latitude);
  });

  it('says where no garden lies, and asks what only a weather station needs', async () => {
    const page = await shown(mixedGarden());
    await open(page, say.sections.site);
    const onEquator = gardenPlace.onEquator(gardenPlace.site.latitude.help);
    const warning = () => page.garden.shadowRoot?.textContent?.includes(onEquator);
    expect(warning()).to.equal(false);
    await type(page, 'site-latitude', '0');
    expect(warning()).to.equal(true);

    named<HTMLElement>(page, 'summary', gardenPlace.station).click();
    await type(page, 'site-windHeight', '33');
    expect(page.plan.plan?.site.windHeight).to.equal(33);
    await type(page, 'site-windHeight', '1');
    expect(page.plan.plan?.site.windHeight).to.equal(33);
    await type(page, 'site-missingWeather', 'penman-monteith');
    await type(page, 'site-setting', 'coastal');
    expect(page.plan.plan?.site).to.include({ missingWeather: 'penman-monteith', setting: 'coastal' });
  });

  it('says of every folded part what is set in it, or that nothing is', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    if (zone === undefined) throw new Error('there is no zone');
    const words = (text: string | null | undefined) => (text ?? '').replaceAll(/\s+/g, ' ').trim();
    const says = (name: string) => words(named(page, 'summary', name).querySelector('.quiet')?.textContent);
    expect(says(say.sections.plan)).to.equal('30 weeks from April 5, 2027');
    expect(says(say.sections.site)).to.match(/^Latitude: 37\.77°; Loam; what each soil keeps/);
    expect(says(say.sections.supply)).to.equal('Hose bib; Main');
    await open(page, say.sections.site, say.sections.supply, zone.name, zone.plantings[0]?.name ?? '');
    const { folds } = gardenZones.zone;
    await type(page, `zone-${zone.id}-timerStepMinutes`, '5');
    expect(says(folds.timer)).to.equal('Timer step: 5 min');
    await type(page, `zone-${zone.id}-timerStepMinutes`, '');
    expect(says(folds.timer)).to.equal('nothing set');
    await type(page, `zone-${zone.id}-soil`, 'clay');
    await type(page, `zone-${zone.id}-slopePercent`, '4');
    expect(says(folds.ground)).to.equal('Clay; Slope of this zone: 4%');
    await type(page, `zone-${zone.id}-note`, 'North wall');
    expect(says(folds.cut)).to.equal('Note');
    const key = `planting-${zone.plantings[0]?.id}`;
    await type(page, `${key}-rootDepth`, '18');
    expect(says(gardenZones.planting.folds.roots)).to.equal('Root depth: 18 in');
    const silent = all<HTMLElement>(page, 'details:not(.wide) > summary').filter(
      (summary) => words(summary.querySelector('.quiet')?.textContent) === '',
    );
    expect(silent.map((summary) => words(summary.textContent))).to.deep.equal([]);
    // What is told stands in what a screen reader hears as the part's name.
    expect(words(named(page, 'summary', folds.timer).textContent)).to.equal(`${folds.timer} nothing set`);
  });

  it('takes a column of twelve pasted numbers from its first field', async () => {
    const page = await shown(mixedGarden());
    await open(page, say.sections.climate);
    const field = control(page, 'rain-0');
    const data = new DataTransfer();
    data.setData('text/plain', Array.from({ length: 12 }, (_, month) => `${month}.5`).join('\n'));
    field.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
    await quiet(page.garden);
    expect(page.plan.plan?.site.climate.rain).to.deep.equal(Array.from({ length: 12 }, (_, month) => month + 0.5));
  });

  it('says at once what a line gives and how long a run of it may be', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    await open(page, zone?.name ?? '', zone?.plantings[0]?.name ?? '');
    // 80 ft of line, an emitter of 0.9 gph each foot: 72 gph over 120 sq ft, of which 1 gal/h is 1.604 in/h over 1 sq ft.
    expect(named(page, '.derived', 'Gives').textContent).to.match(/ 72\sgph; .* 0\.96\sin\/h/);
    expect(all(page, '.too-long')).to.have.length(0);
    await type(page, 'planting-tomatoes-line-0-layout-length', '3000');
    expect(all(page, '.too-long')).to.have.length(1);
  });

  it('asks what decides the pressure along a line, and says at once what comes of it', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    const line = () => page.plan.plan?.zones[0]?.plantings[0]?.lines[0];
    const longest = () =>
      Number(/may be ([\d.]+)/.exec(named(page, '.derived', 'One run of it').textContent ?? '')?.[1]);
    await open(page, zone?.name ?? '', zone?.plantings[0]?.name ?? '');
    const level = longest();
    // Up a slope of 20 in 100 the pressure is used up sooner, and in a wider tube later.
    await type(page, 'planting-tomatoes-line-0-risePercent', '20');
    expect(line()).to.include({ risePercent: 20 });
    const uphill = longest();
    expect(uphill).to.be.lessThan(level);
    await type(page, 'planting-tomatoes-line-0-insideDiameter', '0.8');
    expect(longest()).to.be.greaterThan(uphill);
    await type(page, 'planting-tomatoes-line-0-leastPressure', '15');
    expect(line()).to.deep.include({ emitter: { kind: 'compensating', leastPressure: 15 } });
    await type(page, 'planting-tomatoes-line-0-emitter', 'plain');
    await type(page, 'planting-tomatoes-line-0-exponent', '7');
    expect(refusedText(page)).to.contain('from 0.1 to 1');
    await type(page, 'planting-tomatoes-line-0-exponent', '0.6');
    expect(line()).to.deep.include({ emitter: { kind: 'plain', exponent: 0.6 }, risePercent: 20 });
  });

  it('adds a line beside those that lie there, of the same goods, and ends one on a day', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    const lines = () => page.plan.plan?.zones[0]?.plantings[0]?.lines ?? [];
    await open(page, zone?.name ?? '', zone?.plantings[0]?.name ?? '');
    control(page, 'planting-tomatoes-add').click();
    await quiet(page.garden);
    expect(lines()).to.have.length(2);
    expect(lines()[1]).to.deep.equal(lines()[0]);
    await type(page, 'planting-tomatoes-line-0-to', '2027-06-30');
    await type(page, 'planting-tomatoes-line-1-from', '2027-07-01');
    expect(lines().map(({ from, to }) => [from, to])).to.deep.equal([
      [undefined, '2027-06-30'],
      ['2027-07-01', undefined],
    ]);
    await type(page, 'planting-tomatoes-line-1-kind', 'solid');
    await type(page, 'planting-tomatoes-line-1-length', '30');
    expect(lines()[1]).to.deep.equal({ kind: 'solid', from: '2027-07-01', length: 30 });
    expect(lines()[0]).to.include({ kind: 'dripline' });
  });

  it('takes an efficiency of one line, and gives it back to its zone', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    const line = () => page.plan.plan?.zones[0]?.plantings[0]?.lines[0];
    await open(page, zone?.name ?? '', zone?.plantings[0]?.name ?? '');
    await type(page, 'planting-tomatoes-line-0-application', 'efficiency');
    await type(page, 'planting-tomatoes-line-0-application-value', '0.7');
    expect(line()).to.deep.include({ application: { kind: 'efficiency', value: 0.7 } });
    await type(page, 'planting-tomatoes-line-0-application', '');
    expect(line()).not.to.have.property('application');
  });

  it('has other watering days in a month, and the place of a zone when water is cut', async () => {
    const page = await shown(mixedGarden());
    const zone = () => page.plan.plan?.zones[0];
    await open(page, zone()?.name ?? '');
    expect(named(page, 'summary', 'Other watering days in some months')).to.exist;
    await type(page, 'zone-beds-wateringDays-7', '5');
    await type(page, 'zone-beds-wateringDays-8', '9');
    expect(refusedText(page)).to.contain('from 1 to 7');
    await type(page, 'zone-beds-wateringDays-8', '4');
    expect(zone()?.wateringDaysByMonth).to.deep.equal({ 7: 5, 8: 4 });
    expect(named(page, 'summary', 'July and August')).to.exist;
    await type(page, 'zone-beds-wateringDays-7', '');
    await type(page, 'zone-beds-wateringDays-8', '');
    expect(zone()).not.to.have.property('wateringDaysByMonth');
    await type(page, 'zone-beds-cutOrder', '2');
    control(page, 'zone-beds-cutExempt').click();
    await quiet(page.garden);
    expect(zone()).to.include({ cutOrder: 2, cutExempt: true });
  });

  it('has watering restrictions and weeks with less water, each taken out again', async () => {
    const page = await shown(mixedGarden());
    const supply = () => page.plan.plan?.supply;
    await open(page, say.sections.supply);
    control(page, 'supply-restrictions-add').click();
    await quiet(page.garden);
    control(page, 'supply-restrictions-0-weekdays-tue').click();
    await quiet(page.garden);
    await type(page, 'supply-restrictions-0-hoursPerDay', '3');
    expect(supply()?.restrictions).to.deep.equal([{ weekdays: ['thu', 'sat'], hoursPerDay: 3 }]);
    control(page, 'supply-cuts-add').click();
    await quiet(page.garden);
    await type(page, 'supply-cuts-0-share', '0.3');
    expect(supply()?.cuts?.[0]).to.include({ share: 0.3 });
    await type(page, 'supply-cuts-0-kind', 'perWeek');
    await type(page, 'supply-cuts-0-perWeek', '120 gal');
    expect(supply()?.cuts?.[0]).to.include({ perWeek: 120 });
    expect(supply()?.cuts?.[0]).not.to.have.property('share');
    await type(page, 'supply-allowance-perArea', '12 gal/sq ft');
    expect(supply()?.allowance).to.include({ perArea: 12 });
    await type(page, 'supply-allowance-perArea', '');
    expect(await accessibilityFaults(page.garden)).to.deep.equal([]);
    for (const name of [gardenPlace.supply.restrictions, gardenPlace.supply.cuts].map(({ unnamed }) => unnamed)) {
      named(page, 'button', `${say.actions.remove}: ${name(formatFor(readerFor('en', 'us')), 0)}`).click();
      await quiet(page.garden);
    }
    expect(supply()).not.to.have.any.keys('restrictions', 'cuts');
  });

  it('takes a number with a unit, and says which unit it does not take', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    const line = () => page.plan.plan?.zones[0]?.plantings[0]?.lines[0];
    await open(page, zone?.name ?? '', zone?.plantings[0]?.name ?? '');
    await type(page, 'planting-tomatoes-line-0-spacing', '1.5 ft');
    expect(line()).to.include({ spacing: 18 });
    expect(control(page, 'planting-tomatoes-line-0-spacing').value).to.equal('18');
    await type(page, 'planting-tomatoes-line-0-spacing', '2 gal');
    expect(refusedText(page)).to.equal(say.refused.unread(fieldUnits.noUnit('gal')));
    expect(control(page, 'planting-tomatoes-line-0-spacing').value).to.equal('2 gal');
    expect(line()).to.include({ spacing: 18 });
    await type(page, 'planting-tomatoes-line-0-risePercent', '2 %');
    expect(line()).to.include({ risePercent: 2 });
  });

  it('names watering days one by one, and takes so many a week again', async () => {
    const page = await shown(mixedGarden());
    const days = () => page.plan.plan?.zones[0]?.wateringDays;
    await open(page, page.plan.plan?.zones[0]?.name ?? '');
    control(page, 'zone-beds-isFixed').click();
    await quiet(page.garden);
    // Three of Monday, Wednesday, Friday and Sunday, on which water may run.
    expect(days()).to.deep.equal(['wed', 'fri', 'sun']);
    const wednesday = control(page, 'zone-beds-weekdays-wed');
    expect(wednesday.parentElement?.textContent?.trim()).to.equal('Wed');
    wednesday.click();
    await quiet(page.garden);
    expect(days()).to.deep.equal(['fri', 'sun']);
    control(page, 'zone-beds-isFixed').click();
    await quiet(page.garden);
    expect(days()).to.equal(2);
  });

  it('takes growth stages and coefficients that a gardener knows, from the published ones on', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    const need = () => page.plan.plan?.zones[0]?.plantings[0]?.need;
    await open(page, zone?.name ?? '', zone?.plantings[0]?.name ?? '');
    control(page, 'planting-tomatoes-need-stages').click();
    await quiet(page.garden);
    // Tomato, the row of FAO-56 Table 11 that the kit takes: 35, 40, 50, 30 days.
    expect(need()).to.deep.include({ stages: { initial: 35, development: 40, mid: 50, late: 30 } });
    await type(page, 'planting-tomatoes-need-stages-late', '40');
    expect(need()).to.deep.include({ stages: { initial: 35, development: 40, mid: 50, late: 40 } });
    control(page, 'planting-tomatoes-need-coefficients').click();
    await quiet(page.garden);
    await type(page, 'planting-tomatoes-need-coefficients-mid', '3');
    expect(refusedText(page)).to.contain('from 0 to 2');
    page.plan.undo();
    page.plan.undo();
    page.plan.undo();
    expect(page.plan.plan).to.deep.equal(mixedGarden());
  });

  it('says the range of a field before anything is typed', async () => {
    const page = await shown(mixedGarden());
    await open(page, page.plan.plan?.zones[0]?.name ?? '');
    const days = control(page, 'zone-beds-wateringDays');
    days.focus();
    expect(days.title).to.contain('from 1 to 7');
  });

  it('knows the range of every field for a number, where its part is not in the plan yet too', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    await open(page, say.sections.plan, say.sections.supply, zone?.name ?? '', zone?.plantings[0]?.name ?? '');
    const numbers = all<HTMLInputElement>(page, '.field input[inputmode="decimal"]');
    for (const field of numbers) field.dispatchEvent(new Event('pointerenter'));
    expect(
      numbers.filter(({ title }) => !/^It takes .* (to|than|at least) /.test(title)).map(({ name }) => name),
    ).to.deep.equal([]);
    const title = (name: string) => control(page, name).title;
    expect(title('planting-tomatoes-line-0-flow')).to.contain('gph');
    expect(title('planting-tomatoes-line-0-leastPressure')).to.contain('from 0 to');
    expect(title('planting-tomatoes-line-0-leastPressure')).to.contain('psi');
    expect(title('planting-tomatoes-rootDepth')).to.contain('in');
    expect(title('supply-allowance-perWeek')).to.contain('gal');
    expect(title('weeks')).to.contain('from 1 to 104');
  });

  it('says at once what flow a bucket test comes to, and keeps it where a number is refused', async () => {
    const page = await shown(mixedGarden());
    await open(page, say.sections.supply);
    const flow = () => /[\d.]+\sgpm/.exec(all(page, '.derived')[0]?.textContent ?? '')?.[0].replace('\u00a0', ' ');
    expect(flow()).to.equal('5 gpm');
    await type(page, 'supply-source-0-flow-seconds', '40');
    expect(flow()).to.equal('7.5 gpm');
    await type(page, 'supply-source-0-flow-volume', '0');
    expect(refusedText(page)).not.to.equal(undefined);
    expect(control(page, 'supply-source-0-flow-volume').value).to.equal('0');
    expect(flow()).to.equal('7.5 gpm');
  });

  it('keeps the days of the watering window where its hours are emptied', async () => {
    const page = await shown(mixedGarden());
    const { weekdays } = page.plan.plan?.supply?.window ?? {};
    await open(page, say.sections.supply);
    await type(page, 'supply-window-hours', '');
    expect(page.plan.plan?.supply?.window).to.deep.equal({ weekdays, hoursPerDay: 24 });
  });

  it('tells a zone from a planting of the same id', async () => {
    const { zones, ...plan } = mixedGarden();
    const [beds, ...others] = zones;
    if (beds === undefined) throw new Error('there is no zone');
    const page = await shown({ ...plan, zones: [{ ...beds, id: 'tomatoes' }, ...others], log: {}, choices: {} });
    await open(page, beds.name);
    expect(all(page, '[name="planting-tomatoes-name"]')).to.have.length(0);
    await open(page, beds.plantings[0]?.name ?? '');
    await type(page, 'zone-tomatoes-name', '');
    expect(control(page, 'planting-tomatoes-name').value).to.equal('Tomatoes');
    expect(refusedText(page)).to.equal(say.refused.empty);
  });

  it('copies, moves and removes a zone, and undo brings it back', async () => {
    const page = await shown(mixedGarden());
    const names = () => page.plan.plan?.zones.map(({ name }) => name);
    const before = names() ?? [];
    await open(page, before[0] ?? '');
    control(page, 'zone-beds-copy').click();
    await quiet(page.garden);
    expect(names()).to.deep.equal([before[0], `${before[0]} 2`, ...before.slice(1)]);
    page.plan.undo();
    await quiet(page.garden);
    control(page, 'zone-beds-down').click();
    await quiet(page.garden);
    expect(names()?.[1]).to.equal(before[0]);
    control(page, 'zone-beds-remove').click();
    await quiet(page.garden);
    expect(names()).not.to.contain(before[0]);
    control(page, 'undo').click();
    await quiet(page.garden);
    expect(names()).to.contain(before[0]);
    page.plan.undo();
    expect(names()).to.deep.equal(before);
  });

  it('shows of a folded planting its size and flow, takes its size as people say it, and splits it in two with its lines', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    const planting = (index = 0) => page.plan.plan?.zones[0]?.plantings[index];
    await open(page, zone?.name ?? '');
    const summary = () => named(page, 'summary', 'Tomatoes').textContent ?? '';
    await until(() => /120\ssq\sft, 1\.20\sgpm/.test(summary()), 'its size and flow are there');
    await open(page, zone?.plantings[0]?.name ?? '');
    await type(page, 'planting-tomatoes-size', '6 pots 5 gallon');
    expect(planting()).to.deep.include({
      extent: { kind: 'canopy', count: 6, diameter: 13 },
      container: { volume: 5 },
    });
    await type(page, 'planting-tomatoes-size', 'large');
    expect(refusedText(page)).to.equal(sizes.notRead);
    page.plan.undo();
    await type(page, 'planting-tomatoes-size', '10 x 12 ft');
    control(page, 'planting-tomatoes-split').click();
    await quiet(page.garden);
    expect([planting()?.extent, planting(1)?.extent]).to.deep.equal([
      { kind: 'bed', length: 10, width: 6 },
      { kind: 'bed', length: 10, width: 6 },
    ]);
    expect(planting(1)).to.deep.include({ name: 'Tomatoes 2', lines: planting()?.lines });
  });

  it('passes axe with every kind of form unfolded', async () => {
    const page = await shown(mixedGarden());
    const [zone] = page.plan.plan?.zones ?? [];
    await open(
      page,
      say.sections.plan,
      say.sections.site,
      say.sections.climate,
      say.sections.supply,
      zone?.name ?? '',
      zone?.plantings[0]?.name ?? '',
    );
    expect(await accessibilityFaults(page.garden, {})).to.deep.equal([]);
  });

  it('shows a plan that can only be looked at without any way to change it', async () => {
    const page = await shown(mixedGarden());
    page.plan.readOnly = true;
    await quiet(page.plan);
    const [zone] = page.plan.plan?.zones ?? [];
    await open(page, zone?.name ?? '');
    expect(all(page, 'button')).to.have.length(0);
    expect(all<HTMLInputElement>(page, 'input:not([type=checkbox])').every((each) => each.readOnly)).to.equal(true);
  });
});
