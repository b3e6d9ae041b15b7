/**
 * The signs of a cell, drawn as images of its ground: a pseudo-element in every other cell is what makes a grid slow to
 * scroll. Their shapes differ, so that none depends on its colour: short is a triangle that points down, cut out of a disc; over a bare
 * one that points up; skipped a box that is struck out; closed a hatch; a note a corner.
 */
interface Layer {
  readonly image: string;
  readonly position: string;
  readonly size: string;
}

const down = (colour: string) => `conic-gradient(from -32deg at 50% 100%, ${colour} 64deg, transparent 0)`;
const up = (colour: string) => `conic-gradient(from 148deg at 50% 0, ${colour} 64deg, transparent 0)`;

const chip = (colour: string): Layer => ({
  image: `radial-gradient(circle, ${colour} 7px, transparent 7.5px)`,
  position: '2px 2px',
  size: '16px 16px',
});
const triangle = (image: string): Layer => ({ image, position: '5px 6px', size: '10px 8px' });

const SHORT: readonly Layer[] = [triangle(down('var(--_paper)')), chip('var(--_short)')];

/** Topmost first; as few as can be. */
const SIGNS: Readonly<Record<string, readonly Layer[]>> = {
  dry: SHORT,
  short: SHORT,
  over: [{ ...triangle(up('var(--_ink)')), position: '5px 5px' }],
  closed: [
    {
      image:
        'repeating-linear-gradient(-45deg, transparent 0 5px, color-mix(in oklab, var(--_quiet) 32%, transparent) 5px 6px)',
      position: '0 0',
      size: 'auto',
    },
  ],
};

/** A note stands in the corner in which spreadsheets have it. */
const NOTE: Layer = {
  image: 'linear-gradient(225deg, var(--_ink) 6px, transparent 6.5px)',
  position: '100% 0',
  size: '10px 10px',
};

/** Skipped: a box that is struck out, before the word. */
const SKIPPED: readonly Layer[] = [
  {
    image: 'linear-gradient(135deg, transparent 46%, var(--_ink) 47% 54%, transparent 55%)',
    position: '2px 4px',
    size: '10px 10px',
  },
  {
    image:
      'linear-gradient(var(--_ink) 0 0), linear-gradient(var(--_ink) 0 0), linear-gradient(var(--_ink) 0 0), linear-gradient(var(--_ink) 0 0)',
    position: '2px 4px, 2px 13px, 2px 4px, 11px 4px',
    size: '10px 1px, 10px 1px, 1px 10px, 1px 10px',
  },
];

const MARKS: readonly (readonly [selector: string, layers: readonly Layer[]])[] = [
  ['', []],
  ['.runnel-noted', [NOTE]],
  ['.runnel-skipped', SKIPPED],
  ['.runnel-noted.runnel-skipped', [NOTE, ...SKIPPED]],
];

function declarations(layers: readonly Layer[]): string {
  const list = (of: keyof Layer) => layers.map((layer) => layer[of]).join(', ');
  return `background-image: ${list('image')}; background-position: ${list('position')}; background-size: ${list('size')};`;
}

/** A ground has one list of images, so every set of marks that can come together has a rule of its own. */
const cellRules = [
  ['', []] as const,
  ...Object.entries(SIGNS).map(([state, sign]) => [`.runnel-sign-${state}`, sign] as const),
]
  .flatMap(([state, sign]) =>
    MARKS.map(([mark, layers]) => ({ selector: `td.runnel-cell${state}${mark}`, layers: [...layers, ...sign] })),
  )
  .filter(({ layers }) => layers.length > 0)
  .map(({ selector, layers }) => `.runnel-sheet .handsontable ${selector} { ${declarations(layers)} }`)
  .join('\n');

const keyRules = [...Object.entries(SIGNS), ['skipped', SKIPPED] as const, ['noted', [NOTE]] as const]
  .map(([name, layers]) => `.runnel-key .runnel-key__${name} { ${declarations(layers)} }`)
  .join('\n');

export const signStyles = `
${cellRules}

.runnel-key .runnel-key__by-hand {
  border-block-end: 2px solid var(--_ink);
}

.runnel-key .runnel-key__run {
  border-block-end: 4px double var(--_growth);
}

.runnel-key .runnel-key__read,
.runnel-key .runnel-key__usual {
  inline-size: 8px;
  block-size: 14px;
  border: 1px solid var(--_rain);
}

.runnel-key .runnel-key__read {
  background: var(--_rain);
}

.runnel-key__sign {
  background-repeat: no-repeat;
}

${keyRules}
`;
