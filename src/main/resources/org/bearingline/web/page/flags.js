/** The numbered flags on the drawing, one at each place the bit leaves; each is a button. */

import { h, setAttr } from './dom.js';

/** @typedef {import('./types.js').Leftover} Leftover */

/** How far a flag stands from its place, in pixels. */
const STAND = 44;

/** Its radius in pixels. */
const ROUND = 16;

/** Where it may stand, the best first: aside and away from the part's middle, in times of STAND. */
const PLACES = [[0.5, 1], [-0.5, 1], [0, 1.15], [1, 0.6], [-1, 0.6], [0.5, 1.7], [-0.5, 1.7], [0.5, -1], [-0.5, -1]];

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
      setAttr(flag.button, 'aria-label', leftover.label ?? `Place ${leftover.number} that the bit leaves: ${leftover.words.replace(/^\d+ +/, '')}`);
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
   * Puts each flag beside its place, where it covers no words and no other flag if there is room.
   *
   * @param {(point: {x: number, y: number}) => {x: number, y: number}} onScreen
   * @param {{x: number, y: number}} middle of the part on the screen, which flags lean away from
   * @param {{x: number, y: number, half: number}[]} words middles and half widths, in pixels
   */
  stand(onScreen, middle, words) {
    /** @type {{x: number, y: number}[]} */
    const standing = [];
    for (const flag of this.all) {
      const spot = onScreen(flag.leftover);
      const down = spot.y >= middle.y ? 1 : -1;
      const aside = spot.x >= middle.x ? 1 : -1;
      const covers = (/** @type {number[]} */ [x, y]) => {
        const at = { x: spot.x + x * aside * STAND, y: spot.y + y * down * STAND };
        return words.filter((word) => Math.abs(word.x - at.x) < word.half + ROUND && Math.abs(word.y - at.y) < ROUND + 8).length
          + standing.filter((one) => Math.hypot(one.x - at.x, one.y - at.y) < 2.2 * ROUND).length * 2;
      };
      const [x, y] = PLACES.reduce((best, place) => (covers(place) < covers(best) ? place : best));
      const dx = x * aside * STAND;
      const dy = y * down * STAND;
      standing.push({ x: spot.x + dx, y: spot.y + dy });
      flag.button.style.transform = `translate(${spot.x + dx}px, ${spot.y + dy}px) translate(-50%, -50%)`;
      flag.leader.style.transform = `translate(${spot.x}px, ${spot.y}px) rotate(${Math.atan2(dy, dx)}rad) scaleX(${Math.hypot(dx, dy)})`;
    }
  }
}
