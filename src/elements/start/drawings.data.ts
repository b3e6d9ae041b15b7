import { css, svg } from 'lit';
import {
  dots,
  grid,
  hatch,
  leafMarks,
  mirrored,
  plants,
  points,
  potSide,
  ring,
  shrub,
  sprout,
} from './drawing-shapes.ts';

const EMITTERS = grid([43, 29], [17.5, 26], [6, 3]);
const SHRUBS = grid([30, 38], [50, 0], [3, 1]);
const RINGS = SHRUBS.flatMap(([x, y]) => ring(x, y, 20));
const TEE = 'h7.2v7.2h-7.2z';
const CLUMPS = grid([34, 24], [46, 62], [3, 2]);

/** A hose bib at a wall. */
const BIB = svg`<path class="gr" d="M14 2V101"/><path class="ea" d="${hatch(grid([12.5, 6], [0, 9], [1, 11]), 'l-5 5')}"/><path class="gr" d="M2 101H158"/><rect class="in p" x="14" y="10" width="4" height="12" rx="1"/><path class="in p" d="M18 12H32Q44 12 44 24V30H35V25Q35 20 30 20H18Z"/><rect class="in p" x="33" y="29" width="13" height="5" rx="1"/><path class="in" d="M26 12V6"/><path class="hd2" d="M17 4H35"/><rect class="in p" x="23" y="9" width="6" height="4" rx="1"/>`;

/** A pot by the middle and the width of its rim, with a plant in it. */
const pot = (x: number, y: number, wide: number, plant: string) =>
  svg`<path class="in p" d="${potSide(x, y, wide)}"/><ellipse class="in p" cx=${x} cy=${y} rx=${wide} ry="${wide * 0.24}"/><g class="wet"><ellipse class="w" cx=${x} cy=${y} rx=${wide - 3} ry="${wide * 0.18}"/></g><path class="pl p" d="${plant}"/>`;

/** A thin line from a tee of the main one up into a pot, with its emitter. */
const feed = (from: number, to: number, y: number) =>
  svg`<path class="qt" d="M${from} 93V${y - 8}Q${from} ${y - 13} ${(from + to) / 2} ${y - 13}Q${to} ${y - 13} ${to} ${y - 1}"/><circle class="w" cx=${to} cy=${y} r="2.6"/><circle class="k" cx=${from} cy="93" r="2.8"/>`;

/** Line drawings of this kit: from above where a line lies, from the side where it is made of parts. Hidden from readers: a label says the same. */
export const DRAWINGS = {
  bucketTest: svg`${BIB}<path class="hz-o" d="M40 34V62C40 96 16 92 24 74C30 60 46 60 50 44C54 26 76 10 76 28"/><path class="hz-i" d="M40 34V62C40 96 16 92 24 74C30 60 46 60 50 44C54 26 76 10 76 28"/><rect class="in p" x="71.5" y="27" width="9" height="6" rx="1"/><path class="pf" d="M49 50L55 101H97L103 50Z"/><g class="wet"><path class="w" d="M50.6 64L55 100.2H97L101.4 64Z"/></g><path class="ws" d="M50.6 64q5 -2.4 10 0t10 0t10 0t10 0t10.6 0"/><path class="w" d="${dots(2, points('74.6 35 77.4 40.2 74.6 45.4 77.4 50.6 74.6 55.8 77.4 61'))}"/><path class="pl" d="M91.2 91h5M92.2 82h5M93.3 73h5M94.4 64h5"/><path class="in" d="M49 50L55 101H97L103 50"/><path class="in" d="M47 50H71M83 50H105"/><circle class="in p" cx="132" cy="47" r="19"/><g class="wet"><path class="w" d="M132 47V31.5A15.5 15.5 0 1 1 118.6 39.3Z"/></g><path class="pl" d="M147.5 47H144M132 62.5V59M116.5 47H120M132 31.5V35"/><path class="in" d="M132 47L121.2 40.8"/><circle class="k" cx="132" cy="47" r="1.8"/><rect class="in p" x="129" y="22" width="6" height="6" rx="1"/><path class="hd3" d="M127 20.5H137"/><path class="in" d="M144.7 32.9l3.4 -3.6"/>`,
  hoseBib: svg`${BIB}<path class="ea" d="${hatch(grid([24, 104.5], [13, 0], [11, 1]))}"/><rect class="in p" x="28" y="34" width="25" height="22" rx="3"/><circle class="in" cx="40.5" cy="44" r="6.6"/><path class="in" d="M40.5 44V39.6M40.5 44l3 2"/><path class="in" d="M33 53.2h2M37 53.2h2M42 53.2h2M46 53.2h2"/><rect class="in p" x="34" y="56" width="13" height="9" rx="1.2"/><path class="in" d="M34 59.4H47"/><path class="in" d="M36.5 62.3h1.4M40 62.3h1.4M43.4 62.3h1.4"/><path class="in p" d="M36 65H45V70L56.5 79L51.5 85L45 80V84H36Z"/><path class="pl" d="M46.8 74.6l5 4M44.6 77l5 4"/><rect class="in p" x="33.5" y="84" width="14" height="8" rx="1.6"/><path class="in" d="M37 84V92M44 84V92"/><path class="so" d="M40.5 92V93Q40.5 98 46 98H158"/>`,
  main: svg`<path class="gr" d="M2 56H58M146 56H158"/><path class="ea" d="M30 59.5l-3.6 4M154 59.5l-3.6 4"/><path class="mn-o" d="M0 99H15V26H47V86H160"/><path class="mn-i" d="M0 99H15V26H47V86H160"/><rect class="in p" x="18" y="14" width="26" height="20"/><rect class="in p" x="9.5" y="40" width="11" height="9" rx="1"/><path class="hd2" d="M15 44.5V35"/><path class="in" d="M60 54V105M144 54V105"/><path class="in" d="M56 53H62M142 53H148"/><path class="ea2" d="M56 105H148"/><rect class="in p" x="66" y="80" width="24" height="12" rx="1.5"/><path class="in p" d="M69 80Q69 73 75 73H81Q87 73 87 80Z"/><rect class="in p" x="73.5" y="63" width="9" height="10" rx="2"/><path class="wr" d="M76 63C76 50 88 50 96 46C106 41 112 25 124 24M80 63C81 54 91 54 98 49C108 43 114 29 124 27"/><path class="in p" d="M96 80H110V88L116 97L109 101L102 92H96Z"/><path class="pl" d="M106.5 92.5l6.4 -3.6M109 96l6 -3.4"/><rect class="in p" x="121" y="79.5" width="16" height="13" rx="2"/><path class="in" d="M125.5 79.5V92.5M132.5 79.5V92.5"/><rect class="in p" x="124" y="9" width="24" height="32" rx="2.5"/><circle class="in" cx="136" cy="21" r="6.4"/><path class="in" d="M136 21V16.6M136 21l3.2 1.8"/><path class="in" d="M129.5 34h2.4M134.8 34h2.4M140.1 34h2.4"/><path class="fl" transform="translate(7 91)" d="M-3.4 -3.4L0 0L-3.4 3.4"/><path class="fl" transform="translate(156 77.5)" d="M-3.4 -3.4L0 0L-3.4 3.4"/>`,
  sand: svg`<path class="in" d="M42 87Q60 54 82 49Q106 54 122 87"/><path class="gn" d="${dots(1.5, points('62 66 70 58 86 50 94 56 72 68 84 62 80 70 66 74 110 74 54 75 76 77 104 79 50 83 70 83 96 83 112 82'))}"/><path class="in" d="M14 87H150"/><path class="gn" d="${dots(1.4, points('22 84 30 85 37 83.5 128 84 136 85.4 143 84'))}"/>`,
  loam: svg`<path class="in p" d="M80 24C102 23 114 38 114 56C114 74 100 88 80 88C60 88 46 74 46 56C46 38 58 25 80 24Z"/><path class="pl" d="M56 46q10 -8 18 -2M56 60q11 -8 20 -1M60 74q10 -7 17 -1"/><path class="in" d="M113 50l-9 5l2 7l-7 4M104 55l-5 -4"/><path class="gn" d="${dots(1.4, points('92 36 98 44 86 46 90 64 96 74 82 76'))}"/><path class="in" d="M26 88H134"/>`,
  clay: svg`<path class="rb-o" d="M28 78C44 78 44 42 62 42C82 42 78 80 98 80C118 80 112 40 136 36"/><path class="rb-i" d="M28 78C44 78 44 42 62 42C82 42 78 80 98 80C118 80 112 40 136 36"/><path class="pl" d="M40 72l6 4M70 46l-4 6M92 74l4 6M116 58l-7 -2"/><path class="in" d="M14 92H146"/>`,
  rows: svg`<rect class="bd" x="16" y="10" width="138" height="90" rx="2"/><rect class="bi" x="20" y="14" width="130" height="82" rx="1"/><g class="wet"><path class="w" d="${dots(11.5, EMITTERS)}"/></g><path class="pl p" d="${plants(grid([51.8, 42], [17.5, 26], [5, 2]), 8.6, 6)}"/><path class="to" d="M28 29H142M28 55H142M28 81H142"/><path class="ti" d="M28 29H142M28 55H142M28 81H142"/><path class="w" d="${dots(2.2, EMITTERS)}"/><path class="so" d="M0 55H28M28 29V81"/><path class="k" d="${hatch(grid([24.4, 25.4], [0, 26], [1, 3]), TEE)}"/><path class="cap" d="M143 24V34M143 50V60M143 76V86"/>`,
  loops: svg`<g class="wet"><path class="w" d="${dots(7.5, RINGS)}"/></g><path class="pl p" d="${shrub(30, 38, 0)}${shrub(80, 38, 14)}${shrub(130, 38, 28)}"/><path class="pl" d="${SHRUBS.map(leafMarks).join('')}"/><path class="kq" d="${dots(1.6, SHRUBS)}"/><path class="to" d="${dots(20, SHRUBS)}"/><path class="ti" d="${dots(20, SHRUBS)}"/><path class="w" d="${dots(2, RINGS)}"/><path class="so" d="M0 92H130M30 92V58M80 92V58M130 92V58"/><path class="k" d="${hatch(grid([26.4, 55.4], [50, 33], [3, 2]), TEE)}"/>`,
  points: svg`<path class="gr" d="M2 98H158"/><path class="so" d="M0 93H154"/><path class="cap" d="M155 88V98"/>${pot(36, 62, 15, sprout(37, 63, 27, -2))}${feed(16, 27, 62)}${pot(86, 55, 19, sprout(87, 56, 36, 3))}${feed(62, 73, 55)}${feed(110, 99, 55)}${pot(132, 66, 13, sprout(133, 67, 23.4, -2))}${feed(150, 139, 66)}`,
  spray: svg`<g class="wet"><path class="w" d="M10 88H150Q138 104 80 104Q22 104 10 88Z"/></g><path class="gr" d="M2 88H158"/><path class="ea" d="${hatch(grid([11, 91.5], [13, 0], [12, 1]))}"/><path class="pl p" d="${sprout(18, 88, 11, -1)}${sprout(36, 88, 13, 1)}${sprout(53, 88, 15, -1)}${sprout(108, 88, 11, 1)}${sprout(125, 88, 13, -1)}${sprout(143, 88, 15, 1)}"/><path class="in" d="M80 88V56"/><path class="in p" d="M76.5 56H83.5L82.5 50H77.5Z"/><path class="in" d="M74 49.5H86"/><path class="in" d="M80 88l-2.2 8M80 88l2.2 8M77.8 96L80 101L82.2 96"/><path class="qt" d="M66 84.6Q79 84 79 70"/><path class="so" d="M0 84.6H66"/><circle class="k" cx="66" cy="84.6" r="3"/><path class="w" d="${dots(1.5, mirrored(points('69.2 43.4 63.4 40.6 57.5 39.5 51.7 40.1 45.9 42.5 40.1 46.6 34.3 52.4 28.4 59.9 22.6 69.2 16.8 80.2 70.2 45.3 65.3 44.6 60.5 45.8 55.6 49 50.8 54.1 45.9 61.1 41.1 70.1 36.2 81 71.8 47.9 68.5 50 65.3 54.5 62.1 61.2 58.8 70.3 55.6 81.6')))}"/>`,
  solid: svg`<path class="pl" d="${dots(16.5, CLUMPS)}"/><path class="pl p" d="${plants(CLUMPS, 12.5, 7)}"/><path class="da" d="M34 51.5V43M80 51.5V43M126 51.5V43M34 58.5V67M80 58.5V67M126 58.5V67"/><path class="so" d="M0 55H148"/><path class="cap" d="M149 50V60"/>`,
  none: svg`<path class="pl" d="${dots(16.5, CLUMPS)}"/><path class="pl p" d="${plants(CLUMPS, 12.5, 7)}"/>`,
};

export type Drawing = keyof typeof DRAWINGS;

export const drawingStyles = css`
  .drawing {
    display: block;
    inline-size: 100%;
    block-size: auto;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.6;
    stroke-linecap: round;
    stroke-linejoin: round;
  }

  .drawing .p {
    fill: var(--_paper);
  }

  .drawing .pf {
    fill: var(--_paper);
    stroke: none;
  }

  .drawing .in {
    stroke-width: 1.6;
  }

  .drawing .k {
    fill: currentColor;
    stroke: none;
  }

  .drawing .kq {
    fill: var(--_quiet);
    stroke: none;
  }

  .drawing .w {
    fill: var(--_water);
    stroke: none;
  }

  .drawing .ws {
    stroke: var(--_water);
  }

  .drawing .wet {
    opacity: .17;
  }

  .drawing .pl {
    stroke: var(--_quiet);
    stroke-width: 1.15;
  }

  .drawing .gr {
    stroke: var(--_quiet);
    stroke-width: 1.4;
  }

  .drawing .ea {
    stroke: var(--_quiet);
    stroke-width: 1;
    opacity: .7;
  }

  .drawing .ea2 {
    stroke-width: 1;
  }

  .drawing .bd {
    stroke: var(--_quiet);
    stroke-width: 1.2;
  }

  .drawing .bi {
    stroke: var(--_quiet);
    stroke-width: .8;
  }

  .drawing .to {
    stroke-width: 5.8;
  }

  .drawing .ti {
    stroke: var(--_paper);
    stroke-width: 3.2;
  }

  .drawing .so {
    stroke-width: 3.6;
  }

  .drawing .qt {
    stroke-width: 2;
  }

  .drawing .cap {
    stroke-width: 2.6;
  }

  .drawing .da {
    stroke: var(--_quiet);
    stroke-width: 1.6;
    stroke-dasharray: 2.4 3;
  }

  .drawing .fl {
    stroke: var(--_water);
    stroke-width: 2;
  }

  .drawing .hd2 {
    stroke-width: 4;
  }

  .drawing .hd3 {
    stroke-width: 2.6;
  }

  .drawing .hz-o {
    stroke-width: 6.4;
  }

  .drawing .hz-i {
    stroke: var(--_paper);
    stroke-width: 3.8;
  }

  .drawing .mn-o {
    stroke-width: 7.6;
    stroke-linejoin: round;
  }

  .drawing .mn-i {
    stroke: var(--_paper);
    stroke-width: 4.8;
  }

  .drawing .wr {
    stroke-width: 1;
  }

  .drawing .rb-o {
    stroke-width: 17;
  }

  .drawing .rb-i {
    stroke: var(--_paper);
    stroke-width: 13.8;
  }

  .drawing .gn {
    fill: var(--_quiet);
    stroke: none;
  }
`;
