/** A reading glass over the drawing: what the bit leaves at one place, large, with the bit in it. */

import { byId, setAttr, svg } from './dom.js';
import { bitPlace } from './bitplace.js';
import { headScale } from './paint.js';

/** @typedef {import('./types.js').Leftover} Leftover */

/** Share of the glass's width that a leftover's box takes. */
const SHARE = 0.5;

/** Pixels for a mm at most; what moved by hundredths of a millimetre is shown larger. */
const LARGEST = 60;
const LARGEST_MOVE = 4000;

export class Loupe {
  /** @param {HTMLElement} place that the glass lies in @param {SVGElement} world drawn through it */
  constructor(place, world) {
    this.place = place;
    this.glass = svg('svg', { class: 'loupe', 'aria-hidden': 'true' });
    this.inner = svg('g', {}, svg('use', { href: `#${world.id}` }));
    this.bit = svg('circle', { class: 'loupe-bit' });
    this.centre = svg('path', { class: 'loupe-centre' });
    this.inner.append(this.bit, this.centre);
    this.glass.append(this.inner);
    this.glass.style.display = 'none';
    place.append(this.glass);
  }

  /**
   * @param {Leftover|(import('./types.js').Spot & {d: string})|null} leftover null to take the glass away
   * @param {number} bit diameter in mm
   * @param {(point: {x: number, y: number}) => {x: number, y: number}} onScreen
   * @param {number} enlargement of the drawing's lettering
   */
  show(leftover, bit, onScreen, enlargement) {
    this.glass.style.display = leftover ? '' : 'none';
    if (!leftover) {
      return;
    }
    const width = this.glass.clientWidth || 220;
    const box = boxOf(leftover);
    const scale = Math.min(leftover.reach ? LARGEST_MOVE : LARGEST, (width * SHARE) / Math.max(box.reach, 0.2));
    const spot = onScreen(leftover);
    const room = { width: this.place.clientWidth, height: this.place.clientHeight };
    const left = spot.x + 40 + width > room.width ? spot.x - 40 - width : spot.x + 40;
    const top = Math.min(Math.max(8, spot.y - width / 2), room.height - width - 8);
    this.glass.style.left = `${Math.max(8, left)}px`;
    this.glass.style.top = `${Math.max(8, top)}px`;
    const middle = { x: box.x, y: box.y };
    setAttr(this.inner, 'transform',
      `translate(${width / 2} ${width / 2}) scale(${scale}) translate(${-middle.x} ${-middle.y})`);
    this.inner.style.setProperty('--k', String(1 / scale));
    this.inner.style.setProperty('--head', String(headScale(enlargement, scale)));
    setAttr(byId('left-hatch-glass'), 'patternTransform', `rotate(45) scale(${1 / scale})`);
    const stands = bitPlace(leftover.d, bit / 2);
    this.bit.style.display = stands ? '' : 'none';
    this.centre.style.display = stands ? '' : 'none';
    if (stands) {
      setAttr(this.bit, 'cx', String(stands.x));
      setAttr(this.bit, 'cy', String(stands.y));
      setAttr(this.bit, 'r', String(bit / 2));
      const arm = 6 / scale;
      setAttr(this.centre, 'd',
        `M${stands.x - arm} ${stands.y}h${2 * arm}M${stands.x} ${stands.y - arm}v${2 * arm}`);
    }
  }
}

/** @param {Leftover|(import('./types.js').Spot & {d: string})} leftover middle of its ends and how far it reaches from there, in mm */
function boxOf(leftover) {
  if (leftover.reach) {
    return { x: leftover.x, y: leftover.y, reach: leftover.reach };
  }
  const points = [...leftover.d.matchAll(/(-?[\d.]+(?:e-?\d+)?)[ ,](-?[\d.]+(?:e-?\d+)?)(?=[MLAZ]|$)/g)]
    .map((pair) => ({ x: Number(pair[1]), y: Number(pair[2]) }));
  if (points.length < 2) {
    return { x: leftover.x, y: leftover.y, reach: 3 };
  }
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  const x = (Math.min(...xs) + Math.max(...xs)) / 2;
  const y = (Math.min(...ys) + Math.max(...ys)) / 2;
  return { x, y, reach: Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) };
}
