/** From nothing to a garden of seven areas, by real presses, keys and touches, as a plan file written by hand has it. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dayNumber, isoDate } from '../../../src/engine/calendar.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan, PlanLine, PlanPlanting } from '../../../src/plan/schema/plan-schema.ts';
import { BLANK_PAGE, launchChromium, pageScript } from '../../tools/browser-page.ts';
import { Hands, type Way } from './hands.ts';

const ADDRESS = 'http://runnel.example/';
const MOST_ACTIONS = 60;

const SCREENS: readonly (readonly [Way, number, number])[] = [
  ['mouse', 1440, 900],
  ['mouse', 390, 844],
  ['keyboard', 1440, 900],
  ['touch', 390, 844],
];

let browser: Browser;
let script: string;

beforeAll(async () => {
  browser = await launchChromium();
  script = await pageScript('test/elements/start/seven-areas-page.ts');
}, 90_000);

afterAll(() => browser?.close());

/** Invented weather from one day to another, in the documented layout. */
function weather(url: URL): string {
  const [first = 0, last = 0] = ['start_date', 'end_date'].map((name) => dayNumber(url.searchParams.get(name) ?? ''));
  const days = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  return JSON.stringify({
    ...{ latitude: 47.6, longitude: -122.35, elevation: 56, timezone: 'America/Los_Angeles' },
    daily_units: {
      ...{ time: 'iso8601', temperature_2m_max: '°C', temperature_2m_min: '°C' },
      ...{ precipitation_sum: 'mm', et0_fao_evapotranspiration: 'mm' },
    },
    daily: {
      time: days.map(isoDate),
      temperature_2m_max: days.map(() => 25),
      temperature_2m_min: days.map(() => 12),
      precipitation_sum: days.map((day) => (day % 7 === 0 ? 5.08 : 0)),
      et0_fao_evapotranspiration: days.map(() => 3.81),
    },
  });
}

async function opened(way: Way, width: number, height: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height }, hasTouch: way === 'touch', locale: 'en-US' });
  await page.route('**/*', (route) => {
    const url = new URL(route.request().url());
    return url.host === 'weather.example'
      ? route.fulfill({
          contentType: 'application/json',
          headers: { 'access-control-allow-origin': '*' },
          body: weather(url),
        })
      : route.fulfill({ contentType: 'text/html', body: BLANK_PAGE });
  });
  await page.goto(ADDRESS);
  await page.setContent(`<!doctype html><html lang="en"><head><title>Start</title><meta name="viewport" content="width=device-width, initial-scale=1"></head><body style="margin: 0">
    <runnel-planner today="2027-03-10" weather-service="https://weather.example/v1/archive" license-key="non-commercial-and-evaluation"></runnel-planner></body></html>`);
  await page.addScriptTag({ content: script, type: 'module' });
  return page;
}

/** Waits until the plan is as it should be after what was done. */
const until = (page: Page, is: (plan: Plan) => boolean) =>
  page.waitForFunction(`(${is})(startPage.planOf() ?? { zones: [], site: {} })`, undefined, { timeout: 15_000 });

const plantings = (count: number) => `(plan) => plan.zones.flatMap((zone) => zone.plantings).length === ${count}`;

async function build(page: Page, hands: Hands): Promise<void> {
  const next = () => hands.press(hands.named('next'));
  await hands.press(hands.named('new-plan'));

  await hands.type('place', 'Seattle');
  await hands.press(page.locator('runnel-start .places button').first());
  await hands.press(hands.named('ask-climate'));
  await until(page, (plan) => plan.site.years !== undefined);
  await next();

  await hands.type('bucket-seconds', '50');
  await hands.press(hands.saying('Another source later'));
  await hands.press(hands.named('add-source'));
  await hands.type('source-1-from', '06142027');
  await hands.type('source-1-flow', '9');
  await next();

  await hands.press(hands.named('more-zones'));
  await until(page, (plan) => plan.zones.length === 2);
  await next();

  let count = 0;
  const add = async (name: string, size: string, more?: () => Promise<void>) => {
    if (name !== '') await hands.type('row-name', name);
    await hands.type('row-size', size);
    await more?.();
    await hands.press(hands.named('add-row'));
    count += 1;
    await page.waitForFunction(`(${plantings(count)})(startPage.planOf())`);
  };
  await hands.type('plant', 'tomatoe');
  await page.locator('runnel-start [role=option]').first().waitFor();
  await hands.take(page.locator('runnel-start [role=option]').first());
  await add('', '4 x 12 ft');
  await hands.press(hands.saying('Copy'));
  count += 1;
  await add('Border', '4 x 30 ft');
  await add('Hedge', '1 row 140 ft');
  await add('Late bed', '3 x 8 ft', async () => {
    await hands.press(hands.saying('Day of planting'));
    await hands.type('row-from', '06142027');
  });
  await add('Shrubs', '9 x 3 ft across', () => hands.choose('row-zone', 'Zone 2'));
  await add('Pots', '6 pots 18 in');
  await add('Baskets', '2 baskets 14 in');
  await next();

  const chip = (name: string) => hands.press(page.locator('runnel-start .chip', { hasText: name }).first());
  await hands.type('spacing', '6');
  await hands.press(page.locator('runnel-start .chip').nth(1));
  await hands.type('spacing', '6');
  await chip('Hedge');
  await hands.press(hands.saying('Shut-off, far end'));
  await hands.type('risePercent', '5');
  await chip('Shrubs');
  await hands.press(hands.named('laid-shut-off'));
  await chip('Pots');
  await hands.pick('solid');
  await hands.press(hands.named('show-season'));
  await hands.named('open-season').waitFor();
}

const drip = (rows: number, length: number, spacing = 12): PlanLine => ({
  ...{ kind: 'dripline', flow: 0.6, spacing },
  layout: { kind: 'rows', rows, length },
});

const bed = (id: string, name: string): PlanPlanting => ({
  ...{ id, name },
  need: { kind: 'crop', crop: 'tomato', plantedOn: '2027-04-05' },
  extent: { kind: 'bed', length: 4, width: 12 },
  lines: [drip(3, 12, 6)],
});

const of = (id: string, name: string, extent: PlanPlanting['extent'], lines: readonly PlanLine[]): PlanPlanting => ({
  ...{ id, name, extent, lines },
  need: { kind: 'class', class: 'moderate' },
});

/** By hand; its weather is that of the service. */
const byHand = (site: Plan['site']): Plan => ({
  ...{ format: 'runnel-plan', version: 2, units: 'us', name: 'My garden' },
  season: { firstDay: '2027-04-05', weeks: 30 },
  site,
  supply: {
    sources: [
      { name: 'Hose bib', flow: { kind: 'bucket', volume: 5, seconds: 50 } },
      { name: 'Main', from: '2027-06-14', flow: { kind: 'typed', flow: 9 } },
    ],
    window: { opensAt: '05:00', hoursPerDay: 3 },
  },
  zones: [
    {
      ...{ id: 'zone-1', name: 'Zone 1', wateringDays: ['tue', 'thu', 'sat'] },
      plantings: [
        bed('tomato', 'Tomato'),
        bed('tomato-2', 'Tomato 2'),
        of('border', 'Border', { kind: 'bed', length: 4, width: 30 }, [drip(3, 30)]),
        of('hedge', 'Hedge', { kind: 'rows', rows: 1, length: 140 }, [{ ...drip(1, 140), risePercent: 5 } as PlanLine]),
        {
          ...of('late-bed', 'Late bed', { kind: 'bed', length: 3, width: 8 }, [drip(2, 8)]),
          inGround: { from: '2027-06-14' },
        },
      ],
    },
    {
      ...{ id: 'zone-2', name: 'Zone 2', wateringDays: ['tue', 'thu', 'sat'] },
      plantings: [
        {
          ...of('shrubs', 'Shrubs', { kind: 'canopy', count: 9, diameter: 36 }, [
            { ...{ kind: 'dripline', flow: 0.6, spacing: 12 }, layout: { kind: 'loops', perPlant: 1 } },
          ]),
          shutOff: true,
        },
        {
          ...of('pots', 'Pots', { kind: 'canopy', count: 6, diameter: 18 }, [{ kind: 'solid' }]),
          container: { volume: 12.3, opening: 18 },
        },
        {
          ...of('baskets', 'Baskets', { kind: 'canopy', count: 2, diameter: 14 }, [
            { kind: 'point', flow: 0.5, count: 1 },
          ]),
          container: { volume: 2.5, opening: 14 },
        },
      ],
    },
  ],
});

const litres = (plan: Plan) =>
  computeSeason(plan).zones.map((zone) => Array.from({ length: 30 }, (_, week) => zoneFigure(zone, 'litres', week)));

// Each in a tab of its own: most of the time is waiting for the page.
describe.concurrent('from nothing to a season', () => {
  it.each(SCREENS)(
    'a garden of seven areas takes at most 60 actions with the %s at %i by %i',
    async (way, width, height) => {
      const page = await opened(way, width, height);
      const hands = new Hands(page, way);
      try {
        await build(page, hands);
        const plan = (await page.evaluate(() => startPage.planOf())) as Plan;
        expect(hands.actions).toBeLessThanOrEqual(MOST_ACTIONS);
        expect(plan.site.years).toBeDefined();
        expect(plan).toMatchObject(byHand(plan.site));
        expect(litres(plan)).toEqual(litres(byHand(plan.site)));
        expect(
          litres(plan)
            .flat()
            .some((each) => each > 0),
        ).toBe(true);
      } finally {
        await page.close();
      }
    },
    120_000,
  );
});
