import type { ElementDeclaration } from './elements-manifest.ts';

const OPENING = `/**
 * The elements for JSX, types alone. Written by the build from the class comments: whoever changes this file changes the
 * comments.
 *
 * \`\`\`ts
 * import type { HTMLAttributes, RefAttributes } from 'react';
 * import type { RunnelIntrinsicElements } from 'runnel-kit/jsx';
 *
 * type Common = HTMLAttributes<HTMLElement> & RefAttributes<HTMLElement>;
 * declare module 'react' {
 *   namespace JSX {
 *     interface IntrinsicElements extends RunnelIntrinsicElements<Common> {}
 *   }
 * }
 * \`\`\`
 *
 * The same with Preact: \`HTMLAttributes<HTMLElement>\` from \`preact\`, and \`declare module 'preact'\`. An event is heard by its
 * name after \`on\`, \`onrunnel-change={(event) => …}\`, as React does it from version 19 on, and Preact.
 */
`;

const COMMON = `/** What any element takes, where no type of the framework's own is given for it. */
export interface RunnelCommonAttributes {
  id?: string | undefined;
  class?: string | undefined;
  className?: string | undefined;
  slot?: string | undefined;
  title?: string | undefined;
  lang?: string | undefined;
  dir?: 'ltr' | 'rtl' | 'auto' | undefined;
  hidden?: boolean | undefined;
  style?: string | object | undefined;
  key?: string | number | null | undefined;
  ref?: unknown;
  children?: unknown;
}
`;

/**
 * The text of web-types/jsx.d.ts: for each element the properties that can be set, the attributes that are spelled otherwise,
 * and the events.
 */
export function jsxTypes(elements: readonly ElementDeclaration[]): string {
  const body = elements.map(elementTypes).join('');
  const events = new Set(elements.flatMap((element) => (element.events ?? []).map(({ type }) => type?.text ?? '')));
  const modules = [
    ...elements.map(({ name, tagName }) => ({ name, module: `${tagName.replace('runnel-', '')}/${tagName}` })),
    ...[...events].map((name) => ({ name, module: `shared/events/${fileOfEvent(name)}` })),
  ];
  const imports = modules
    .filter(({ name }) => new RegExp(`\\b${name}\\b`).test(body))
    .map(({ name, module }) => `import type { ${name} } from '../dist/elements/${module}.js';\n`);
  return [
    OPENING,
    ...imports,
    `\n${COMMON}\n`,
    '/** The elements by their tags, to be merged into the interface of that name which a JSX framework has. */\n',
    `export interface RunnelIntrinsicElements<Common = RunnelCommonAttributes> {\n${body}}\n`,
  ].join('');
}

/** `RunnelEditEvent` lies in `edit-event`. */
const fileOfEvent = (name: string): string =>
  name
    .replace('Runnel', '')
    .replaceAll(/(?<=[a-z])(?=[A-Z])/g, '-')
    .toLowerCase();

function elementTypes({
  name,
  tagName,
  summary,
  members = [],
  attributes = [],
  events = [],
}: ElementDeclaration): string {
  const settable = members.filter((member) => member.kind === 'field' && member.readonly !== true);
  const lines = [
    ...settable.map((each) => line(each.name, `${name}['${each.name}'] | undefined`, each.description)),
    ...attributes
      .filter((attribute) => attribute.name !== attribute.fieldName)
      .map((attribute) => line(`'${attribute.name}'`, attributeType(attribute), attribute.description)),
    ...events.map((event) =>
      line(`'on${event.name}'`, `((event: ${event.type?.text}) => void) | undefined`, event.description),
    ),
  ];
  return `  /** ${summary} */\n  '${tagName}': Common & {\n${lines.join('')}  };\n`;
}

/** Written out, a boolean attribute holds by being there: Preact would write `false` as a text, which is there too. */
const attributeType = ({ type }: { readonly type?: { readonly text: string } }): string =>
  type?.text === 'boolean' ? "true | '' | undefined" : 'string | undefined';

const line = (name: string, type: string, description = ''): string =>
  `    /** ${description.replaceAll(/\s+/g, ' ').trim()} */\n    ${name}?: ${type};\n`;
