import '../../../src/elements/files/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelFiles } from '../../../src/elements/files/runnel-files.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { filesWords } from '../../../src/language/en/files.ts';
import { type Format, formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { html, onPage, quiet, until } from '../shared/on-page.ts';

export const reader = readerFor('en-GB', 'us');

/** What the element says on these pages, and what writes its figures. */
export const say = filesWords(reader.language);
export const format: Format = formatFor(reader);

export interface FilesPage {
  readonly plan: RunnelPlan;
  readonly files: RunnelFiles;
}

export async function filesPage(plan: Plan = mixedGarden(), readOnly = false): Promise<FilesPage> {
  const place = onPage(
    html`<runnel-plan locale="en-GB" .plan=${plan} ?read-only=${readOnly}><runnel-files></runnel-files></runnel-plan>`,
  );
  const element = place.querySelector('runnel-plan');
  const files = place.querySelector('runnel-files');
  if (element === null || files === null) throw new Error('the page is not there');
  await quiet(element);
  return { plan: element, files };
}

export const plain = (text: string | null | undefined): string =>
  (text ?? '')
    .replaceAll('\u2060', '')
    .replaceAll(/[\s\u00a0\u202f]+/g, ' ')
    .trim();

export function all<Found extends Element = HTMLElement>({ files }: FilesPage, selector: string): readonly Found[] {
  return [...(files.shadowRoot?.querySelectorAll<Found>(selector) ?? [])];
}

export const buttonsOf = (page: FilesPage): readonly string[] =>
  all(page, 'button').map(({ textContent }) => plain(textContent));

export function button(page: FilesPage, words: string): HTMLButtonElement {
  const found = all<HTMLButtonElement>(page, 'button').find(({ textContent }) => plain(textContent) === words);
  if (found === undefined) throw new Error(`there is no button ${words}: ${buttonsOf(page).join()}`);
  return found;
}

/** Chooses a file in the field behind the button with these words. */
export function choose(page: FilesPage, words: string, file: File): void {
  const field = button(page, words).nextElementSibling;
  if (!(field instanceof HTMLInputElement)) throw new Error('there is no field behind the button');
  const files = new DataTransfer();
  files.items.add(file);
  field.files = files.files;
  field.dispatchEvent(new Event('change'));
}

/** Hands a table over and waits until it is read. */
export async function takeUp(
  page: FilesPage,
  text: string | Uint8Array<ArrayBuffer>,
  name = 'table.csv',
): Promise<void> {
  choose(page, say.choose, new File([text], name));
  await read(page);
}

export async function read(page: FilesPage): Promise<void> {
  await quiet(page.plan);
  const isDone = () => refusal(page) !== '' || !['', say.reading].includes(status(page));
  await until(isDone, 'the file is read');
  await quiet(page.plan);
}

export const status = (page: FilesPage): string => plain(all(page, 'p[role=status]')[0]?.textContent);
export const refusal = (page: FilesPage): string => plain(all(page, '.refused')[0]?.textContent);
export const faultLines = (page: FilesPage): readonly string[] =>
  all(page, '.faults li').map(({ textContent }) => plain(textContent));
/** What would change, cell by cell; a row begins with the zone that it stands beneath, where there is one. */
export const preview = (page: FilesPage): readonly (readonly string[])[] =>
  all<HTMLTableSectionElement>(page, 'tbody').flatMap((body) => {
    const zone = body.querySelector('th');
    const rows = [...body.rows].filter((row) => !row.contains(zone));
    return rows.map(({ cells }) => [...(zone === null ? [] : [zone]), ...cells].map((cell) => plain(cell.textContent)));
  });

export interface Saved {
  readonly name: string;
  /** With the byte order mark, where there is one. */
  readonly text: string;
}

/** What is handed out as a file while `press` runs. */
export async function saved(press: () => void): Promise<Saved> {
  const links: HTMLAnchorElement[] = [];
  const { click } = HTMLAnchorElement.prototype;
  HTMLAnchorElement.prototype.click = function caught() {
    links.push(this);
  };
  try {
    press();
    await until(() => links.length > 0, 'a file is handed out');
  } finally {
    HTMLAnchorElement.prototype.click = click;
  }
  const [link] = links;
  const bytes = await (await fetch(link?.href ?? '')).arrayBuffer();
  return { name: link?.download ?? '', text: new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes) };
}
