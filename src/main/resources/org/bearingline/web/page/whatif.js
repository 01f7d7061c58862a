/** A dotted line that shows which edge moves: the part as it would be with one measure larger. */

import { post } from './api.js';
import { writeLength } from './length.js';
import { areaOf } from './paint.js';
import { onTheBoard, withMeasure } from './work.js';

/** Quiet before the question is put, in ms. */
const REST = 220;

/** How much larger a length is taken, as a share of its value, at least a quarter of an inch. */
const SHARE = 0.08;
const LEAST = 6.35;

export class WhatIf {
  /** @param {(d: string) => void} draw */
  constructor(draw) {
    this.draw = draw;
    this.timer = 0;
    this.number = 0;
  }

  /** Takes the line away. */
  clear() {
    clearTimeout(this.timer);
    this.number++;
    this.draw('');
  }

  /**
   * @param {import('./types.js').Work} work
   * @param {import('./types.js').Measure} measure a length
   * @param {number} value mm
   */
  show(work, measure, value) {
    this.clear();
    const number = this.number;
    const larger = value + Math.max(LEAST, value * SHARE);
    const tried = measure.to && larger > measure.to.value ? value - Math.max(LEAST, value * SHARE) : larger;
    const other = withMeasure(work, measure.name, writeLength(tried, 'mm'));
    this.timer = setTimeout(async () => {
      try {
        const body = { state: { job: other.job, files: other.files }, part: other.part, plate: 1 };
        const drawing = onTheBoard(other) ? await post('/api/draw', body) : null;
        if (number === this.number && drawing) {
          this.draw(areaOf(drawing.layers.find((/** @type {any} */ layer) => layer.id === 'part')));
        }
      } catch {
        // A measure that cannot grow so far, or no answer: there is nothing to point at.
      }
    }, REST);
  }
}
