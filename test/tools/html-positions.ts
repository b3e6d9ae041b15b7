/** Where the pieces of a template of markup stand: in an element's text, or in an attribute of this name. */
export interface HtmlPiece {
  readonly text: string;
  /** Undefined for the text of an element. */
  readonly attribute: string | undefined;
}

/** What stands around a value that is put in between two pieces. */
export type HtmlHole = Pick<HtmlPiece, 'attribute'>;

export interface HtmlPositions {
  readonly pieces: readonly HtmlPiece[];
  /** One for each gap between two quasis. */
  readonly holes: readonly HtmlHole[];
}

type State =
  | { readonly kind: 'text' | 'tag' | 'comment' }
  | { readonly kind: 'value'; readonly attribute: string; readonly quote: string };

/** `quasis`: the literal parts of the template, in their order. */
export function htmlPositions(quasis: readonly string[]): HtmlPositions {
  const pieces: HtmlPiece[] = [];
  const holes: HtmlHole[] = [];
  let state: State = { kind: 'text' };
  quasis.forEach((quasi, index) => {
    state = scan(quasi, state, pieces);
    if (index < quasis.length - 1) holes.push({ attribute: attributeAt(state) });
  });
  return { pieces, holes };
}

/** Empty between the attributes of a tag. */
function attributeAt(state: State): string | undefined {
  if (state.kind === 'value') return state.attribute;
  return state.kind === 'text' ? undefined : '';
}

/** Goes on from `before` to the end of a quasi, and adds what it comes by to `pieces`. */
function scan(quasi: string, before: State, pieces: HtmlPiece[]): State {
  let state = before;
  let rest = quasi;
  while (rest !== '') {
    const step = next(rest, state, pieces);
    rest = rest.slice(step.length);
    state = step.state;
  }
  return state;
}

interface Step {
  readonly length: number;
  readonly state: State;
}

const TEXT: State = { kind: 'text' };
const TAG: State = { kind: 'tag' };

function next(rest: string, state: State, pieces: HtmlPiece[]): Step {
  if (state.kind === 'text') return inText(rest, pieces);
  if (state.kind === 'comment') return upTo('-->', rest, TEXT, state);
  if (state.kind === 'value') return inValue(rest, state, pieces);
  const attribute = /^[^>]*?([^\s"'<>/=]+)\s*=\s*(["']?)/.exec(rest);
  const end = rest.indexOf('>');
  if (attribute !== null && (end < 0 || attribute[0].length <= end)) {
    const [all, name = '', quote = ''] = attribute;
    return { length: all.length, state: { kind: 'value', attribute: name, quote } };
  }
  return end < 0 ? { length: rest.length, state } : { length: end + 1, state: TEXT };
}

function inText(rest: string, pieces: HtmlPiece[]): Step {
  if (rest.startsWith('<!--')) return { length: 4, state: { kind: 'comment' } };
  if (rest.startsWith('<')) return { length: 1, state: TAG };
  const end = rest.indexOf('<');
  const text = end < 0 ? rest : rest.slice(0, end);
  pieces.push({ text, attribute: undefined });
  return { length: text.length, state: TEXT };
}

function inValue(rest: string, state: State & { readonly kind: 'value' }, pieces: HtmlPiece[]): Step {
  const { attribute, quote } = state;
  const end = quote === '' ? rest.search(/[\s>]/) : rest.indexOf(quote);
  const text = end < 0 ? rest : rest.slice(0, end);
  if (text !== '') pieces.push({ text, attribute });
  if (end < 0) return { length: rest.length, state };
  return { length: end + quote.length, state: TAG };
}

function upTo(mark: string, rest: string, after: State, before: State): Step {
  const end = rest.indexOf(mark);
  return end < 0 ? { length: rest.length, state: before } : { length: end + mark.length, state: after };
}
