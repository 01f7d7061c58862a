/** The numbered list of what the bit leaves, and where it cuts into the part. */

import { byId, h, setText } from './dom.js';

/** @typedef {import('./types.js').Drawing} Drawing */

export class Leftovers {
  /** @param {(number: number) => void} pick */
  constructor(pick) {
    this.pick = pick;
    this.list = byId('leftover-list');
    this.overcuts = byId('overcut-list');
    this.made = '';
  }

  /** @param {Drawing|null} drawing @param {number|null} marked */
  show(drawing, marked) {
    const key = JSON.stringify([drawing?.leftovers.map((one) => [one.number, one.words]), drawing?.overcuts.map((one) => one.words)]);
    if (key !== this.made) {
      this.made = key;
      this.list.replaceChildren(...(drawing?.leftovers ?? []).map((one) => h('li', {},
        h('button', { type: 'button', class: 'leftover-row', 'data-number': one.number, onclick: () => this.pick(one.number) },
          h('span', { class: 'balloon' }, String(one.number)),
          h('span', { class: 'leftover-words' }, one.words.replace(/^\d+ +/, ''), h('span', { class: 'advice' }, one.advice))))));
      this.overcuts.replaceChildren(...(drawing?.overcuts ?? []).map((one) => h('li', {}, one.words)));
    }
    for (const row of this.list.querySelectorAll('button')) {
      row.setAttribute('aria-pressed', String(Number(row.dataset.number) === marked));
    }
    const none = drawing !== null && drawing.leftovers.length === 0;
    setText(byId('leftover-none'), none ? 'Nothing. The bit reaches every place of the edge.' : '');
    setText(byId('largest'), drawing?.largest ? sentence(drawing.largest) : '');
    setText(byId('proof'), drawing?.proof ? `Checked by running the follower round the template and the bit with it: ${drawing.proof}.` : '');
  }

  /** @param {number} number */
  reveal(number) {
    this.list.querySelector(`[data-number="${number}"]`)?.scrollIntoView({ block: 'nearest' });
  }
}

/** @param {string} text */
function sentence(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
