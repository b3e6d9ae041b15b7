import { expect } from 'chai';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/week/define.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import type { RunnelWeek } from '../../../src/elements/week/runnel-week.ts';
import { refillOf } from '../../../src/engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneRuns } from '../../../src/engine/season/zone-runs.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { weekWords } from '../../../src/language/en/week.ts';
import { BRITISH_ENGLISH } from '../../../src/language/language.ts';
import { refusalFault } from '../../../src/store/refusals.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, settled } from '../shared/on-page.ts';

const say = weekWords(BRITISH_ENGLISH);

const plain = (text: string | null | undefined) =>
  (text ?? '')
    .replaceAll('\u2060', '')
    .replaceAll(/[\s\u00a0\u202f]+/g, ' ')
    .trim();

async function shown(today: string, garden = mixedGarden()): Promise<{ list: RunnelWeek; plan: RunnelPlan }> {
  const place = onPage(
    html`<runnel-plan locale="en-GB" .plan=${garden}><runnel-week today=${today}></runnel-week></runnel-plan>`,
  );
  return { list: await settled(place, 'runnel-week'), plan: await settled(place, 'runnel-plan') };
}

const textOf = (list: RunnelWeek, selector: string) => plain(list.shadowRoot?.querySelector(selector)?.textContent);
const articleOf = (list: RunnelWeek, zone: string) =>
  [...(list.shadowRoot?.querySelectorAll('article') ?? [])].find(
    (each) => plain(each.querySelector('h3')?.textContent) === zone,
  );

function buttonOf(list: RunnelWeek, words: string): HTMLButtonElement {
  const found = [...(list.shadowRoot?.querySelectorAll('button') ?? [])].find(
    (each) => plain(each.textContent) === words,
  );
  if (found === undefined) throw new Error(`there is no button "${words}"`);
  return found;
}

const fieldOf = (list: RunnelWeek, name: string) =>
  list.shadowRoot?.querySelector(`input[name="${name}"]`) as HTMLInputElement;

async function entered(list: RunnelWeek, name: string, text: string): Promise<void> {
  const field = fieldOf(list, name);
  field.value = text;
  field.dispatchEvent(new Event('change'));
  await quiet(list);
}

describe('runnel-week', () => {
  afterEach(clearPage);

  // The garden starts on Monday 5 April 2027: 30 June lies in its thirteenth week.
  it('shows the week that holds today, with the minutes and days of the season', async () => {
    const { list, plan } = await shown('2027-06-30');
    expect(textOf(list, 'h2')).to.equal('28 June – 4 July');
    const zone = plan.season?.zones.find((each) => each.zone.id === 'beds');
    if (zone === undefined) throw new Error('there are no beds');
    const cell = zoneWeek(zone, 12);
    expect(cell.minutes).to.be.greaterThan(0);
    const task = plain(articleOf(list, zone.zone.name)?.querySelector('strong')?.textContent);
    expect(task).to.match(/^[\d.]+ min on Wed, Fri and Sun$/);
    expect(Number.parseFloat(task)).to.be.closeTo(cell.minutesPerDay, 0.51);
  });

  it('says of each shut-off on which days it is open', async () => {
    const { list } = await shown('2027-06-30');
    const words = [...(list.shadowRoot?.querySelectorAll('dt + dd') ?? [])].map((each) => plain(each.textContent));
    expect(words.length).to.be.greaterThan(0);
    for (const says of words) expect(says).to.match(/^(shut all week|open on .+)$/);
  });

  // A reading of Thursday's rain is known from Friday on; with an inch of it Friday and Sunday need no run.
  it('names the days that run unlike others, and those that are skipped', async () => {
    const rained = (rain: number) => mixedGarden({ log: { days: { '2027-07-01': { rain } } } });
    const texts = async (rain: number) => {
      const { list, plan } = await shown('2027-06-30', rained(rain));
      const beds = plan.season?.zones[0] as ZoneSeason;
      const article = articleOf(list, 'Beds');
      return {
        runs: zoneRuns(beds, 12),
        said: [...(article?.querySelectorAll('strong') ?? [])].map((each) => plain(each.textContent)),
        all: plain(article?.textContent),
      };
    };
    const some = await texts(0.3);
    expect(some.runs.map(({ mask }) => mask)).to.deep.equal([0b0000100, 0b1010000]);
    const [wednesday, later] = some.runs.map(({ minutes }) => minutes);
    expect(some.said).to.deep.equal([`${wednesday} min on Wed`, `${later} min on Fri and Sun`]);
    expect(some.all).to.contain('Decided anew on Fri, from what was known by then.');
    expect(some.all).not.to.contain('Skipped');
    const much = await texts(1);
    expect(much.said).to.deep.equal([`${much.runs[0]?.minutes} min on Wed`]);
    expect(much.all).to.contain('Skipped on Fri and Sun: less than half a step of the timer is needed');
  });

  it('says of a planting that is due for a refill what becomes of it', async () => {
    const { list, plan } = await shown('2027-06-30');
    const words = () => plain(articleOf(list, 'Beds')?.querySelector('dl')?.textContent);
    for (let week = 5; week < 25; week++) {
      plan.select({ week });
      await quiet(list);
      const shrubs = plan.season?.zones[0]?.plantings.find(
        ({ planting }) => planting.id === 'shrubs',
      ) as PlantingSeason;
      const refill = refillOf(shrubs, week);
      const said = Object.values(say.refill).filter((each) => words().includes(each));
      expect(said, `week ${week}`).to.deep.equal(refill === undefined ? [] : [say.refill[refill]]);
    }
  });

  it('shows the first week where today is outside the season, and steps from there', async () => {
    const { list, plan } = await shown('2026-01-01');
    expect(textOf(list, 'h2')).to.equal('5–11 April');
    expect(buttonOf(list, say.previous).disabled).to.equal(true);
    expect(buttonOf(list, say.thisWeek).disabled).to.equal(true);
    buttonOf(list, say.next).click();
    await quiet(list);
    expect(textOf(list, 'h2')).to.equal('12–18 April');
    plan.select({ week: 29 });
    await quiet(list);
    expect(buttonOf(list, say.next).disabled).to.equal(true);
  });

  it('notes a zone as run when it is checked off, and takes that back', async () => {
    const { list, plan } = await shown('2027-06-30');
    const box = articleOf(list, 'Beds')?.querySelector('input');
    if (!box) throw new Error('there is no box');
    const zone = () => plan.season?.zones[0];
    const planned = zoneWeek(zone() as NonNullable<ReturnType<typeof zone>>, 12).minutes;
    box.click();
    await quiet(list);
    const run = plan.plan?.log?.runs?.['beds']?.['2027-06-28'];
    const days = typeof run === 'object' ? run.days : {};
    expect(Object.values(days).reduce((sum, { minutes }) => sum + minutes, 0)).to.equal(planned);
    expect(Object.values(days).every(({ open }) => open !== undefined)).to.equal(true);
    expect(zoneWeek(zone() as NonNullable<ReturnType<typeof zone>>, 12).origin).to.equal('run');
    expect(box.checked).to.equal(true);
    box.click();
    await quiet(list);
    expect(plan.plan?.log?.runs?.['beds']?.['2027-06-28']).to.equal(undefined);
    expect(box.checked).to.equal(false);
  });

  it('logs the whole week as planned by one press, as one step', async () => {
    const { list, plan } = await shown('2027-07-05');
    plan.select({ week: 12 });
    await quiet(list);
    const before = plan.season?.totals.figures.slice();
    expect(list.shadowRoot?.querySelectorAll('.assumed').length).to.equal(2);
    buttonOf(list, say.logAll).click();
    await quiet(list);
    expect(plan.season?.zones.map((zone) => zoneWeek(zone, 12).origin)).to.deep.equal(['run', 'run']);
    expect(plan.season?.totals.figures).to.deep.equal(before);
    expect(list.shadowRoot?.querySelectorAll('.assumed, .closing').length).to.equal(0);
    plan.undo();
    await quiet(list);
    expect(plan.plan?.log?.runs?.['containers']).to.equal(undefined);
  });

  it('takes other minutes and shut-offs of a single day, and leaves the other days as planned', async () => {
    const { list, plan } = await shown('2027-06-30');
    const beds = () => plan.season?.zones[0] as ZoneSeason;
    const planned = zoneRuns(beds(), 12)[0]?.minutes as number;
    await entered(list, 'run-beds-2027-07-02', '7');
    const runs = () => {
      const run = plan.plan?.log?.runs?.['beds']?.['2027-06-28'];
      return typeof run === 'object' ? run.days : {};
    };
    const minutes = () => Object.fromEntries(Object.entries(runs()).map(([day, run]) => [day, run.minutes]));
    expect(minutes()).to.deep.equal({ '2027-06-30': planned, '2027-07-02': 7, '2027-07-04': planned });
    const openBefore = runs()['2027-07-02']?.open?.includes('shrubs') as boolean;
    fieldOf(list, 'open-beds-shrubs-2027-07-02').click();
    await quiet(list);
    expect(runs()['2027-07-02']?.open).to.deep.equal(openBefore ? [] : ['shrubs']);
    expect(minutes()['2027-07-02']).to.equal(7);
  });

  it('keeps what is no number in its field, and says why', async () => {
    const { list, plan } = await shown('2027-06-30');
    const { plan: before } = plan;
    await entered(list, 'run-beds-2027-07-02', 'seven');
    const field = fieldOf(list, 'run-beds-2027-07-02');
    expect(field.value).to.equal('seven');
    expect(field.getAttribute('aria-invalid')).to.equal('true');
    expect(textOf(list, '#run-beds-2027-07-02-why')).to.contain('is not a number');
    await entered(list, 'run-beds-2027-07-02', '2000');
    expect(field.value).to.equal('2000');
    expect(textOf(list, '#run-beds-2027-07-02-why')).to.contain('1,440');
    expect(plan.plan).to.equal(before);
    await entered(list, 'run-beds-2027-07-02', '7');
    expect(field.getAttribute('aria-invalid')).to.equal(null);
  });

  it('takes the rain of the gauge with the day through which it was read', async () => {
    const { list, plan } = await shown('2027-06-30');
    const week = () => plan.plan?.log?.weeks?.['2027-06-28'];
    await entered(list, 'rain-2027-06-28', '0.4');
    expect(week()).to.deep.equal({ rain: 0.4, rainThrough: '2027-06-30' });
    const select = list.shadowRoot?.querySelector('.rain-entry select') as HTMLSelectElement;
    select.value = '2027-07-01';
    select.dispatchEvent(new Event('change'));
    await quiet(list);
    expect(week()).to.deep.equal({ rain: 0.4, rainThrough: '2027-07-01' });
    await entered(list, 'rain-2027-06-28', '');
    expect(week()).to.equal(undefined);
  });

  it('takes a forecast of days to come, of today’s issue, and lets go of it', async () => {
    const { list, plan } = await shown('2027-06-30');
    expect(list.shadowRoot?.querySelectorAll('.forecast tbody tr').length).to.equal(5);
    await entered(list, 'forecast-2027-07-02-rain', '0.5');
    await entered(list, 'forecast-2027-07-01-eto', '0.1');
    expect(plan.plan?.log?.forecasts).to.deep.equal([
      { issued: '2027-06-30', days: { '2027-07-01': { eto: 0.1 }, '2027-07-02': { rain: 0.5 } } },
    ]);
    await entered(list, 'forecast-2027-07-02-rain', '');
    await entered(list, 'forecast-2027-07-01-eto', '');
    expect(plan.plan?.log?.forecasts).to.equal(undefined);
    plan.select({ week: 11 });
    await quiet(list);
    expect(list.shadowRoot?.querySelector('.forecast')).to.equal(null);
  });

  it('says why where a zone cannot be checked off, and leaves its box as it was', async () => {
    const { list, plan } = await shown('2027-06-30');
    const faults = [refusalFault('not-computed')];
    plan.addEventListener(
      'runnel-edit',
      (event) => {
        event.stopImmediatePropagation();
        event.result = { ok: false, faults };
      },
      { capture: true, once: true },
    );
    const box = articleOf(list, 'Beds')?.querySelector('input');
    box?.click();
    await quiet(list);
    expect(textOf(list, '[role=alert]')).to.contain('The plan');
    expect(box?.checked).to.equal(false);
    box?.click();
    await quiet(list);
    expect(textOf(list, '[role=alert]')).to.equal('');
    expect(box?.checked).to.equal(true);
  });

  it('offers no boxes where the plan can only be looked at', async () => {
    const { list, plan } = await shown('2027-06-30');
    plan.readOnly = true;
    await quiet(plan);
    expect(list.shadowRoot?.querySelectorAll('input').length).to.equal(0);
  });

  it('carries the cautions', async () => {
    const { list } = await shown('2027-06-30');
    expect(textOf(list, '.cautions')).to.contain('backflow').and.to.contain('Local codes');
  });
});
