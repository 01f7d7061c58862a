/** Puts the page together: every part of it tells this file, and this file tells the others. */

import { answers } from './answers.js';
import { Asking } from './asking.js';
import { keepToken, get, onNewToken, post } from './api.js';
import { parts } from './address.js';
import { Bench } from './bench.js';
import { byId } from './dom.js';
import { Desk } from './desk.js';
import { Picker } from './picker.js';
import { TroubleBar } from './trouble.js';
import * as works from './work.js';
import { wireFiles } from './takeaway.js';
import { wireKeys } from './keys.js';

const UNITS = 'bearingline.units';

/** Whether lengths are usually in inches where this reader is. */
function usualUnits() {
  const kept = localStorage.getItem(UNITS);
  return kept ?? (/-(US|CA|LR|MM)$|^en$/i.test(navigator.language) ? 'in' : 'mm');
}

/** Takes the token out of the address, so that a bookmark does not hold it. */
function takeToken() {
  const { token, state } = parts(location.hash);
  if (token) {
    keepToken(token);
    history.replaceState(null, '', state ? `#state=${state}` : location.pathname);
  }
}

async function begin() {
  takeToken();
  const desk = new Desk(works.emptyWork(usualUnits()), (work, how) => bench.show(work, how));
  const trouble = new TroubleBar({
    retry: () => bench.again(),
    keep: () => files.keepCopy(),
    moveTo: (address) => files.moveTo(address),
  });
  const asking = new Asking({
    drawn: (drawing, wish) => heard.drawn(drawing, wish),
    refused: (refusal, wish) => heard.refused(refusal, wish),
    doubted: (doubt) => heard.doubted(doubt),
    racked: (rack) => heard.racked(rack),
    sighted: (sight, wish) => heard.sighted(sight, wish),
    paged: (pages) => heard.paged(pages),
    listed: (job) => heard.listed(job),
    lost: (error) => {
      bench.board.stale(true);
      trouble.show(error);
    },
    answered: () => trouble.clear(),
  });
  const picker = new Picker({
    pick: (shape) => bench.picked(shape),
    open: () => files.choose(),
  }, (shape) => post('/api/draw', {
    state: { job: { parts: [{ name: 'pattern', shape }] }, files: {} }, part: 'pattern', plate: 1,
  }));
  const bench = new Bench(desk, asking, picker);
  const heard = answers(bench);
  const files = wireFiles(desk, bench, trouble);
  wireKeys(desk);
  byId('units').addEventListener('change', () => {
    localStorage.setItem(UNITS, byId('units-in').checked ? 'in' : 'mm');
  });
  const found = await desk.begin();
  const last = found ? null : await desk.last();
  let known = false;

  async function know() {
    try {
      const shop = await get('/api/shop');
      known = true;
      trouble.clear();
      bench.know(shop);
      if (found || desk.work.job.parts.length) {
        bench.show(desk.work, 'returned');
      } else {
        bench.first(last);
      }
    } catch (error) {
      trouble.show(/** @type {any} */ (error));
    }
  }
  bench.again = () => (known ? bench.show(desk.work, 'returned') : know());
  onNewToken(() => bench.again());
  addEventListener('hashchange', () => {
    if (parts(location.hash).token) {
      takeToken();
      bench.again();
    }
  });
  await know();
}

begin();
