import { expect } from 'chai';
import { html } from 'lit';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/weather/define.ts';
import { dayNumber, isoDate } from '../../../src/engine/calendar.ts';
import { weather } from '../../../src/language/en/weather.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, onPage, quiet, settled, until } from '../shared/on-page.ts';
import { answerOf } from './service-answer.ts';

const SERVICE = 'https://weather.example/v1/archive https://weather.example/v1/forecast';
const TODAY = '2027-06-15';
const SEASON = { firstDay: '2027-06-07', weeks: 20 };

async function shown(change: Partial<Plan> = {}, service = SERVICE) {
  const plan = mixedGarden({ season: SEASON, log: undefined, choices: undefined, ...change });
  const place = onPage(html`<runnel-plan locale="en" .plan=${plan} weather-service=${service}>
    <runnel-weather today=${TODAY}></runnel-weather>
  </runnel-plan>`);
  const provider = await settled(place, 'runnel-plan');
  const element = await settled(place, 'runnel-weather');
  const root = element.shadowRoot as ShadowRoot;
  const find = <E extends HTMLElement>(selector: string): E => {
    const found = root.querySelector<E>(selector);
    if (found === null) throw new Error(`there is no ${selector}`);
    return found;
  };
  const text = () => root.textContent ?? '';
  return { provider, element, root, find, text, site: () => provider.plan?.site };
}

type Shown = Awaited<ReturnType<typeof shown>>;

/** Invented weather from one day to another. */
const answer = (first: number, last: number): string =>
  answerOf(first, last, (day) => ({ highC: 20, lowC: 10, rainMm: day % 4 === 0 ? 5.08 : 0, etoMm: 2.54 }));

/** Stands in for the network; every address that is asked for is kept. */
function network(respond: (url: URL) => Response | Promise<Response>) {
  const asked: URL[] = [];
  const original = window.fetch;
  window.fetch = (input) => {
    const url = new URL(input instanceof Request ? input.url : input, location.href);
    if (url.origin === location.origin) return original(input);
    asked.push(url);
    return Promise.resolve(respond(url));
  };
  return { asked, restore: () => (window.fetch = original) };
}

const day = (url: URL, name: string) => dayNumber(url.searchParams.get(name) ?? '');

const layout = (url: URL): Response =>
  new Response(
    url.pathname.endsWith('/archive')
      ? answer(day(url, 'start_date'), day(url, 'end_date'))
      : answer(dayNumber(TODAY) - Number(url.searchParams.get('past_days')), dayNumber(TODAY) + 9),
  );

async function choosePlace({ find, root, element }: Shown, typed: string): Promise<void> {
  const search = find<HTMLInputElement>('input[type="search"]');
  search.value = typed;
  search.dispatchEvent(new Event('input', { bubbles: true }));
  await until(() => root.querySelector('.places button') !== null, 'places are found');
  find('.places button').click();
  await quiet(element);
}

describe('runnel-weather', () => {
  let net = network(layout);
  beforeEach(() => {
    net.restore();
    net = network(layout);
  });
  afterEach(() => {
    clearPage();
    net.restore();
  });

  it('leads from a name to a plan with climate and years: type, choose, press; nothing is asked before', async function () {
    this.timeout(20_000);
    const page = await shown();
    expect(page.root.querySelector('[name="ask-climate"]')).to.equal(null);
    await choosePlace(page, 'Seattle');
    expect(page.site()).to.include({
      place: 'Seattle, WA',
      latitude: 47.61,
      longitude: -122.33,
      timeZone: 'America/Los_Angeles',
    });
    expect(page.find('#service-says').textContent).to.contain('weather.example').and.to.contain('47.6');
    expect(net.asked).to.have.length(0);
    page.find('[name="ask-climate"]').click();
    await until(() => page.site()?.years !== undefined, 'the years are in the plan');
    expect(net.asked.map(({ host }) => host)).to.deep.equal(['weather.example']);
    expect(Object.fromEntries(net.asked[0]?.searchParams ?? [])).to.include({
      latitude: '47.6',
      longitude: '-122.35',
      start_date: '1991-01-01',
    });
    expect(page.site()?.climate.eto?.[0]).to.equal(3.1);
    expect(page.site()?.climate.source).to.contain('weather.example');
    await quiet(page.element);
    page.find('[name="undo"]').click();
    await quiet(page.element);
    expect(page.site()?.years).to.equal(undefined);
  });

  it('says what to do where a town was typed and not picked, once its press is over, and keeps what was typed', async () => {
    const page = await shown();
    const before = page.site();
    const search = page.find<HTMLInputElement>('input[type="search"]');
    const says = () => page.root.querySelector('.search .refused')?.textContent;
    search.value = 'Seattle';
    search.dispatchEvent(new Event('input', { bubbles: true }));
    await until(() => page.root.querySelector('.places button') !== null, 'places are found');
    expect(says()).to.equal(undefined);
    // Left for a press on something else: words that came now would move it away.
    window.dispatchEvent(new PointerEvent('pointerdown'));
    search.dispatchEvent(new Event('change', { bubbles: true }));
    await new Promise((resolve) => setTimeout(resolve));
    await quiet(page.element);
    expect(says()).to.equal(undefined);
    window.dispatchEvent(new PointerEvent('pointerup'));
    await until(() => says() === weather.place.unpicked('Seattle'), 'it says what to do');
    expect(search.value).to.equal('Seattle');
    expect(search.getAttribute('aria-invalid')).to.equal('true');
    expect(page.site()).to.equal(before);
    const list = page.find('.places').compareDocumentPosition(page.find('.search .refused'));
    expect(list & Node.DOCUMENT_POSITION_FOLLOWING).to.equal(Node.DOCUMENT_POSITION_FOLLOWING);
    expect(await accessibilityFaults(page.element)).to.deep.equal([]);
    page.find('.places button').click();
    await quiet(page.element);
    expect(says()).to.equal(undefined);
    expect(search.value).to.equal('');
    expect(page.site()?.place).to.equal('Seattle, WA');
  });

  it('takes where the browser is, with its time zone and without the name of elsewhere, and asks nobody', async () => {
    const { geolocation } = navigator;
    const original = geolocation.getCurrentPosition;
    try {
      const page = await shown({ site: { ...mixedGarden().site, place: 'Seattle' } });
      geolocation.getCurrentPosition = (found) =>
        found({ coords: { latitude: 44.0523, longitude: -123.0868 } } as GeolocationPosition);
      page.find('.search > button').click();
      await quiet(page.element);
      const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
      expect(page.site())
        .to.include({ latitude: 44.05, longitude: -123.09, timeZone })
        .and.not.to.have.property('place');
      geolocation.getCurrentPosition = (_found, failed) => failed?.({ code: 1 } as GeolocationPositionError);
      page.find('.search > button').click();
      await quiet(page.element);
      expect(page.text()).to.contain(weather.place.hereFailed);
      const fields = [...page.root.querySelectorAll<HTMLInputElement>('.fields input')];
      expect(fields.map(({ value }) => value)).to.include('44.05');
      expect(page.site()?.latitude).to.equal(44.05);
      expect(net.asked).to.have.length(0);
    } finally {
      geolocation.getCurrentPosition = original;
    }
  });

  it('fills the days that have passed where nobody wrote anything, and keeps the forecast of today', async () => {
    const page = await shown({ log: { days: { '2027-06-08': { rain: 0.7 } } } });
    await choosePlace(page, 'Seattle');
    page.find('[name="ask-season"]').click();
    await until(() => page.provider.plan?.log?.forecasts !== undefined, 'the forecast is in the plan');
    const log = page.provider.plan?.log;
    expect(log?.days?.['2027-06-08']).to.deep.equal({ rain: 0.7, eto: 0.1, source: { eto: 'service' } });
    expect(log?.days?.['2027-06-14']).to.deep.equal({ rain: 0, eto: 0.1, source: 'service' });
    expect(log?.days?.['2027-06-15']).to.equal(undefined);
    expect(log?.forecasts?.[0]?.issued).to.equal(TODAY);
    expect(Object.keys(log?.forecasts?.[0]?.days ?? {})).to.have.length(10);
    expect(net.asked).to.have.length(1);
    await quiet(page.element);
    const counts = [...page.root.querySelectorAll('.season li')].map((item) =>
      item.textContent?.replaceAll('\u00a0', ' '),
    );
    expect(counts).to.deep.equal([
      'Rain: 1 day typed and 7 days from the weather service.',
      'Reference ET: 8 days from the weather service.',
    ]);
    expect(page.root.querySelector('.season table')).to.equal(null);
    page.find<HTMLDetailsElement>('.season details').open = true;
    await until(() => page.root.querySelector('.season table') !== null, 'the days are shown');
    const rows = [...page.root.querySelectorAll('.season tbody tr')].map((row) => row.textContent ?? '');
    expect(rows).to.have.length(18);
    expect(rows.at(-2)).to.contain('0.70').and.to.contain('typed').and.to.contain('from the weather service');
    expect(rows[0]).to.contain('forecast, from the weather service');
  });

  it('asks anew: what came from the service becomes newer, what was typed since stays', async () => {
    const page = await shown({ site: { ...mixedGarden().site, longitude: -122 } });
    page.find('[name="ask-season"]').click();
    await until(() => page.root.querySelector('[name="undo"]') !== null, 'the season is filled in');
    page.provider.edit({ type: 'change-day-weather', day: '2027-06-09', change: { rain: 0.3 } });
    net.restore();
    net = network(
      (url) =>
        new Response(
          answer(dayNumber(TODAY) - Number(url.searchParams.get('past_days')), dayNumber(TODAY) + 9).replaceAll(
            '2.54',
            '5.08',
          ),
        ),
    );
    await quiet(page.element);
    page.find('[name="ask-season"]').click();
    await until(() => page.provider.plan?.log?.days?.['2027-06-10']?.eto === 0.2, 'the service says other figures');
    expect(page.provider.plan?.log?.days?.['2027-06-09']).to.deep.equal({
      rain: 0.3,
      eto: 0.2,
      source: { eto: 'service' },
    });
    await quiet(page.element);
    expect(page.text())
      .to.match(/Newer figures for 8\sdays/)
      .and.to.match(/Readings of 1\sday that you typed/);
  });

  it('fetches a club’s own file when asked, and shows it as one that was chosen', async () => {
    net.restore();
    const rows = Array.from(
      { length: 70 },
      (_, index) => `${isoDate(dayNumber('2027-05-01') + index)},0,${index === 40 ? '' : 20},10`,
    );
    net = network(() => new Response(['date,precipitation,temp_max,temp_min', ...rows].join('\n')));
    const page = await shown({}, 'https://club.example/weather/days%202027.csv');
    expect(net.asked).to.have.length(0);
    page.find('[name="ask-file"]').click();
    await until(() => page.root.querySelector('.preview select') !== null, 'its units are asked for');
    expect(net.asked.map(({ href }) => href)).to.deep.equal(['https://club.example/weather/days%202027.csv']);
    expect(page.text()).to.contain('days 2027.csv');
    const choice = page.find<HTMLSelectElement>('.preview select');
    choice.value = 'metric';
    choice.dispatchEvent(new Event('change'));
    await until(() => page.root.querySelector('[name="take-season"]') !== null, 'it is understood');
    page.find('.preview input[type="checkbox"]').click();
    await quiet(page.element);
    page.find('[name="take-season"]').click();
    await until(() => page.provider.plan?.log?.days !== undefined, 'the season is filled in');
    expect(page.provider.plan?.log?.days?.['2027-06-09']).to.deep.equal({
      ...{ rain: 0, minTemperature: 50, maxTemperature: 68 },
      source: 'file',
    });
    expect(page.provider.plan?.log?.days?.['2027-06-10']?.source).to.deep.equal({
      ...{ rain: 'file', minTemperature: 'file', maxTemperature: 'estimate' },
    });
  });

  for (const [name, respond, says] of [
    ['too many requests', () => new Response('', { status: 429 }), weather.service.failed.tooMany],
    ['a refusal', () => new Response('{"error":true,"reason":"No"}', { status: 400 }), '“No”. Nothing was changed.'],
    ['no connection', () => Promise.reject(new TypeError('Failed to fetch')), weather.service.failed.unreachable],
    ['another layout', () => new Response('{"hours":[]}'), weather.service.failed.layout('daily.time')],
    ['a page of words', () => new Response('<html>Sign in</html>'), weather.service.failed.noDays],
  ] as const) {
    it(`says what to do after ${name}, and leaves the plan as it was`, async () => {
      net.restore();
      net = network(respond);
      const page = await shown({ site: { ...mixedGarden().site, longitude: -122 } });
      const before = page.provider.plan;
      page.find('[name="ask-climate"]').click();
      await until(() => page.text().includes(says), says);
      expect(page.provider.plan).to.equal(before);
    });
  }

  it('shows a file for what it is before anything is taken, asks for its units, and takes it', async () => {
    const page = await shown({}, '');
    expect(page.text()).not.to.contain(weather.service.title);
    const rows = Array.from({ length: 800 }, (_, index) => {
      const missing = index >= 100 && index < 103;
      return `"X1","A TOWN, XX","${isoDate(dayNumber('2024-01-01') + index)}","${index % 5 === 0 ? '2.0' : '0.0'}","${missing ? '' : '20.0'}","10.0"`;
    });
    const text = ['"STATION","NAME","DATE","PRCP","TMAX","TMIN"', ...rows].join('\n');
    const before = page.provider.plan;
    const field = page.find<HTMLInputElement>('input[type="file"]');
    const files = new DataTransfer();
    files.items.add(new File([text], 'town.csv'));
    field.files = files.files;
    field.dispatchEvent(new Event('change'));
    await until(() => page.text().includes(weather.file.ask.units), 'the units are asked for');
    expect(page.root.querySelector('[name="take-climate"]')).to.equal(null);
    const choice = page.find<HTMLSelectElement>('.preview select');
    choice.value = 'metric';
    choice.dispatchEvent(new Event('change'));
    await until(() => page.root.querySelector('[name="take-climate"]') !== null, 'the file is understood');
    expect(page.text())
      .to.contain('A TOWN, XX')
      .and.to.match(/missing on 3\s?days/);
    expect(page.provider.plan).to.equal(before);
    page.find('[name="take-climate"]').click();
    await until(() => page.site()?.years !== undefined, 'the years are taken');
    expect(page.site()?.climate.maxTemperature?.[6]).to.equal(68);
  });

  it('lands a block of two columns as a block, and lets a low above its high wait for the high', async () => {
    const { eto: _, ...rest } = mixedGarden().site.climate;
    const months = (value: number) => Array.from({ length: 12 }, () => value);
    const climate = { ...rest, minTemperature: months(40), maxTemperature: months(50) };
    const page = await shown({ site: { ...mixedGarden().site, climate } });
    const fieldOf = (name: string) => page.find<HTMLInputElement>(`[name="${name}"]`);
    const data = new DataTransfer();
    data.setData('text/plain', Array.from({ length: 12 }, (_, month) => `${30 + month}\t${60 + month}`).join('\r\n'));
    fieldOf('minTemperature-0').dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
    );
    await quiet(page.element);
    expect(page.site()?.climate.minTemperature?.[11]).to.equal(41);
    expect(page.site()?.climate.maxTemperature?.[11]).to.equal(71);
    // Of a printed table, with the names of its months, and pasted in the middle of the last column but one.
    const printed = new DataTransfer();
    const row = (month: number) => `M${'abcdefghijkl'.charAt(month)}  ${60 + month} ${month + 1} ${month + 0.5}`;
    printed.setData('text/plain', Array.from({ length: 12 }, (_, month) => row(month)).join('\n'));
    fieldOf('rain-5').dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: printed, bubbles: true, cancelable: true }),
    );
    await quiet(page.element);
    const { maxTemperature, rain, rainDays } = page.site()?.climate ?? {};
    expect([maxTemperature?.[0], rain?.[11], rainDays?.[3]]).to.deep.equal([60, 12, 3.5]);
    const type = async (name: string, value: string) => {
      fieldOf(name).value = value;
      fieldOf(name).dispatchEvent(new Event('change'));
      await quiet(page.element);
    };
    await type('minTemperature-0', '70');
    expect(page.site()?.climate.minTemperature?.[0]).to.equal(30);
    expect(fieldOf('minTemperature-0').value).to.equal('70');
    expect(page.text()).to.contain(weather.climate.lowAboveHigh);
    await type('maxTemperature-0', '80');
    expect(page.site()?.climate.minTemperature?.[0]).to.equal(70);
    expect(page.site()?.climate.maxTemperature?.[0]).to.equal(80);
    expect(page.text()).not.to.contain(weather.climate.lowAboveHigh);
  });

  it('takes rain days by month and the threshold from which they are counted', async () => {
    const page = await shown();
    const type = async (name: string, value: string) => {
      const field = page.find<HTMLInputElement>(`[name="${name}"]`);
      field.value = value;
      field.dispatchEvent(new Event('change'));
      await quiet(page.element);
    };
    await type('rainDays-4', '7');
    expect(page.site()?.climate.rainDays?.[4]).to.equal(7);
    await type('rain-day-threshold', '0.04');
    expect(page.site()?.climate.rainDayThreshold).to.equal(0.04);
    await type('rain-day-threshold', '');
    expect(page.site()?.climate.rainDayThreshold).to.equal(undefined);
  });

  it('runs the season over every year when it is asked, and says how many the allowance is enough for', async () => {
    const page = await shown({ supply: { ...mixedGarden().supply, allowance: { perSeason: 1 } } } as Partial<Plan>);
    expect(page.root.querySelector('.band')).to.equal(null);
    page.find('[name="compare-years"]').click();
    await until(() => page.root.querySelector('.band') !== null, 'the years are compared');
    expect(page.text()).to.match(/In 0\syears of 10 the allowance is enough/);
    expect(page.text()).to.contain('60');
    page.provider.edit({ type: 'rename-plan', name: 'Another' });
    page.provider.edit({ type: 'set-week-rain', week: '2027-06-07', rain: 1 });
    await quiet(page.element);
    expect(page.root.querySelector('.band')).to.equal(null);
  });

  it('tries a hot week before anything is kept, keeps it in the plan or beside it, and takes it back', async () => {
    const page = await shown();
    const before = page.provider.plan;
    const [hot, dry] = ['hot-week', 'dry-month'].map((name) => () => page.find(`[name="${name}"]`).click());
    await until(() => page.root.querySelector('.unusual') !== null, 'its part is there');
    hot?.();
    await until(() => page.root.querySelector('.unusual .band') !== null, 'the season is compared');
    expect(page.provider.plan).to.equal(before);
    expect(await accessibilityFaults(page.element, {})).to.deep.equal([]);
    page.element.style.inlineSize = '20rem';
    const [table, whole] = [page.find('.unusual .band'), page.element].map(
      (each) => each.getBoundingClientRect().right,
    );
    expect(table, 'a telephone shows all of the comparison').to.be.at.most(whole ?? 0);
    page.element.style.inlineSize = '';
    page.find('[name="keep-weather"]').click();
    await until(() => page.site()?.departures !== undefined, 'the plan expects it');
    expect(page.site()?.departures).to.deep.equal([{ from: '2027-07-12', weeks: 1, eto: 1.3 }]);
    await quiet(page.element);
    page.find('[name="undo-trial"]').click();
    await until(() => page.site()?.departures === undefined, 'it is taken back');
    dry?.();
    await until(() => page.root.querySelector('[name="keep-beside"]') !== null, 'a dry month is compared');
    page.find('[name="keep-beside"]').click();
    await until(() => page.provider.plan?.whatIfs !== undefined, 'it stands beside the plan');
    expect(page.site()?.departures).to.equal(undefined);
    expect(page.provider.plan?.whatIfs?.[0]?.edits).to.deep.equal([
      { type: 'set-departure', from: '2027-07-12', weeks: 4, rain: 0 },
    ]);
  });

  it('passes axe with its table unfolded, and can be looked at only', async () => {
    const page = await shown({ site: { ...mixedGarden().site, longitude: -122 } });
    for (const folded of page.root.querySelectorAll('details')) folded.open = true;
    await quiet(page.element);
    expect(await accessibilityFaults(page.element, {})).to.deep.equal([]);
    page.provider.readOnly = true;
    await quiet(page.element);
    expect(page.root.querySelector('[name="ask-climate"], input[type="search"], input[type="file"]')).to.equal(null);
  });
});
