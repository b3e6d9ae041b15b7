/**
 * The signs of a cell, drawn as images of its ground: a pseudo-element in every other cell is what makes a grid slow to
 * scroll. Their shapes differ, so that none depends on its colour: dry is a triangle cut out of a disc, and an edge; short
 * a triangle on a disc; both point down. Over is a bare one that points up.
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

/** Topmost first; as few as can be, since over is common. */
const SIGNS: Readonly<Record<string, readonly Layer[]>> = {
  dry: [triangle(down('var(--_paper)')), chip('var(--_short)')],
  short: [triangle(down('var(--_short)')), chip('var(--_paper)')],
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

const notch = (colour: string): Layer => ({
  image: `linear-gradient(225deg, ${colour} 7px, transparent 7.5px)`,
  position: '100% 0',
  size: '12px 12px',
});
const FOLDED: Layer = {
  image: 'linear-gradient(45deg, var(--_rain) 6px, transparent 6.5px)',
  position: '0 100%',
  size: '12px 12px',
};

const HAND = notch('var(--_ink)');
const RUN = notch('var(--_growth)');

const MARKS: readonly (readonly [selector: string, layers: readonly Layer[]])[] = [
  ['', []],
  ['.runnel-by-hand', [HAND]],
  ['.runnel-by-hand.runnel-run', [RUN]],
  ['.runnel-noted', [FOLDED]],
  ['.runnel-noted.runnel-by-hand', [HAND, FOLDED]],
  ['.runnel-noted.runnel-by-hand.runnel-run', [RUN, FOLDED]],
];

function declarations(layers: readonly Layer[]): string {
  const list = (of: keyof Layer) => layers.map((layer) => layer[of]).join(', ');
  return `background-image: ${list('image')}; background-position: ${list('position')}; background-size: ${list('size')};`;
}

/** A ground has one list of images, so every set of marks that can come together has a rule of its own. */
const cellRules = [
  ['', []] as const,
  ...Object.entries(SIGNS).map(([state, sign]) => [`.runnel-state-${state}`, sign] as const),
]
  .flatMap(([state, sign]) =>
    MARKS.map(([mark, layers]) => ({ selector: `td.runnel-cell${state}${mark}`, layers: [...layers, ...sign] })),
  )
  .filter(({ layers }) => layers.length > 0)
  .map(({ selector, layers }) => `.runnel-sheet .handsontable ${selector} { ${declarations(layers)} }`)
  .join('\n');

const keyRules = [
  ...Object.entries(SIGNS),
  ['by-hand', [HAND]] as const,
  ['run', [RUN]] as const,
  ['noted', [FOLDED]] as const,
]
  .map(([name, layers]) => `.runnel-key .runnel-key__${name} { ${declarations(layers)} }`)
  .join('\n');

export const signStyles = `
${cellRules}

.runnel-sheet .handsontable td.runnel-state-dry {
  box-shadow: inset 3px 0 0 var(--_short);
}

.runnel-key__sign {
  background-repeat: no-repeat;
}

${keyRules}
`;
