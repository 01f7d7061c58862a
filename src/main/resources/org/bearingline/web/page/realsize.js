/**
 * The real-size view: a thing of known size is laid on the screen and its outline brought to fit.
 * Bank card 85.60 by 53.98 mm with corners of 3.18 mm: ISO/IEC 7810, ID-1. Coins: 1 euro 23.25 mm
 * (European Central Bank), quarter dollar 24.26 mm (United States Mint), one pound 23.43 mm across
 * its flats' corners (The Royal Mint); these three from memory.
 */

import { byId, setAttr, setText, svg } from './dom.js';

const KEPT = 'bearingline.real-size';
/** Pixels of CSS for a mm where nothing was measured: 96 to the inch. */
const USUAL = 96 / 25.4;
/** A screen narrower than this, in pixels of CSS, is a phone's: a card has no room on it. */
const NARROW = 520;

/** @type {Record<string, {width: number, height: number, corner: number, words: string}>} */
const THINGS = {
  card: { width: 85.6, height: 53.98, corner: 3.18, words: 'Lay a bank card on the screen.' },
  euro: { width: 23.25, height: 23.25, corner: 11.625, words: 'Lay a 1 euro coin on the screen.' },
  quarter: { width: 24.26, height: 24.26, corner: 12.13, words: 'Lay a quarter dollar on the screen.' },
  rule: { width: 100, height: 20, corner: 0, words: 'Hold a rule to the screen: the bar is 100 mm long.' },
};

/** @returns {number|null} pixels of CSS for a mm, null where this screen was not measured */
export function measured() {
  const kept = Number(localStorage.getItem(KEPT));
  // Dots of the screen are kept, so that the browser's own zoom does not matter.
  return kept > 0 ? kept / devicePixelRatio : null;
}

export class RealSize {
  /** @param {(scale: number) => void} done with pixels of CSS for a mm */
  constructor(done) {
    this.done = done;
    this.dialog = byId('real-size');
    this.range = byId('real-range');
    this.outline = byId('real-outline');
    this.thing = 'card';
    this.range.addEventListener('input', () => this.paint());
    for (const radio of this.dialog.querySelectorAll('[name=real-thing]')) {
      radio.addEventListener('change', () => {
        this.thing = radio.value;
        this.paint();
      });
    }
    byId('real-less').addEventListener('click', () => this.nudge(-1));
    byId('real-more').addEventListener('click', () => this.nudge(1));
    byId('real-done').addEventListener('click', () => {
      localStorage.setItem(KEPT, String(this.scale() * devicePixelRatio));
      this.dialog.close();
      this.done(this.scale());
    });
  }

  open() {
    if (innerWidth < NARROW && this.thing === 'card') {
      this.thing = byId('units-in').checked ? 'quarter' : 'euro';
      for (const radio of this.dialog.querySelectorAll('[name=real-thing]')) {
        radio.checked = radio.value === this.thing;
      }
    }
    this.range.value = String(100 * Math.log2((measured() ?? USUAL) / USUAL));
    this.dialog.showModal();
    this.paint();
  }

  scale() {
    return USUAL * 2 ** (Number(this.range.value) / 100);
  }

  /** @param {number} by */
  nudge(by) {
    this.range.value = String(Number(this.range.value) + by * Number(this.range.step));
    this.paint();
  }

  paint() {
    const { width, height, corner, words } = THINGS[this.thing];
    const scale = this.scale();
    setAttr(this.outline, 'width', String(width * scale + 4));
    setAttr(this.outline, 'height', String(height * scale + 4));
    this.outline.replaceChildren(svg('rect', { x: 2, y: 2, width: width * scale, height: height * scale, rx: corner * scale }));
    setText(byId('real-words'), words);
  }
}
