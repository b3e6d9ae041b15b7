import { expect } from 'chai';
import { sizes } from '../../../src/language/en/sizes.ts';
import { start as say } from '../../../src/language/en/start.ts';
import { clearPage, quiet, until } from '../shared/on-page.ts';
import { startOnPage } from './start-page.ts';

async function atPlants() {
  const { plan, element, root, named, press } = await startOnPage();
  const title = () => root.querySelector('#step-title')?.textContent;
  const type = async (name: string, text: string) => {
    await until(() => named(name) !== null, `there is ${name}`);
    const input = named(name) as HTMLInputElement;
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await quiet(element);
  };
  await press('new-plan');
  for (const step of ['where', 'water', 'timer'] as const) {
    await until(() => title() === say[step].title, `the step ${step} is there`);
    await press('next');
  }
  await until(() => named('row-size') !== null, 'the row is there');
  const plantings = () => plan.plan?.zones.flatMap((zone) => zone.plantings.map(({ name, extent }) => [name, extent]));
  return { root, press, title, type, plantings };
}

describe('a row of a planting that nobody added', () => {
  afterEach(clearPage);

  it('is added on the way to the next step', async () => {
    const { press, title, type, plantings } = await atPlants();
    await type('row-name', 'Herbs');
    await type('row-size', '4 x 8 ft');
    await press('next');
    await until(() => title() === say.lines.title, 'the step of the lines is there');
    expect(plantings()).to.deep.equal([['Herbs', { kind: 'bed', length: 4, width: 8 }]]);
  });

  it('stays in view with the reason where its size cannot be read, and is passed by with Skip', async () => {
    const { root, press, title, type, plantings } = await atPlants();
    await type('row-name', 'Beds');
    await type('row-size', '3 beds 4 x 8 ft');
    await press('next');
    expect(title()).to.equal(say.plants.title);
    expect(root.querySelector('[role=alert]:not([hidden])')?.textContent).to.equal(sizes.notRead);
    await press('skip');
    await until(() => title() === say.lines.title, 'the step of the lines is there');
    expect(plantings()).to.deep.equal([]);
  });
});
