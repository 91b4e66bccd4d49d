import { html, render, useEffect, useState } from './dom.js';
import { useAddress } from './address.js';
import { loadText, t } from './text.js';
import { Shell } from './shell.js';

// A place's modules are fetched when it is first opened.
const PLACES = {
  prepare: () => import('./prepare/place.js'),
  card: () => import('./card/place.js'),
  explore: () => import('./explore/place.js'),
  practice: () => import('./practice/place.js'),
  library: () => import('./library/place.js'),
  debrief: () => import('./debrief/place.js'),
  dock: () => import('./dock/place.js'),
  quick: () => import('./quick/place.js'),
  live: () => import('./live/place.js'),
  coach: () => import('./coach/place.js'),
};

function Page() {
  const address = useAddress();
  const [opened, setOpened] = useState(null);
  useEffect(() => {
    let stale = false;
    document.title = `${t(`web.place.${address.place}`)} \u2013 ${t('web.shell.name')}`;
    PLACES[address.place]().then((module) => stale || setOpened({ place: address.place, Place: module.Place }));
    return () => {
      stale = true;
    };
  }, [address.place]);
  const shown = opened?.place === address.place && html`<${opened.Place} key=${address.place} ...${address} />`;
  return html`<${Shell} place=${address.place}>${shown}<//>`;
}

loadText().then(
  () => render(html`<${Page} />`, document.getElementById('app')),
  (fault) => {
    document.getElementById('app').textContent = fault.message;
  },
);
