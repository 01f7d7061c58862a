/** The numbered flags on the drawing, one at each place the bit leaves; each is a button. */

import { h, setAttr } from './dom.js';

/** @typedef {import('./types.js').Leftover} Leftover */

/** How far a flag stands from its place, in pixels. */
const STAND = 40;

export class Flags {
  /** @param {HTMLElement} place @param {(number: number) => void} pick */
  constructor(place, pick) {
    this.place = place;
    this.pick = pick;
    /** @type {{button: HTMLElement, leader: HTMLElement, leftover: Leftover}[]} */
    this.all = [];
  }

  /** @param {Leftover[]} leftovers */
  show(leftovers) {
    leftovers.forEach((leftover, i) => {
      if (!this.all[i]) {
        const button = h('button', { type: 'button', class: 'flag' });
        button.addEventListener('click', () => this.pick(this.all[i].leftover.number));
        const leader = h('span', { class: 'leader', 'aria-hidden': 'true' });
        this.place.append(leader, button);
        this.all[i] = { button, leader, leftover };
      }
      const flag = this.all[i];
      flag.leftover = leftover;
      flag.button.textContent = String(leftover.number);
      setAttr(flag.button, 'aria-label', `Place ${leftover.number} that the bit leaves: ${leftover.words.replace(/^\d+ +/, '')}`);
    });
    for (const gone of this.all.splice(leftovers.length)) {
      gone.button.remove();
      gone.leader.remove();
    }
  }

  /** @param {number|null} number @param {boolean} hidden with their layer */
  mark(number, hidden) {
    for (const flag of this.all) {
      setAttr(flag.button, 'aria-pressed', String(flag.leftover.number === number));
      flag.button.hidden = hidden;
      flag.leader.hidden = hidden;
    }
  }

  /**
   * @param {(point: {x: number, y: number}) => {x: number, y: number}} onScreen
   * @param {{x: number, y: number}} middle of the part on the screen, which flags lean away from
   */
  place_(onScreen, middle) {
    for (const flag of this.all) {
      const spot = onScreen(flag.leftover);
      const down = spot.y >= middle.y ? 1 : -1;
      const aside = spot.x >= middle.x ? 1 : -1;
      const dx = (aside * STAND) / 2;
      const dy = down * STAND;
      flag.button.style.transform = `translate(${spot.x + dx}px, ${spot.y + dy}px) translate(-50%, -50%)`;
      const long = Math.hypot(dx, dy);
      flag.leader.style.transform = `translate(${spot.x}px, ${spot.y}px) rotate(${Math.atan2(dy, dx)}rad) scaleX(${long})`;
    }
  }
}
