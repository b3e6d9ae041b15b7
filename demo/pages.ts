/** The way from one demo page to the others, above each of them. */
const PAGES = {
  'index.html': 'Your own plan',
  'lantern-lane.html': 'An invented garden',
  'garden.html': 'Plan from nothing',
  'seattle.html': "Seattle's weather",
  'mixed-zone.html': 'One mixed zone',
  'host-grid.html': "A page's own grid",
  'club/index.html': "In a club's page",
  'theme.html': 'In your own colors',
};

const nav = document.createElement('nav');
nav.ariaLabel = 'Demo pages';
const here = location.pathname.split('/').at(-1) || 'index.html';
for (const [page, name] of Object.entries(PAGES)) {
  const link = document.createElement('a');
  link.href = page;
  link.textContent = name;
  if (page === here) link.ariaCurrent = 'page';
  nav.append(link);
}
document.body.prepend(nav);
