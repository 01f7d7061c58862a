/** The numbered flags on the drawing, one at each place the bit leaves; each is a button. */

import { h, setAttr } from './dom.js';

/** @typedef {import('./types.js').Leftover} Leftover */

/** How far a flag stands from its place, in pixels. */
const STAND = 44;

/** Its radius in pixels. */
const ROUND = 16;

/** Where the place of the flags begins, in pixels of the board. */
const RIM = 26;

/** Where it may stand, the best first: aside and away from the part's middle, in times of STAND. */
const PLACES = [[0.5, 1], [-0.5, 1], [0, 1.15], [1, 0.6], [-1, 0.6], [0.5, 1.7], [-0.5, 1.7], [0.5, -1], [-0.5, -1]];

/** Farther ones, all round, where many flags crowd: in times of STAND. */
const FARTHER = [1.15, 1.9, 2.7, 3.5, 4.5].flatMap((far) => [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11].map((hour) =>
  [far * Math.sin((hour * Math.PI) / 6), far * Math.cos((hour * Math.PI) / 6)]));

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
    const room = { width: this.place.clientWidth, height: this.place.clientHeight };
    // The place of the flags begins inside the rules, where their coordinates begin at the board's corner.
    const inside = (/** @type {number} */ at, /** @type {number} */ far) => at > RIM + ROUND && at < far + RIM - ROUND;
    for (const flag of this.all) {
      const spot = onScreen(flag.leftover);
      const down = spot.y >= middle.y ? 1 : -1;
      const aside = spot.x >= middle.x ? 1 : -1;
      const seen = inside(spot.x, room.width) && inside(spot.y, room.height);
      const covers = (/** @type {number[]} */ [x, y]) => {
        const at = { x: spot.x + x * aside * STAND, y: spot.y + y * down * STAND };
        return words.filter((word) => Math.abs(word.x - at.x) < word.half + ROUND && Math.abs(word.y - at.y) < ROUND + 8).length
          + standing.filter((one) => Math.hypot(one.x - at.x, one.y - at.y) < 2.2 * ROUND).length * 3
          + (seen && !(inside(at.x, room.width) && inside(at.y, room.height)) ? 2 : 0);
      };
      const [x, y] = freest(PLACES, covers) ?? freest(FARTHER, covers) ?? least([...PLACES, ...FARTHER], covers);
      const dx = x * aside * STAND;
      const dy = y * down * STAND;
      standing.push({ x: spot.x + dx, y: spot.y + dy });
      flag.button.style.transform = `translate(${spot.x + dx}px, ${spot.y + dy}px) translate(-50%, -50%)`;
      flag.leader.style.transform = `translate(${spot.x}px, ${spot.y}px) rotate(${Math.atan2(dy, dx)}rad) scaleX(${Math.hypot(dx, dy)})`;
    }
  }
}

/** @param {number[][]} places @param {(place: number[]) => number} covers
 * @returns {number[]|undefined} the first that covers nothing */
function freest(places, covers) {
  return places.find((place) => covers(place) === 0);
}

/** @param {number[][]} places @param {(place: number[]) => number} covers */
function least(places, covers) {
  return places.map((place) => ({ place, covered: covers(place) }))
    .reduce((best, one) => (one.covered < best.covered ? one : best)).place;
}
