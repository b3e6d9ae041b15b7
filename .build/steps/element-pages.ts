import type { ElementDeclaration, EventDeclaration, Member } from './elements-manifest.ts';

/** The reference page of one element, as Markdown. */
export function elementPage(element: ElementDeclaration, events: ReadonlyMap<string, EventDeclaration>): string {
  const { tagName, name, summary, description, slots = [], cssParts = [], cssProperties = [] } = element;
  const folder = tagName.replace('runnel-', '');
  return [
    `# \`${tagName}\``,
    summary,
    description,
    `\`runnel-kit/elements/${folder}/define\` defines it; \`runnel-kit/elements/${folder}\` has its class \`${name}\` alone. ` +
      'This page is written by the build from the comment of the class.',
    '## Example',
    example(element),
    'Or from a module:',
    script(element, events),
    ...attributeTable(element),
    ...propertyTable(element),
    ...methodList(element),
    ...eventTable(element, events),
    ...table(
      'Slots',
      ['Slot', 'What goes there'],
      slots.map((slot) => [slot.name === '' ? 'the default one' : code(slot.name), text(slot.description)]),
    ),
    ...table(
      'Parts',
      ['Part', 'What it is'],
      cssParts.map((part) => [code(part.name), text(part.description)]),
    ),
    ...table(
      'Custom properties',
      ['Property', 'Default', 'What it sets'],
      cssProperties.map((each) => [code(each.name), code(each.default), text(each.description)]),
    ),
  ]
    .filter((part) => part !== '')
    .join('\n\n')
    .concat('\n');
}

const text = (value = ''): string => value.replaceAll(/\s+/g, ' ').replaceAll('|', '\\|').trim();

const code = (value: string | undefined): string =>
  value === undefined || value === "''" || value === '' ? '' : `\`${text(value)}\``;

const table = (title: string, head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] =>
  rows.length === 0
    ? []
    : [`## ${title}`, [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n')];

/** An element with an address of its own stands by itself, any other in a plan. */
function example({ tagName, attributes = [] }: ElementDeclaration): string {
  const has = (name: string): boolean => attributes.some((each) => each.name === name);
  const key = has('license-key') ? ' license-key="non-commercial-and-evaluation"' : '';
  const inside = tagName === 'runnel-plan' ? '\n  <runnel-week></runnel-week>\n' : '';
  const lines = has('src')
    ? `<${tagName} src="our-garden.runnel.json"${key}>${inside}</${tagName}>`
    : `<runnel-plan src="our-garden.runnel.json">\n  <${tagName}${key}></${tagName}>\n</runnel-plan>`;
  return `\`\`\`html\n<script type="module" src="runnel/runnel.js"></script>\n${lines}\n\`\`\``;
}

/** The first event, heard. */
function script(
  { tagName, events: own = [] }: ElementDeclaration,
  events: ReadonlyMap<string, EventDeclaration>,
): string {
  const [event] = own;
  const [field] = fieldsOf(events.get(event?.type?.text ?? ''));
  const imports = `import 'runnel-kit/elements/${tagName.replace('runnel-', '')}/define';`;
  const listener =
    event === undefined || field === undefined
      ? ''
      : `\n\ndocument.querySelector('${tagName}')?.addEventListener('${event.name}', ({ ${field.name} }) => {\n  console.log(${field.name});\n});`;
  return `\`\`\`js\n${imports}${listener}\n\`\`\``;
}

const attributeTable = ({ attributes = [] }: ElementDeclaration): readonly string[] =>
  table(
    'Attributes',
    ['Attribute', 'Property', 'Type', 'Default', 'Meaning'],
    attributes.map((each) => [
      code(each.name),
      code(each.fieldName),
      code(each.type?.text),
      code(each.default),
      text(each.description),
    ]),
  );

const propertyTable = ({ members = [] }: ElementDeclaration): readonly string[] =>
  table(
    'Properties without an attribute',
    ['Property', 'Type', 'Meaning'],
    members
      .filter(({ kind, attribute }) => kind === 'field' && attribute === undefined)
      .map((each) => [
        code(each.name),
        code(each.type?.text ?? each.default?.match(/^new (\w+)\(/)?.[1]),
        text(`${each.readonly === true ? 'To be read only. ' : ''}${each.description ?? ''}`),
      ]),
  );

function methodList({ members = [] }: ElementDeclaration): readonly string[] {
  const methods = members.filter(({ kind }) => kind === 'method');
  return table(
    'Methods',
    ['Method', 'What it does'],
    methods.map((each) => [code(signature(each)), text(each.description)]),
  );
}

const signature = ({ name, parameters = [], return: result }: Member): string =>
  `${name}(${parameters.map((each) => `${each.name}: ${each.type?.text}`).join(', ')}): ${result?.type?.text ?? 'void'}`;

const eventTable = (
  { events: own = [] }: ElementDeclaration,
  events: ReadonlyMap<string, EventDeclaration>,
): readonly string[] =>
  table(
    'Events',
    ['Event', 'Class', 'Carries', 'When'],
    own.map(({ name, type, description }) => [
      code(name),
      code(type?.text),
      fieldsOf(events.get(type?.text ?? ''))
        .map((field) => code(`${field.name}: ${field.type?.text}`))
        .join(', '),
      text(description),
    ]),
  );

const fieldsOf = (event: EventDeclaration | undefined): readonly Member[] =>
  (event?.members ?? []).filter(({ kind, static: isStatic }) => kind === 'field' && isStatic !== true);
