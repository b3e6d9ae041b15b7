/**
 * The kit's look in a few public custom properties, as plain CSS: for elements with a shadow root and for the sheet in the page. Inside,
 * `--_name` is the public one or its default; the default follows the `color-scheme` that the page, or anything around an element,
 * declares. One colour has one meaning.
 */

interface ColourToken {
  readonly light: string;
  readonly dark: string;
  /** In forced colours the reader's own system colours win. */
  readonly forced: 'Canvas' | 'CanvasText';
}

const colour = (light: string, dark: string, forced: ColourToken['forced'] = 'CanvasText'): ColourToken => ({
  light,
  dark,
  forced,
});

/**
 * Ink, quiet ink, water, rain, growth and short stand at 4.5:1 or more on paper and on blank in both schemes. On a tone stand ink and
 * `rain-on-tone`, never quiet ink.
 */
export const COLOURS: Readonly<Record<string, ColourToken>> = {
  /** The sheet of paper: the ground of all, and where nothing is in the ground. */
  paper: colour('#f3f1e8', '#101615', 'Canvas'),
  /** Ground of plants that get no water in a week, and of fields. */
  blank: colour('#ffffff', '#202726', 'Canvas'),
  ink: colour('#1b2927', '#eef1ea'),
  quiet: colour('#566460', '#aab6af'),
  line: colour('#dad8cc', '#333e3b'),
  water: colour('#12697a', '#5fbcca'),
  rain: colour('#3f63a8', '#9ab6f0'),
  'rain-on-tone': colour('#17306e', '#d6e2ff'),
  growth: colour('#3c7338', '#93c684'),
  short: colour('#ad3a1c', '#f38f6b'),
};

const colours = Object.entries(COLOURS);

/**
 * For a rule of an element's root. Letters' shapes that a site gives to everything end here.
 *
 * `--_size`: the floor is for sites that make the root's letters small to count in tens.
 */
export const tokenDeclarations = `
  ${colours.map(([name, { light, dark }]) => `--_${name}: var(--runnel-${name}, light-dark(${light}, ${dark}));`).join('\n  ')}
  --_font: var(--runnel-font, system-ui, sans-serif);
  --_size: var(--runnel-font-size, max(0.9375rem, 13px));
  --_size-small: calc(var(--_size) * 0.87);
  --_size-large: calc(var(--_size) * 1.3);
  letter-spacing: normal;
  word-spacing: normal;
  text-transform: none;
  text-shadow: none;
  font-style: normal;
`;

export const forcedTokenDeclarations = colours.map(([name, { forced }]) => `--_${name}: ${forced};`).join('\n  ');
