import { expect } from 'chai';
import { calendarWords } from '../../../src/language/en/calendar.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, quiet, until } from '../shared/on-page.ts';
import { all, button, type FilesPage, filesPage, plain, saved } from './files-page.ts';

const { form: say } = calendarWords(readerFor('en-GB', 'us').language);

const entries = (text: string) => text.split('BEGIN:VEVENT').length - 1;

function field<Field extends HTMLElement>(page: FilesPage, label: string): Field {
  const found = all(page, '.calendar label').find(({ textContent }) => plain(textContent).startsWith(label));
  const control = found?.querySelector<Field>('select, input');
  if (control === null || control === undefined) throw new Error(`there is no field ${label}`);
  return control;
}

async function enter(page: FilesPage, label: string, value: string): Promise<void> {
  const control = field<HTMLInputElement | HTMLSelectElement>(page, label);
  control.value = value;
  control.dispatchEvent(new Event('change'));
  await quiet(page.plan);
}

const problem = (page: FilesPage) => plain(all(page, '.calendar [role=alert]')[0]?.textContent);

describe('the calendar of runnel-files', () => {
  afterEach(clearPage);

  it('is saved with what is chosen, and the plan keeps the time zone and the opening of the window', async () => {
    const page = await filesPage();
    await enter(page, say.timeZone, 'America/Los_Angeles');
    await enter(page, say.opensAt, '04:30');
    expect(page.plan.plan?.site.timeZone).to.equal('America/Los_Angeles');
    expect(page.plan.plan?.supply?.window?.opensAt).to.equal('04:30');
    expect(page.plan.plan?.supply?.window?.hoursPerDay).to.equal(mixedGarden().supply?.window?.hoursPerDay ?? 24);
    await enter(page, say.from, '8');
    await enter(page, say.through, '9');
    await enter(page, say.rings, 'quarter');
    const { name, text } = await saved(() => button(page, say.save).click());
    expect(name).to.equal('mixed-garden-watering.ics');
    expect(text.startsWith('BEGIN:VCALENDAR\r\n')).to.equal(true);
    expect(entries(text)).to.be.greaterThan(0);
    expect(text).to.contain('TRIGGER:-PT15M');
    // 4:30 in June in California.
    expect(text).to.match(/DTSTART:202706\d\dT113000Z/);
    expect(await accessibilityFaults(page.files)).to.deep.equal([]);
  });

  it('leaves out the zones that are not ticked, and says so where nothing is left', async () => {
    const page = await filesPage();
    await enter(page, say.from, '8');
    const whole = entries((await saved(() => button(page, say.save).click())).text);
    const boxes = all<HTMLInputElement>(page, '.calendar input[type=checkbox]');
    boxes[0]?.click();
    await quiet(page.plan);
    expect(entries((await saved(() => button(page, say.save).click())).text)).to.be.lessThan(whole);
    for (const box of all<HTMLInputElement>(page, '.calendar input[type=checkbox]')) if (box.checked) box.click();
    await quiet(page.plan);
    button(page, say.save).click();
    await until(() => problem(page) !== '', 'it says why nothing is saved');
    expect(problem(page)).to.equal(say.noZone);
    boxes[0]?.click();
    await enter(page, say.through, '2');
    button(page, say.save).click();
    await until(() => problem(page) !== '', 'it says why nothing is saved');
    expect(problem(page)).to.equal(say.weeksTurned);
  });

  it('changes nothing of a plan that can only be looked at', async () => {
    const page = await filesPage(mixedGarden(), true);
    const before = page.plan.plan;
    await enter(page, say.timeZone, 'Asia/Tokyo');
    await enter(page, say.opensAt, '05:30');
    await enter(page, say.from, '8');
    const { text } = await saved(() => button(page, say.save).click());
    expect(text).to.match(/DTSTART:2027\d{4}T203000Z/);
    expect(page.plan.plan).to.equal(before);
  });

  it('says that a time zone of the plan is not known, and takes another', async () => {
    const plan = mixedGarden();
    const page = await filesPage({ ...plan, site: { ...plan.site, timeZone: 'Mars/Olympus' } });
    expect(problem(page)).to.equal(say.unknownZone('Mars/Olympus'));
    await enter(page, say.timeZone, 'Europe/Berlin');
    expect(problem(page)).to.equal('');
  });
});
