/** Programs that a user of the package could write: what they do right compiles, and each wrong line is refused. */

/** By the package's paths, in TypeScript. */
export const TYPED_USES = `
import { RunnelEditEvent, type Edit, type Selection } from 'runnel-kit';
import { RunnelWeek } from 'runnel-kit/elements/week';
import { runSeason, zoneWeek } from 'runnel-kit/engine';
import { type CsvChoice, seasonToCsv } from 'runnel-kit/exchange';
import { describeEdit, en, readerFor, registerLanguage, type Words } from 'runnel-kit/language';
import {
  applyEdit,
  emptyPlan,
  fromSi,
  gardenOf,
  readPlan,
  toSi,
  tryEdit,
  type Plan,
  type Quantity,
  type UnitSystem,
} from 'runnel-kit/plan';
import { SeasonSheet } from 'runnel-kit/sheet';

// Plans and edits
const edit: Edit = { type: 'set-minutes', zone: 'beds', week: '2027-07-12', minutes: 30 };
const free: Edit = { type: 'set-minutes', zone: 'beds', week: '2027-07-12', minutes: undefined };
// @ts-expect-error minutes are a number
const text: Edit = { type: 'set-minutes', zone: 'beds', week: '2027-07-12', minutes: '30' };
// @ts-expect-error there is no such edit
const unknown: Edit = { type: 'set-hours', zone: 'beds', week: '2027-07-12', hours: 1 };
// @ts-expect-error an edit of minutes names its week
const incomplete: Edit = { type: 'set-minutes', zone: 'beds', minutes: 30 };
// @ts-expect-error a plan has one of two unit systems
const units: Edit = { type: 'convert-units', units: 'imperial' };
void [free, text, unknown, incomplete, units];

const read = readPlan('{}');
// @ts-expect-error whether it could be read has to be asked first
void read.plan;
declare const plan: Plan;
// @ts-expect-error a plan is never changed in place
plan.name = 'another';
const next: Plan = applyEdit(plan, edit);
const tried = tryEdit(next, edit);
if (!tried.ok) for (const { path, code, values } of tried.faults) console.log(path, code, values.found);

// The calculation and its units
const season = runSeason(gardenOf(plan));
// @ts-expect-error a plan is no garden
runSeason(plan);
const [zone] = season.zones;
if (zone !== undefined) {
  const { minutes, litres } = zoneWeek(zone, 2);
  const gallons: number = fromSi(litres, 'volume', 'us');
  void [minutes, gallons];
  // @ts-expect-error there is no quantity of that name
  fromSi(litres, 'gallons', 'us');
  // @ts-expect-error there is no unit system of that name
  toSi(1, 'volume', 'gal');
  // @ts-expect-error a number is converted and no text
  toSi('1', 'volume', 'us');
  // @ts-expect-error a week is told by its number
  zoneWeek(zone, '2027-07-12');
}
const quantity: Quantity = 'pressure';
const system: UnitSystem = 'metric';
void [quantity, system];

// From and to files
const choice: CsvChoice = { units: 'us', measures: ['volume', 'rain'] };
const csv: string = seasonToCsv(season, choice);
// @ts-expect-error there is no measure of that name
seasonToCsv(season, { units: 'us', measures: ['hours'] });
void csv;

// Languages
registerLanguage('es', () => ({ ...en, planner: { ...en.planner, undo: 'Deshacer' } }));
registerLanguage('es', async () => en);
// @ts-expect-error a language says all that English says
registerLanguage('es', () => ({ planner: en.planner }));
// @ts-expect-error there is no such message
const again = { ...en, planner: { ...en.planner, again: 'Otra vez' } } satisfies Words;
const label: string = describeEdit(plan, edit, readerFor('es', 'us'));
void [again, label];

// The sheet
const sheet = new SeasonSheet({ plan, season, locale: 'en-US', readOnly: false });
// @ts-expect-error a sheet shows one of its measures
sheet.show({ measure: 'hours' });

// Elements
const week: RunnelWeek = document.createElement('runnel-week');
week.today = '2027-07-12';
// @ts-expect-error a day is year-month-day as text
week.today = new Date();
const holder = document.createElement('runnel-plan');
holder.plan = emptyPlan({ name: 'Allotment', units: 'us', firstDay: '2027-04-05', weeks: 30 });
const answer = holder.edit(edit);
if (answer.ok) console.log(answer.plan.name, answer.changed);
else for (const { path, code } of answer.faults) console.log(path, code);
// @ts-expect-error an answer has either the plan or the faults
console.log(answer.faults);
// @ts-expect-error a plan comes as one and not as the function that makes it
holder.plan = emptyPlan;
// @ts-expect-error an edit has a type
holder.edit({ minutes: 30 });
// @ts-expect-error a season is computed and not set
holder.season = season;
const selection: Selection = { zone: 'beds', week: 3 };
holder.select(selection);
// @ts-expect-error a week is a number from 0
holder.select({ week: '2027-07-12' });

// Events
holder.addEventListener('runnel-change', ({ plan, cause, documentId }) => console.log(plan.name, cause, documentId + 1));
window.addEventListener('runnel-select', (event) => console.log(event.selection.zone));
week.dispatchEvent(new RunnelEditEvent(edit));
// @ts-expect-error an event of an edit carries one
new RunnelEditEvent('set-minutes');
// @ts-expect-error the event of a selection carries no edit
holder.addEventListener('runnel-select', ({ edit }) => console.log(edit));
`;

/** A JSX framework in small, in the shape in which React declares its types. */
export const TINY_JSX = {
  'node_modules/tiny-jsx/package.json':
    '{ "name": "tiny-jsx", "version": "1.0.0", "types": "index.d.ts", "exports": { ".": "./index.d.ts", "./jsx-runtime": "./jsx-runtime.d.ts" } }',
  'node_modules/tiny-jsx/index.d.ts': `
export interface HTMLAttributes<T> { className?: string | undefined; onClick?: ((event: { currentTarget: T }) => void) | undefined; children?: unknown }
export interface RefAttributes<T> { ref?: ((element: T | null) => void) | undefined }
export namespace JSX {
  type Element = object;
  interface IntrinsicElements { p: HTMLAttributes<HTMLParagraphElement> }
}
`,
  'node_modules/tiny-jsx/jsx-runtime.d.ts': `
import type { JSX as Own } from 'tiny-jsx';
export namespace JSX {
  type Element = Own.Element;
  interface IntrinsicElements extends Own.IntrinsicElements {}
}
export function jsx(type: unknown, props: unknown): Own.Element;
export const jsxs: typeof jsx;
`,
};

/** In JSX, once README's lines have merged the elements into the framework's. */
export const JSX_USES = `
export const right = (
  <runnel-plan src="our-garden.runnel.json" readOnly className="garden" onrunnel-change={({ season }) => console.log(season.zones.length)}>
    <runnel-week today="2027-07-12" onrunnel-edit={({ edit }) => console.log(edit.type)} />
    <runnel-grid license-key="non-commercial-and-evaluation" measure="minutes" ref={(grid) => grid?.focus()} />
    <p>Water early.</p>
  </runnel-plan>
);
// @ts-expect-error there is no measure of that name
export const measure = <runnel-grid measure="hours" />;
// @ts-expect-error there is no element of that name
export const lawn = <runnel-lawn />;
// @ts-expect-error there is no property of that name
export const color = <runnel-week colour="green" />;
// @ts-expect-error no event of the kit is one of the mouse
export const mouse = <runnel-week onrunnel-edit={(event: MouseEvent) => console.log(event.button)} />;
// @ts-expect-error a plan comes as one and not as a text
export const text = <runnel-plan plan="{}" />;
// @ts-expect-error an attribute that is there holds, whatever its text
export const writable = <runnel-plan read-only={false} />;
`;
