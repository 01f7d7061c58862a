/** The tape: the measure in hand, pulled under a pointer to make it longer or shorter. */

import { byId, setText } from './dom.js';
import { writeLength } from './length.js';
import { line, lookOf, surface } from './rulers.js';
import { ticks } from './ticks.js';

/**
 * What lies under the pointer.
 *
 * @typedef {object} Pulled
 * @property {string} name for a person
 * @property {string} text as written
 * @property {number} value mm, degrees or a number
 * @property {number} from
 * @property {number} to
 * @property {number} step
 * @property {'length'|'plain'} kind
 * @property {string} unit `in` or `mm`, for lengths
 */

/** Pixels of one small step. */
const STEP_WIDTH = { in: 11, mm: 9, plain: 24 };
const HIGH = 54;

export class Tape {
  /** @param {(value: number) => void} pull called with each new value under the pointer */
  constructor(pull) {
    this.pull = pull;
    this.frame = byId('tape');
    this.canvas = /** @type {HTMLCanvasElement} */ (byId('tape-strip'));
    this.name = byId('tape-name');
    this.text = byId('tape-text');
    /** @type {Pulled|null} */
    this.held = null;
    this.width = 0;
    this.look = lookOf(this.canvas);
    this.grip();
    new ResizeObserver(([entry]) => {
      this.width = entry.contentRect.width;
      this.look = lookOf(this.canvas);
      this.paint();
    }).observe(byId('tape-window'));
  }

  /** @param {Pulled|null} held */
  show(held) {
    this.held = held;
    this.frame.classList.toggle('empty', !held);
    setText(this.name, held ? held.name : 'Touch a measure, then pull this tape');
    setText(this.text, held ? held.text : '');
    this.paint();
  }

  /** Pixels for one mm, degree or number. */
  scale() {
    const held = /** @type {Pulled} */ (this.held);
    const wide = held.kind === 'plain' ? STEP_WIDTH.plain : STEP_WIDTH[held.unit === 'in' ? 'in' : 'mm'];
    return wide / held.step;
  }

  paint() {
    if (!this.width) {
      return;
    }
    const pen = surface(this.canvas, this.width, HIGH, this.look);
    const held = this.held;
    if (!held) {
      return;
    }
    const scale = this.scale();
    const middle = this.width / 2;
    const left = Math.max(held.from, held.value - middle / scale);
    const right = Math.min(held.to, held.value + middle / scale);
    const x = (/** @type {number} */ at) => Math.round(middle + (at - held.value) * scale) + 0.5;
    beyond(pen, x(held.from), -1, this.width);
    beyond(pen, x(held.to), 1, this.width);
    for (const tick of this.marks(left, right, scale)) {
      line(pen, x(tick.at), 0, x(tick.at), [10, 14, 19, 25, 31][tick.rank]);
      if (tick.text) {
        pen.font = `600 15px ${this.look.font}`;
        pen.fillText(tick.text, x(tick.at) + 4, HIGH - 8);
      }
    }
  }

  /** @param {number} left @param {number} right @param {number} scale */
  marks(left, right, scale) {
    const held = /** @type {Pulled} */ (this.held);
    if (held.kind === 'length') {
      return ticks(left, right, scale, held.unit, { tick: 8, text: 42 });
    }
    const marks = [];
    for (let i = Math.ceil(left / held.step - 1e-9); i * held.step <= right + 1e-9; i++) {
      marks.push({ at: i * held.step, rank: i % 5 === 0 ? 3 : 1, text: i % 5 === 0 || held.to - held.from < 40 ? String(Number((i * held.step).toFixed(3))) : '' });
    }
    return marks;
  }

  grip() {
    const window_ = byId('tape-window');
    /** @type {{x: number, value: number, id: number, last: number} | null} */
    let grip = null;
    window_.addEventListener('pointerdown', (/** @type {PointerEvent} */ event) => {
      if (this.held && event.button === 0) {
        grip = { x: event.clientX, value: this.held.value, id: event.pointerId, last: this.held.value };
        window_.setPointerCapture(event.pointerId);
        window_.classList.add('pulling');
      }
    });
    window_.addEventListener('pointermove', (/** @type {PointerEvent} */ event) => {
      if (!grip || !this.held || event.pointerId !== grip.id) {
        return;
      }
      const { step, from, to } = this.held;
      const free = grip.value - (event.clientX - grip.x) / this.scale();
      const snapped = Math.min(to, Math.max(from, Math.round(free / step) * step));
      if (Math.abs(snapped - grip.last) > step / 1000) {
        grip.last = snapped;
        this.pull(snapped);
      }
    });
    for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
      window_.addEventListener(end, () => {
        grip = null;
        window_.classList.remove('pulling');
      });
    }
  }
}

/** @param {CanvasRenderingContext2D} pen @param {number} x @param {number} side @param {number} width */
function beyond(pen, x, side, width) {
  const from = side < 0 ? 0 : Math.max(0, x);
  const to = side < 0 ? Math.min(width, x) : width;
  if (from >= to) {
    return;
  }
  pen.save();
  pen.beginPath();
  pen.rect(from, 0, to - from, HIGH);
  pen.clip();
  pen.globalAlpha = 0.55;
  for (let at = from - HIGH; at < to; at += 9) {
    line(pen, at, HIGH, at + HIGH, 0);
  }
  pen.restore();
  pen.lineWidth = 3;
  line(pen, x, 0, x, HIGH);
  pen.lineWidth = 1;
}

/** @param {number} value @param {Pulled} held @returns {string} what to write into the field */
export function pulledText(value, held) {
  return held.kind === 'length' ? writeLength(value, held.unit) : String(Number(value.toFixed(6)));
}
