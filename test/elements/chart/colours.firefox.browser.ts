import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/plan/define.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, settled, until } from '../shared/on-page.ts';

/** Whether a pixel of the drawing has exactly this colour. */
function hasPixel(canvas: HTMLCanvasElement, [red, green, blue]: readonly number[]): boolean {
  if (canvas.width === 0) return false;
  const pixels = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
  for (let at = 0; at < pixels.length; at += 4) {
    if (pixels[at] === red && pixels[at + 1] === green && pixels[at + 2] === blue) return true;
  }
  return false;
}

/** The default ink of each scheme. */
const INK = { light: [27, 41, 39], dark: [238, 241, 234] };

describe('the colours of runnel-chart', () => {
  afterEach(() => {
    document.documentElement.style.colorScheme = '';
    clearPage();
  });

  async function canvasOf(): Promise<HTMLCanvasElement> {
    const place = onPage(html`<runnel-plan .plan=${mixedGarden()}><runnel-chart></runnel-chart></runnel-plan>`);
    const chart = await settled(place, 'runnel-chart');
    return chart.shadowRoot?.querySelector('canvas') ?? expect.fail('there is no canvas');
  }

  it('are taken again when the page’s scheme changes, whatever changed it', async () => {
    const canvas = await canvasOf();
    await until(() => hasPixel(canvas, INK.light), 'the chart is drawn in the light');
    document.documentElement.style.colorScheme = 'dark';
    await until(() => hasPixel(canvas, INK.dark) && !hasPixel(canvas, INK.light), 'it is drawn in the dark');
    document.documentElement.style.colorScheme = '';
    await until(() => hasPixel(canvas, INK.light) && !hasPixel(canvas, INK.dark), 'it is drawn in the light again');
  });

  it('are those of the light on paper, however dark the screen is', async () => {
    document.documentElement.style.colorScheme = 'dark';
    const canvas = await canvasOf();
    await until(() => hasPixel(canvas, INK.dark), 'the chart is drawn in the dark');
    globalThis.dispatchEvent(new Event('beforeprint'));
    expect(hasPixel(canvas, INK.light)).to.equal(true);
    expect(hasPixel(canvas, INK.dark)).to.equal(false);
    globalThis.dispatchEvent(new Event('afterprint'));
    await until(() => hasPixel(canvas, INK.dark) && !hasPixel(canvas, INK.light), 'it is dark on the screen again');
  });

  it('are the page’s own where it names them', async () => {
    const canvas = await canvasOf();
    await until(() => hasPixel(canvas, INK.light), 'the chart is drawn');
    const chart = (canvas.getRootNode() as ShadowRoot).host as HTMLElement;
    chart.style.setProperty('--runnel-ink', 'rgb(120, 0, 120)');
    await until(() => hasPixel(canvas, [120, 0, 120]), 'the line of demand wears the page’s ink');
  });
});
