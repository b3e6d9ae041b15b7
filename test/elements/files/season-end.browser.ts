import { expect } from 'chai';
import { RunnelYearEvent } from '../../../src/elements/shared/events/year-event.ts';
import { nextYearWords } from '../../../src/language/en/next-year.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, quiet, until } from '../shared/on-page.ts';
import { all, button, type FilesPage, filesPage, plain, reader, saved, say } from './files-page.ts';

const words = nextYearWords(reader.language);

async function begun(plan?: Plan): Promise<FilesPage> {
  const page = await filesPage(plan);
  button(page, say.nextYear.open).click();
  await until(() => all(page, '.next-year').length > 0, 'the form of next year is there');
  return page;
}

async function fate(page: FilesPage, planting: string, value: string): Promise<void> {
  const field = all<HTMLSelectElement>(page, '.fates select').find((each) =>
    plain(each.getAttribute('aria-label')).includes(planting),
  );
  if (field === undefined) throw new Error(`there is no field for ${planting}`);
  field.value = value;
  field.dispatchEvent(new Event('change'));
  await quiet(page.plan);
}

function planIn(text: string): Plan {
  const read = readPlan(text);
  if (!read.ok) throw new Error('the plan is not read');
  return read.plan;
}

describe('the end of a season in runnel-files', () => {
  afterEach(clearPage);

  it('makes next year’s plan of what is said of each planting, and leaves this year’s as it is', async () => {
    const page = await begun();
    const before = page.plan.plan;
    await fate(page, 'Shrubs', 'ends');
    await fate(page, 'Tomatoes', `>${mixedGarden().zones[1]?.id ?? ''}`);
    const name = all<HTMLInputElement>(page, '[name=new-planting]')[0];
    if (name === undefined) throw new Error('there is no field for a new planting');
    name.value = 'Basil';
    button(page, words.addOne).click();
    await quiet(page.plan);
    expect(await accessibilityFaults(page.files)).to.deep.equal([]);
    const { name: file, text } = await saved(() => button(page, words.save).click());
    expect(file).to.equal('mixed-garden.runnel.json');
    const next = planIn(text);
    expect(next.season.firstDay).to.equal('2028-04-03');
    expect(next.zones.map(({ plantings }) => plantings.map((planting) => planting.name))).to.deep.equal([
      ['Basil'],
      [...(mixedGarden().zones[1]?.plantings.map((planting) => planting.name) ?? []), 'Tomatoes'],
    ]);
    expect(next.log).to.equal(undefined);
    expect(page.plan.plan).to.equal(before);
  });

  it('shows what the log teaches, and uses it only where that is ticked', async () => {
    const runs = Object.fromEntries(
      Array.from({ length: 8 }, (_, week) => [
        new Date(Date.UTC(2027, 5, 7 + 7 * week)).toISOString().slice(0, 10),
        300,
      ]),
    );
    const page = await begun(mixedGarden({ log: { runs: { beds: runs } } }));
    const box = () => all<HTMLInputElement>(page, '.learned input')[0];
    expect(box()?.checked).to.equal(false);
    expect(planIn((await saved(() => button(page, words.save).click())).text).zones[0]?.application).to.equal(
      undefined,
    );
    box()?.click();
    await quiet(page.plan);
    const used = planIn((await saved(() => button(page, words.save).click())).text).zones[0]?.application;
    expect(used?.kind).to.equal('efficiency');
  });

  it('says what a season cannot be, and makes no plan of it', async () => {
    const page = await begun();
    const weeks = all<HTMLInputElement>(page, '.next-year [type=number]')[0];
    if (weeks === undefined) throw new Error('there is no field for weeks');
    weeks.value = '500';
    weeks.dispatchEvent(new Event('change'));
    await quiet(page.plan);
    button(page, words.save).click();
    await quiet(page.plan);
    expect(all(page, '.next-year .faults li').length).to.equal(1);
  });

  it('saves a workbook, and shows the review on paper', async () => {
    const page = await filesPage();
    const { name, text } = await saved(() => button(page, say.workbook.save).click());
    expect(name).to.equal('mixed-garden-season.xlsx');
    expect(text.startsWith('PK')).to.equal(true);
    button(page, say.review.open).click();
    const inside = () => (all(page, 'dialog[open] iframe')[0] as HTMLIFrameElement | undefined)?.contentDocument;
    await until(() => (inside()?.querySelectorAll('.review.row').length ?? 0) > 3, 'the review is there');
    expect(plain(inside()?.body.textContent)).to.contain('Days short');
    (all(page, 'dialog[open] [name=close]')[0] as HTMLElement).click();
  });

  it('reviews the plan’s own season while another year is shown', async () => {
    const page = await filesPage();
    const inside = () => (all(page, 'dialog[open] iframe')[0] as HTMLIFrameElement | undefined)?.contentDocument;
    const review = async (): Promise<string> => {
      button(page, say.review.open).click();
      await until(() => (inside()?.querySelectorAll('.review.row').length ?? 0) > 3, 'the review is there');
      const rows = [...(inside()?.querySelectorAll('.facts, .review.row') ?? [])];
      (all(page, 'dialog[open] [name=close]')[0] as HTMLElement).click();
      return plain(rows.map(({ textContent }) => textContent).join(' '));
    };
    const own = await review();
    const { season } = page.plan;
    page.files.dispatchEvent(new RunnelYearEvent(0));
    await until(() => page.plan.season !== season, 'the year is shown');
    expect(await review()).to.equal(own);
  });
});
