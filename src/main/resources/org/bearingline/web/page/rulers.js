/** The two rules along the board's edges: true to the drawing at every zoom. */

import { ticks } from './ticks.js';

/** @typedef {import('./types.js').View} View */

/** Thickness of a rule in pixels. */
export const RULE = 26;

export class Rulers {
  /** @param {HTMLCanvasElement} across @param {HTMLCanvasElement} up */
  constructor(across, up) {
    this.across = across;
    this.up = up;
    this.unit = 'in';
    this.look = lookOf(across);
    /** Where 0 stands on the board: the part's lower left corner. */
    this.zero = { x: 0, y: 0 };
  }

  /** @param {View} view @param {import('./types.js').Size} size */
  paint(view, size) {
    const room = { tick: 6, text: 46 };
    const x0 = view.x + this.zero.x * view.scale;
    const y0 = view.y + this.zero.y * view.scale;
    const wide = surface(this.across, size.width, RULE, this.look);
    for (const tick of ticks(-x0 / view.scale, (size.width - x0) / view.scale, view.scale, this.unit, room)) {
      const x = Math.round(x0 + tick.at * view.scale) + 0.5;
      line(wide, x, RULE, x, RULE - tall(tick.rank));
      if (tick.text) {
        wide.fillText(tick.text, x + 4, 12);
      }
    }
    line(wide, 0, RULE - 0.5, size.width, RULE - 0.5);
    const high = surface(this.up, RULE, size.height, this.look);
    for (const tick of ticks(-(size.height - y0) / view.scale, y0 / view.scale, view.scale, this.unit, room)) {
      const y = Math.round(y0 - tick.at * view.scale) + 0.5;
      line(high, RULE, y, RULE - tall(tick.rank), y);
      if (tick.text) {
        high.save();
        high.translate(12, y - 4);
        high.rotate(-Math.PI / 2);
        high.fillText(tick.text, 0, 0);
        high.restore();
      }
    }
    line(high, RULE - 0.5, 0, RULE - 0.5, size.height);
  }
}

/**
 * How a canvas is lettered. Asking the browser for it makes it lay the page out, so it is asked once
 * a size and not once a frame.
 *
 * @typedef {{font: string, color: string}} Look
 */

/** @param {HTMLCanvasElement} canvas @returns {Look} */
export function lookOf(canvas) {
  const style = getComputedStyle(canvas);
  return { font: style.fontFamily, color: style.color };
}

/**
 * A canvas cleared and set to the sharpness of the screen.
 *
 * @param {HTMLCanvasElement} canvas
 * @param {number} width
 * @param {number} height
 * @param {Look} look
 * @returns {CanvasRenderingContext2D}
 */
export function surface(canvas, width, height, look) {
  const sharp = devicePixelRatio || 1;
  const wide = Math.round(width * sharp);
  const high = Math.round(height * sharp);
  if (canvas.width !== wide || canvas.height !== high) {
    canvas.width = wide;
    canvas.height = high;
  }
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  pen.setTransform(sharp, 0, 0, sharp, 0, 0);
  pen.clearRect(0, 0, width, height);
  pen.font = `600 12px ${look.font}`;
  pen.fillStyle = look.color;
  pen.strokeStyle = look.color;
  pen.lineWidth = 1;
  return pen;
}

/** @param {CanvasRenderingContext2D} pen @param {number} x @param {number} y @param {number} x2
 * @param {number} y2 */
export function line(pen, x, y, x2, y2) {
  pen.beginPath();
  pen.moveTo(x, y);
  pen.lineTo(x2, y2);
  pen.stroke();
}

/** @param {number} rank */
function tall(rank) {
  return [4, 6, 9, 12, 15][rank];
}
