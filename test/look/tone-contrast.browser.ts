import { expect } from 'chai';
import { TONES } from '../../src/look/tones.ts';
import { adoptSheetStyles } from '../../src/sheet/index.ts';

type Rgb = readonly [number, number, number];

/** A computed colour, in any notation, as what a screen shows. */
function rgbOf(colour: string): Rgb {
  const canvas = document.createElement('canvas');
  canvas.width = 1;
  canvas.height = 1;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('there is no canvas');
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = context.getImageData(0, 0, 1, 1).data;
  return [red, green, blue];
}

/** WCAG 2.2, relative luminance. */
function luminance(rgb: Rgb): number {
  const [red, green, blue] = rgb.map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Rgb;
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** WCAG 2.2, contrast ratio. */
function contrast(one: Rgb, other: Rgb): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((left, right) => right - left) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe('the grounds under the cells', () => {
  for (const scheme of ['light', 'dark']) {
    it(`carry ink at 4.5:1 and deepen step by step, ${scheme}`, () => {
      adoptSheetStyles(document);
      const box = document.createElement('div');
      box.className = 'runnel-sheet';
      box.style.colorScheme = scheme;
      const cells = Array.from({ length: TONES }, (_, tone) => `<td class="runnel-cell runnel-tone-${tone}">1</td>`);
      box.innerHTML = `<table class="handsontable"><tr>${cells.join('')}</tr></table>`;
      document.body.append(box);
      const looks = [...box.querySelectorAll('td')].map((td) => getComputedStyle(td));
      const ratios = looks.map(({ color, backgroundColor }) => contrast(rgbOf(color), rgbOf(backgroundColor)));
      box.remove();
      for (const ratio of ratios) expect(ratio).to.be.at.least(4.5);
      expect(ratios).to.deep.equal([...ratios].sort((left, right) => right - left));
      expect(new Set(ratios).size).to.equal(TONES);
    });
  }
});
