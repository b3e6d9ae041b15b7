/** Patterns that tell the chart's areas apart without colour. */
export type Motif = 'dots' | 'solid' | 'rules' | 'hatch';

const TILE = 8;

/** Share of the colour under the motif's marks. */
const TINT: Readonly<Record<Motif, number>> = { dots: 0.18, solid: 0.5, rules: 0.12, hatch: 0.14 };

/** A fill of `motif` in `colour`, sharp on a screen of `pixelRatio` dots to a CSS pixel; null where a canvas has no context. */
export function motifPattern(motif: Motif, colour: string, pixelRatio: number): CanvasPattern | null {
  const tile = document.createElement('canvas');
  tile.width = Math.round(TILE * pixelRatio);
  tile.height = tile.width;
  const context = tile.getContext('2d');
  if (context === null) return null;
  const scale = tile.width / TILE;
  context.scale(scale, scale);
  context.fillStyle = colour;
  context.strokeStyle = colour;
  context.globalAlpha = TINT[motif];
  context.fillRect(0, 0, TILE, TILE);
  context.globalAlpha = 1;
  drawMarks(motif, context);
  const pattern = context.createPattern(tile, 'repeat');
  pattern?.setTransform(new DOMMatrix().scale(1 / scale));
  return pattern;
}

function drawMarks(motif: Motif, context: CanvasRenderingContext2D): void {
  if (motif === 'dots') {
    context.globalAlpha = 0.75;
    for (const [x, y] of [
      [2, 2],
      [6, 6],
    ] as const)
      context.fillRect(x - 0.6, y - 0.6, 1.2, 1.2);
  }
  if (motif === 'rules') {
    context.globalAlpha = 0.4;
    context.fillRect(0, 2, TILE, 0.8);
    context.fillRect(0, 6, TILE, 0.8);
  }
  if (motif === 'hatch') {
    context.lineWidth = 1.8;
    context.beginPath();
    // Drawn past the tile's corners, so that the lines join across tiles.
    for (const shift of [-TILE, 0, TILE]) {
      context.moveTo(shift - 1, TILE + 1);
      context.lineTo(shift + TILE + 1, -1);
    }
    context.stroke();
  }
}
