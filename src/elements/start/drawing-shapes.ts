/** Shapes that the drawings are made of, as the data of a path, in units of the drawing. */

type Point = readonly [x: number, y: number];

const DEGREE = Math.PI / 180;

const short = (value: number): number => Math.round(10 * value) / 10;

/** So far from a point, in a direction. */
const polar = (reach: number, degrees: number): Point => [
  reach * Math.cos(degrees * DEGREE),
  reach * Math.sin(degrees * DEGREE),
];

const pair = ([x, y]: Point): string => `${short(x)} ${short(y)}`;

const less = ([x, y]: Point, [byX, byY]: Point): Point => [x - byX, y - byY];

/** Points from text: `x y`, one behind the other. */
export function points(text: string): readonly Point[] {
  const numbers = text.split(' ').map(Number);
  return numbers.flatMap((x, index) => (index % 2 === 0 ? [[x, numbers[index + 1] ?? 0] as const] : []));
}

/** Rows of points, each as far from the one before. */
export function grid([x, y]: Point, [across, down]: Point, [columns, rows]: Point): readonly Point[] {
  return Array.from({ length: columns * rows }, (_, index) => [
    x + across * (index % columns),
    y + down * Math.floor(index / columns),
  ]);
}

/** Six points round another. */
export const ring = (x: number, y: number, reach: number): readonly Point[] =>
  Array.from({ length: 6 }, (_, index) => {
    const [dx, dy] = polar(reach, 60 * index);
    return [x + dx, y + dy];
  });

/** The same on the other side of the middle, too. */
export const mirrored = (of: readonly Point[]): readonly Point[] => [...of, ...of.map(([x, y]): Point => [160 - x, y])];

/** Round dots. */
export const dots = (radius: number, at: readonly Point[]): string =>
  at
    .map(
      ([x, y]) =>
        `M${pair([x - radius, y])}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`,
    )
    .join('');

/** The same mark at each point: lines of earth. */
export const hatch = (at: readonly Point[], mark = 'l-3.6 4'): string =>
  at.map((each) => `M${pair(each)}${mark}`).join('');

function petals([x, y]: Point, reach: number, count: number, turn: number): string {
  const each = Array.from({ length: count }, (_, index) => {
    const at = turn + (360 * index) / count;
    const tip = polar(reach, at);
    const [before, after] = [polar(0.92 * reach, at - 40), polar(0.92 * reach, at + 40)];
    return `q${pair(before)} ${pair(tip)}q${pair(less(after, tip))} ${pair(less([0, 0], tip))}`;
  });
  return `M${short(x)} ${short(y)}${each.join('')}`;
}

/** Plants from above, each turned a little from the one before: large leaves with small ones on them. */
export const plants = (at: readonly Point[], reach: number, count: number): string =>
  at
    .map(
      (each, index) => petals(each, reach, count, 17 * index) + petals(each, 0.52 * reach, count - 2, 17 * index + 28),
    )
    .join('');

/** A shrub from above. */
export function shrub(x: number, y: number, turn: number): string {
  const at = Array.from({ length: 11 }, (_, index) => {
    const [dx, dy] = polar(16, turn + 36 * index);
    return pair([x + dx, y + dy]);
  });
  return `M${at.join('A5.6 5.6 0 0 1 ')}Z`;
}

/** A pot from the side, down to the ground, with the edge of its rim. */
export function potSide(x: number, y: number, wide: number): string {
  const [rim, base, edge] = [wide - 1.5, 0.72 * wide, y + 6];
  return `M${x - wide} ${y}L${x - rim} ${edge}L${short(x - base)} 96Q${x} 100 ${short(x + base)} 96L${x + rim} ${edge}L${x + wide} ${y}M${x - rim} ${edge}Q${x} ${y + 11} ${x + rim} ${edge}`;
}

/** Leaves that show on a shrub. */
export const leafMarks = ([x, y]: Point): string =>
  points('8.5 3.8 -0.8 6.8 -10.6 7.2 -8.5 -2.4 -3.9 -11 3.3 -4.5')
    .map(([dx, dy]) => `M${pair([x + dx, y + dy])}q2 -2.4 4 0`)
    .join('');

/** Leaves of a plant seen from the side: how far up they grow, which way and how large. */
const LEAVES = [
  [0.32, -1],
  [0.38, 1.04],
  [0.68, -0.8],
  [0.74, 0.8],
] as const;

/** A plant from the side, so high, leaning over by a width. */
export function sprout(x: number, y: number, high: number, lean: number): string {
  const leaves = LEAVES.map(([up, size]) => {
    const [wide, tall] = [size * high, Math.abs(size) * high];
    const tip: Point = [wide / 2, -0.19 * tall];
    return `M${pair([x + lean * up, y - high * up])}q${pair([0.225 * wide, -0.375 * tall])} ${pair(tip)}q${pair([-0.21 * wide, 0.26 * tall])} ${pair(less([0, 0], tip))}`;
  });
  const bud = `q${pair([-0.13 * high, -0.16 * high])} 0 ${short(-0.3 * high)}q${pair([0.13 * high, 0.14 * high])} 0 ${short(0.3 * high)}`;
  return `M${x} ${y}Q${pair([x + 0.2 * lean, y - high / 2])} ${pair([x + lean, y - high])}${bud}${leaves.join('')}`;
}
