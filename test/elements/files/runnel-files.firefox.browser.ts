import { expect } from 'chai';
import Papa from 'papaparse';
import { describeFault } from '../../../src/language/describe-fault.ts';
import { calendarWords } from '../../../src/language/en/calendar.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import { mixedGarden, oneBed, tomatoes, zone } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, quiet, until } from '../shared/on-page.ts';
import { all, button, buttonsOf, choose, filesPage, plain, reader, saved, say } from './files-page.ts';

/** The table as a spreadsheet reads it. */
const cellsOf = (text: string) => Papa.parse<string[]>(text.replace('\uFEFF', ''), { skipEmptyLines: true }).data;

describe('runnel-files', () => {
  afterEach(clearPage);

  it('opens a plan that is chosen, and lists what is wrong with one that is bad', async () => {
    const page = await filesPage();
    choose(page, say.open, new File(['{"format": "runnel-plan", "version": 1, "units": "us"}'], 'bad.json'));
    await until(() => page.plan.faults.length > 0, 'the file is refused');
    await quiet(page.plan);
    expect(page.plan.plan?.name).to.equal('Mixed garden');
    const faults = all(page, '.faults li').map(({ textContent }) => plain(textContent));
    expect(faults.length).to.equal(page.plan.faults.length);
    const words = page.plan.faults.map((fault) => describeFault(fault, readerFor(page.plan.store.view.locale, 'us')));
    for (const [index, { where, expected }] of words.entries()) {
      expect(faults[index]).to.contain(plain(where));
      expect(faults[index]).to.contain(plain(expected));
    }
    choose(page, say.open, new File([writePlan(oneBed())], 'one-bed.runnel.json'));
    await until(() => page.plan.plan?.name === 'One bed', 'the file is open');
    await quiet(page.plan);
    expect(all(page, '.faults')).to.deep.equal([]);
  });

  it('says what is different for a plan that an earlier version wrote', async () => {
    const page = await filesPage();
    const log = { weeks: { '2027-06-07': { rain: 1 } } };
    choose(page, say.open, new File([JSON.stringify({ ...oneBed({ log }), version: 1 })], 'one-bed.runnel.json'));
    await until(() => page.plan.plan?.name === 'One bed', 'the file is open');
    await quiet(page.plan);
    const told = all(page, '.migration li').map(({ textContent }) => plain(textContent));
    expect(told).to.contain('1 weekly rain total counts as read through the last day of the week.');
    choose(page, say.open, new File([writePlan(oneBed())], 'one-bed.runnel.json'));
    await until(() => page.plan.store.view.migration === undefined, 'the plan of today is open');
    await quiet(page.plan);
    expect(all(page, '.migration')).to.deep.equal([]);
  });

  it('does not repeat what was refused elsewhere', async () => {
    const page = await filesPage();
    expect(page.plan.openText('{')).to.equal(false);
    await quiet(page.plan);
    expect(page.plan.faults.length).to.equal(1);
    expect(all(page, '.faults')).to.deep.equal([]);
  });

  it('saves the plan as a file of its name', async () => {
    const page = await filesPage(mixedGarden({ name: 'Große Beete / 2027' }));
    const { name, text } = await saved(() => button(page, say.save).click());
    expect(name).to.equal('große-beete-2027.runnel.json');
    expect(page.plan.plan && text === writePlan(page.plan.plan)).to.equal(true);
  });

  it('writes the whole season: every figure of every zone and planting, by week', async () => {
    const page = await filesPage();
    expect(all<HTMLOptionElement>(page, '.season option').map(({ text }) => text)).to.deep.equal([
      say.extents.all,
      say.extents.volume.us,
      say.extents.minutes,
      say.extents.rain,
    ]);
    const { name, text } = await saved(() => button(page, say.saveTable).click());
    expect(name).to.equal('mixed-garden-season.csv');
    expect(text.slice(0, 5)).to.equal('\uFEFFZone');
    const [header = [], ...rows] = cellsOf(text);
    expect(header.slice(0, 5)).to.deep.equal(['Zone', 'Planting', 'Measure', 'Unit', '2027-04-05']);
    expect(header.length).to.equal(4 + 30 + 1);
    const names = rows.map(([of, planting]) => `${of}/${planting}`);
    // Rain and reference ET; of a zone seven figures, its state, where its run comes from and here a note; of a planting a state,
    // the width that an emitter wets, the depth of roots and that of a run.
    const counted = [...new Set(names)].map((row) => [row, names.filter((name) => name === row).length]);
    expect(Object.fromEntries(counted)).to.include({
      // Rain, reference ET, and where each comes from.
      '/': 4,
      'Beds/Tomatoes': 11,
      'Beds/Shrubs': 11,
      'Containers/Pots by the door': 11,
    });
    // Set by hand in the plan: 120 minutes in the week of 5 July.
    const minutes = rows.find(
      ([of, planting, measure]) => of === 'Beds' && planting === '' && measure === 'Minutes to run',
    );
    expect(minutes?.[header.indexOf('2027-07-05')]).to.equal('120');
  });

  it('writes one figure by zone where that is chosen', async () => {
    const page = await filesPage();
    const [choice] = all<HTMLSelectElement>(page, '.season select');
    if (choice === undefined) throw new Error('there is no choice');
    choice.value = 'minutes';
    choice.dispatchEvent(new Event('change'));
    await quiet(page.plan);
    const { text } = await saved(() => button(page, say.saveTable).click());
    expect(
      cellsOf(text)
        .slice(1)
        .map(([of, planting, measure]) => [of, planting, measure]),
    ).to.deep.equal([
      ['Beds', '', 'Minutes to run'],
      ['Containers', '', 'Minutes to run'],
    ]);
  });

  it('writes names that a spreadsheet would run, or a page would show, as names', async () => {
    // No name holds a tab or a line break; a text after blanks is read as a formula too.
    const names = ['=1+1', '+1', '-1', '@SUM(A1)', '=1 +1', '<img src=x onerror=alert(1)>'];
    const zones = names.map((name, at) =>
      zone({ id: `zone-${at}`, name, plantings: [tomatoes({ id: `tomatoes-${at}`, name })] }),
    );
    const page = await filesPage(mixedGarden({ zones, choices: {}, log: {} }));
    const { text } = await saved(() => button(page, say.saveTable).click());
    const written = cellsOf(text)
      .slice(1)
      .filter(([name]) => name !== '')
      .flatMap(([name = '', planting = '']) => (planting === '' ? [name] : [name, planting]));
    // Eleven rows of a zone with its name, and eleven of its planting with both.
    expect(written.length).to.equal(names.length * (11 + 2 * 11));
    expect(new Set(written.map((name) => name.replace(/^'/, '')))).to.deep.equal(new Set(names));
    for (const name of written) expect(name).not.to.match(/^[=+\-@\t\r\n]/);
  });

  it('opens the choice of paper, and prints the pages that are shown there', async () => {
    const page = await filesPage();
    button(page, say.print).click();
    const pages = () => all(page, 'dialog[open] iframe')[0] as HTMLIFrameElement | undefined;
    await until(() => (pages()?.contentDocument?.body.textContent ?? '').includes('Beds'), 'the pages are shown');
    const inside = pages()?.contentWindow ?? expect.fail('there are no pages');
    let printed = 0;
    inside.print = () => {
      printed++;
    };
    (all(page, 'dialog[open] [name=print]')[0] as HTMLElement).click();
    expect(printed).to.equal(1);
  });

  it('gives out and prints a plan that can only be looked at, and takes nothing in', async () => {
    const page = await filesPage(mixedGarden(), true);
    expect(buttonsOf(page)).to.deep.equal([
      say.save,
      say.print,
      calendarWords(reader.language).form.save,
      say.workbook.save,
      say.saveTable,
      say.review.open,
      say.nextYear.open,
    ]);
    expect(all(page, '[type=file], textarea, .drop')).to.deep.equal([]);
    expect(await accessibilityFaults(page.files)).to.deep.equal([]);
  });

  it('offers a plan without zones as a file all the same', async () => {
    const page = await filesPage(mixedGarden({ zones: [], choices: {}, log: {} }));
    expect(buttonsOf(page)).to.deep.equal([say.open, say.save]);
    expect(plain(page.files.shadowRoot?.textContent)).to.contain('This plan has no zones yet');
  });
});
