/** Dry and wet years on pages with the bundled script: from a worker where one may start, else from slices on the page. */
import { expect } from 'chai';
import { PageWorker } from '../../src/elements/shared/worker/page-worker.ts';
import { runThrough } from '../../src/engine/run-through.ts';
import { yearSeasons } from '../../src/engine/years/year-seasons.ts';
import { season, yearsIn } from '../elements/shared/worker/years-in.ts';
import { openFrame } from './open-frame.ts';

/** The first request bundles the script; a busy machine takes its time over that. */
const LONG = 90_000;

interface Years {
  readonly text: string;
  /** Messages of a worker. */
  readonly heard: number;
  readonly violations: readonly string[];
  readonly complaints: readonly string[];
}

/** What the chart of a page says of its years, once they are there. `policy`: beside scripts and styles of the site's own. */
async function yearsUnder(policy: string): Promise<Years> {
  const { origin } = location;
  const text = `<!doctype html><html lang="en"><head><title>Years</title>
    <meta http-equiv="Content-Security-Policy" content="default-src ${origin};${policy}">
    <script type="module" src="${origin}/dist/page/runnel.js"></script></head>
    <body><runnel-plan src="${origin}/demo/club/garden.runnel.json"><runnel-chart></runnel-chart></runnel-plan></body></html>`;
  const { frame, view, page, complaints } = await openFrame(text);
  const violations: string[] = [];
  let heard = 0;
  page.addEventListener('securitypolicyviolation', ({ effectiveDirective }) => violations.push(effectiveDirective));
  view.Worker = class extends view.Worker {
    constructor(...of: ConstructorParameters<typeof Worker>) {
      super(...of);
      this.addEventListener('message', () => {
        heard += 1;
      });
    }
  };
  const find = <E extends Element>(selector: string) =>
    page.querySelector('runnel-chart')?.shadowRoot?.querySelector<E>(selector);
  while (find('select[name=year]') == null) {
    find<HTMLButtonElement>('button[name=years]')?.click();
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  const said = find('.years')?.textContent?.replace(/\s+/g, ' ') ?? '';
  frame.remove();
  return { text: said, heard, violations, complaints };
}

describe('dry and wet years', function () {
  this.timeout(LONG);

  it('come from a worker, and are the same where a policy has none', async () => {
    const free = await yearsUnder('');
    const barred = await yearsUnder(` worker-src 'none'`);
    expect(free.text).to.match(/\d+ years of \d+/);
    expect(barred.text).to.equal(free.text);
    expect(free.heard).to.be.greaterThan(1);
    expect(barred.heard).to.equal(0);
    expect(free.violations).to.deep.equal([]);
    expect(barred.violations).to.deep.equal(['worker-src']);
    expect([...free.complaints, ...barred.complaints]).to.deep.equal([]);
  });
});

describe('a page’s worker', () => {
  const STARTS: readonly [name: string, start: () => Worker, onPage: boolean][] = [
    [
      'is one where its script is there',
      () => new Worker(new URL('/browser-tests/season-worker.js', location.href), { type: 'module' }),
      false,
    ],
    ['is none of another origin', () => new Worker('https://elsewhere.example/worker.js', { type: 'module' }), true],
    ['is none where its script is missing', () => new Worker('/no-such-script.js', { type: 'module' }), true],
    ['is none where it throws', () => new Worker('data:text/javascript,throw 1', { type: 'module' }), true],
  ];

  for (const [name, start, isOnPage] of STARTS)
    it(`${name}: the same years, to the last bit`, async () => {
      const { outcomes, onPage } = await yearsIn(new PageWorker(start, { firstWordMs: 20_000, idleMs: 0 }));
      expect(onPage).to.equal(isOnPage);
      expect(outcomes).to.deep.equal(runThrough(yearSeasons(season)));
    });
});
