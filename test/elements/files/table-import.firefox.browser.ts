import { sendKeys } from '@web/test-runner-commands';
import { expect } from 'chai';
import { writeXlsx } from 'hucre/xlsx';
import { isolated } from '../../../src/language/format/isolated.ts';
import { mixedGarden, zone } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, quiet } from '../shared/on-page.ts';
import {
  all,
  button,
  buttonsOf,
  faultLines,
  filesPage,
  format,
  plain,
  preview,
  read,
  refusal,
  say,
  status,
  takeUp,
} from './files-page.ts';

const MINUTES = 'Zone,2027-04-12,2027-07-05\nBeds,45,30\ncontainers,,20\n';

const summary = (kind: keyof typeof say.kinds, table: string, rows: number, changes: number): string =>
  plain(say.summary(format, say.kinds[kind], table, rows, changes));

describe('runnel-files, import', () => {
  afterEach(clearPage);

  it('shows what minutes would change, and changes nothing before that is asked for', async () => {
    const page = await filesPage();
    const before = page.plan.plan;
    await takeUp(page, MINUTES, 'minutes.csv');
    expect(status(page)).to.equal(plain(`${summary('minutes', '“minutes.csv”', 2, 3)} ${say.notYet}`));
    const rows = preview(page);
    expect(rows.map(([of, week, , then]) => [of, week, then])).to.deep.equal([
      ['Beds', '12 April 2027', '45 min'],
      ['Beds', '5 July 2027', '30 min'],
      ['Containers', '5 July 2027', '20 min'],
    ]);
    expect(rows[0]?.[2]).to.match(/^[\d.]+ min, computed$/);
    expect(rows[1]?.[2]).to.equal('120 min, set by hand');
    expect(page.plan.plan).to.equal(before);
    expect(await accessibilityFaults(page.files)).to.deep.equal([]);
  });

  it('takes them in as one step, by the keyboard, and says so', async () => {
    const page = await filesPage();
    const before = page.plan.plan;
    await takeUp(page, MINUTES, 'minutes.csv');
    button(page, say.apply).focus();
    await sendKeys({ press: 'Enter' });
    await quiet(page.plan);
    expect(page.plan.plan?.choices).to.deep.include({
      beds: {
        '2027-04-12': { minutes: 45 },
        '2027-07-05': { minutes: 30 },
        '2027-07-12': { openDays: { shrubs: 1 }, note: 'Heat is coming.' },
      },
    });
    expect(status(page)).to.equal(plain(say.applied(format, 3, '“minutes.csv”')));
    expect(preview(page)).to.deep.equal([]);
    // The keyboard is where the next table would be chosen.
    expect(plain(page.files.shadowRoot?.activeElement?.textContent)).to.equal(say.choose);
    button(page, say.undo).click();
    await quiet(page.plan);
    expect(page.plan.plan).to.equal(before);
    expect(page.plan.store.view.canUndo).to.equal(false);
    expect(status(page)).to.equal(plain(say.undone(format, 3)));
  });

  // By hand: 43.5 min on three days are 14.5 each; of 14 and 15 the longer, 45 in the week.
  it('names minutes that the timer cannot be set to, with what they become, before and after, and takes them back', async () => {
    const page = await filesPage();
    const before = page.plan.plan;
    await takeUp(page, 'Zone,2027-04-12,2027-07-05\nBeds,43.5,30\n', 'minutes.csv');
    expect(status(page)).to.contain(plain(say.rounded(format, 1)));
    const why = plain(say.roundedFrom(format, '43.5 min', { stepMinutes: 1, days: 3, cycles: 1 }));
    expect(preview(page).map((cells) => cells.at(-1))).to.deep.equal(['45 min', why, '30 min']);
    button(page, say.apply).click();
    await quiet(page.plan);
    expect(page.plan.plan?.choices?.['beds']?.['2027-04-12']).to.deep.equal({ minutes: 45 });
    button(page, say.undo).click();
    await quiet(page.plan);
    expect(page.plan.plan).to.equal(before);
  });

  it('converts rain that is in another unit, by its heading or by a choice', async () => {
    const page = await filesPage();
    await takeUp(page, 'Date,Rain (mm)\n2027-04-20,12.7\n2027-05-01,25.4\n', 'gauge.csv');
    expect(preview(page)).to.deep.equal([
      ['20 April 2027', '0.4 in', '0.5 in'],
      ['1 May 2027', say.notObserved, '1 in'],
    ]);
    expect(all(page, '.units')).to.deep.equal([]);
    expect(plain(all(page, '.preview')[0]?.textContent)).to.contain(say.converted('mm', 'inches'));

    await takeUp(page, 'Date,Rain\n2027-05-01,25.4\n', 'gauge.csv');
    expect(preview(page)).to.deep.equal([['1 May 2027', say.notObserved, '25.4 in']]);
    const [units] = all<HTMLSelectElement>(page, '.units select');
    if (units === undefined) throw new Error('the units are not asked for');
    units.value = 'metric';
    units.dispatchEvent(new Event('change'));
    await quiet(page.plan);
    expect(preview(page)).to.deep.equal([['1 May 2027', say.notObserved, '1 in']]);
    button(page, say.apply).click();
    await quiet(page.plan);
    expect(page.plan.plan?.log?.days?.['2027-05-01']).to.deep.equal({ rain: 1, source: 'file' });
  });

  it('says how a table is read, and asks where there are two readings', async () => {
    const page = await filesPage();
    await takeUp(page, 'Date;Rain\n05/06/2027;0,5\n06/06/2027;0,2\n');
    expect(status(page)).to.contain(plain(say.twoReadings('“table.csv”')));
    expect(preview(page)).to.deep.equal([]);
    expect(buttonsOf(page)).not.to.include(say.apply);
    expect(await accessibilityFaults(page.files)).to.deep.equal([]);
    const days = all<HTMLSelectElement>(page, '.units select').find(({ options }) => options.length === 3);
    if (days === undefined) throw new Error('the order of days is not asked for');
    expect(days.value).to.equal('');
    days.value = 'day-month-year';
    days.dispatchEvent(new Event('change'));
    await quiet(page.plan);
    const { separators, decimals, days: orders, readAs } = say.form;
    const told = readAs([separators[';'], decimals[','], orders['day-month-year']]);
    expect(plain(all(page, '.preview')[0]?.textContent)).to.contain(told);
    expect(preview(page)).to.deep.equal([
      ['5 June 2027', say.notObserved, '0.5 in'],
      ['6 June 2027', say.notObserved, '0.2 in'],
    ]);
  });

  it('takes daily weather in, reading by reading', async () => {
    const page = await filesPage();
    await takeUp(page, 'day;low;high;rain\n2027-05-01;50;71;\n2026-05-01;50;71;1\n');
    expect(status(page)).to.contain(summary('weather', '“table.csv”', 2, 2));
    expect(status(page)).to.contain(plain(say.outside(format, 1)));
    expect(preview(page)).to.deep.equal([
      ['1 May 2027', say.readings.minTemperature, say.notObserved, '50 °F'],
      ['1 May 2027', say.readings.maxTemperature, say.notObserved, '71 °F'],
    ]);
  });

  it('names each row that cannot be read, and takes the rest only after a yes', async () => {
    const page = await filesPage();
    await takeUp(page, 'Date,Rain\n2027-05-01,0.5\n2027-05-02,lots\n2027-02-30,1\n2027-05-03,0.2\n');
    expect(faultLines(page)).to.deep.equal([
      'Line 3, “lots”: use rain from 0 to 78 in.',
      'Line 4, “2027-02-30”: this is no day. Write days alike, best as year-month-day, such as 2027-04-05.',
    ]);
    expect(page.plan.plan?.log?.days?.['2027-05-01']).to.equal(undefined);
    expect(await accessibilityFaults(page.files)).to.deep.equal([]);
    button(page, say.applyRest).click();
    await quiet(page.plan);
    const { '2027-05-01': first, '2027-05-03': third, '2027-05-02': bad } = page.plan.plan?.log?.days ?? {};
    expect([first, third, bad]).to.deep.equal([
      { rain: 0.5, source: 'file' },
      { rain: 0.2, source: 'file' },
      undefined,
    ]);
  });

  it('keeps nothing when it is cancelled', async () => {
    const page = await filesPage();
    const before = page.plan.plan;
    await takeUp(page, MINUTES);
    button(page, say.cancel).click();
    await quiet(page.plan);
    expect(page.plan.plan).to.equal(before);
    expect(preview(page)).to.deep.equal([]);
    expect(status(page)).to.equal('');
    expect(buttonsOf(page)).not.to.include(say.apply);
  });

  it('says always what would change in the plan as it stands', async () => {
    const page = await filesPage();
    await takeUp(page, MINUTES);
    page.plan.edit({ type: 'set-minutes', zone: 'beds', week: '2027-04-12', minutes: 45 });
    await quiet(page.plan);
    expect(preview(page).map(([of, week]) => [of, week])).to.deep.equal([
      ['Beds', '5 July 2027'],
      ['Containers', '5 July 2027'],
    ]);
  });

  it('offers nothing to take in where nothing would change', async () => {
    const page = await filesPage();
    await takeUp(page, 'Zone,2027-07-05\nBeds,120\n');
    expect(status(page)).to.contain(say.nothing);
    expect(buttonsOf(page)).to.include(say.close).and.not.to.include(say.apply);
  });

  it('takes a table that is dropped, and one that is pasted', async () => {
    const page = await filesPage();
    const [drop] = all(page, '.drop');
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([MINUTES], 'dropped.csv'));
    const over = new DragEvent('dragover', { dataTransfer, cancelable: true });
    drop?.dispatchEvent(over);
    expect(over.defaultPrevented).to.equal(true);
    drop?.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
    await read(page);
    expect(status(page)).to.contain(summary('minutes', '“dropped.csv”', 2, 3));
    expect(drop?.className).to.equal('drop');

    const [field] = all<HTMLTextAreaElement>(page, 'textarea');
    if (field === undefined) throw new Error('there is no field to paste into');
    field.value = 'Date\tRain\n2027-05-01\t0.5\n';
    button(page, say.read).click();
    await read(page);
    expect(status(page)).to.contain(summary('rain', say.pastedTable, 1, 1));
  });

  it('takes the first sheet of a workbook that holds a table, with the same preview and undo', async () => {
    const page = await filesPage();
    const workbook = await writeXlsx({
      sheets: [
        { name: 'About', rows: [['Our garden'], ['Read on Saturdays']] },
        {
          name: 'Gauge',
          rows: [
            ['Date', 'Rain (in)'],
            [new Date(Date.UTC(2027, 4, 1)), 0.5],
            [new Date(Date.UTC(2027, 4, 2)), 'lots'],
          ],
        },
      ],
    });
    await takeUp(page, new Uint8Array(workbook), 'gauge.xlsx');
    expect(status(page)).to.contain(summary('rain', '“gauge.xlsx”', 2, 1));
    expect(faultLines(page).length).to.equal(1);
    expect(all(page, '.preview > p').length).to.equal(0);
    button(page, say.applyRest).click();
    await quiet(page.plan);
    expect(page.plan.plan?.log?.days?.['2027-05-01']?.rain).to.equal(0.5);
    expect(page.plan.plan?.log?.days?.['2027-05-02']).to.equal(undefined);
    button(page, say.undo).click();
    await quiet(page.plan);
    expect(page.plan.plan?.log?.days?.['2027-05-01']).to.equal(undefined);
  });

  const bytes = (...values: number[]) => new Uint8Array(values);
  const others: readonly (readonly [string, string | Uint8Array<ArrayBuffer>, string])[] = [
    ['an empty file', '', say.refused.empty('“other.file”')],
    ['a plan', '{"format": "runnel-plan"}', say.refused.plan('“other.file”')],
    ['a workbook', bytes(0x50, 0x4b, 0x03, 0x04, 0), say.refused.workbook('“other.file”')],
    ['a picture', bytes(0x89, 0x50, 0x4e, 0x47, 0, 0), say.refused.other('“other.file”')],
    ['a web page', '<!doctype html><p>Zone', say.refused.other('“other.file”')],
    ['another table', 'Plant,Price\nTomato,3\n', say.unknown(format, '“other.file”', ['Plant', 'Price'])],
    ['a table of nothing', ',\n,\n', say.noHeadings('“other.file”')],
  ];
  for (const [what, content, words] of others) {
    it(`refuses ${what} and says what to do`, async () => {
      const page = await filesPage();
      const before = page.plan.plan;
      await takeUp(page, content, 'other.file');
      expect(refusal(page)).to.equal(plain(`${words} ${say.notImported}`));
      expect(all(page, '.preview')).to.deep.equal([]);
      expect(page.plan.plan).to.equal(before);
    });
  }

  it('finds a zone by its name in the letters of an older spreadsheet', async () => {
    const page = await filesPage(mixedGarden({ zones: [zone({ name: 'Große Beete' })], choices: {}, log: {} }));
    const latin = [...'Zone;2027-04-12\nGro\u00dfe Beete;45\n'].map((letter) => letter.charCodeAt(0));
    await takeUp(page, bytes(...latin));
    expect(preview(page)[0]?.[0]).to.equal('Große Beete');
    const utf16 = new Uint8Array(new Uint16Array([0xfeff, ...latin]).buffer);
    await takeUp(page, utf16);
    expect(preview(page)[0]?.[0]).to.equal('Große Beete');
  });

  it('shows markup in a file and in a zone as text', async () => {
    const name = '<img src=x onerror="document.title=\'run\'">';
    const page = await filesPage(mixedGarden({ zones: [zone({ name })], choices: {}, log: {} }));
    await takeUp(page, `Zone,2027-04-12,2027-04-19\n"${name.replaceAll('"', '""')}",45,<b>x</b>\n`, '<i>x</i>.csv');
    expect(preview(page)[0]?.[0]).to.equal(isolated(name));
    expect(faultLines(page)[0]).to.contain('“<b>x</b>”');
    expect(status(page)).to.contain(`“${isolated('<i>x</i>.csv')}”`);
    expect(all(page, 'img, b, i')).to.deep.equal([]);
  });

  it('lets go of what it shows when the plan can only be looked at from then on', async () => {
    const page = await filesPage();
    await takeUp(page, MINUTES);
    page.plan.readOnly = true;
    await quiet(page.plan);
    expect(all(page, '.preview, .drop')).to.deep.equal([]);
  });
});
