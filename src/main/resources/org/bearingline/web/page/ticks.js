/** The graduations of a rule: which lines stand where, how tall, and what is written at them. */

const INCH = 25.4;

/** Spacings in mm, coarse ones with all that they hold; each is drawn if it is not too dense. */
const IMPERIAL = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 6, 12, 24, 48].map((n) => n * INCH);
const METRIC = [0.1, 0.5, 1, 5, 10, 20, 50, 100, 200, 500, 1000];

/**
 * @typedef {{at: number, rank: number, text: string}} Tick `rank` 0 is the finest drawn, 1 the next
 */

/**
 * @param {number} from mm
 * @param {number} to mm
 * @param {number} scale pixels for a mm
 * @param {string} unit `in` or `mm`
 * @param {{tick: number, text: number}} room least pixels between ticks, and between texts
 * @returns {Tick[]}
 */
export function ticks(from, to, scale, unit, room) {
  const all = unit === 'in' ? IMPERIAL : METRIC;
  const fine = all.findIndex((step) => step * scale >= room.tick);
  if (fine < 0) {
    return [];
  }
  const texts = all.find((step, i) => i >= fine && step * scale >= room.text && wholeText(step, unit))
    ?? all[all.length - 1];
  const step = all[fine];
  const found = [];
  for (let i = Math.ceil(from / step - 1e-9); i * step <= to + 1e-9; i++) {
    const at = i * step;
    let rank = 0;
    while (fine + rank + 1 < all.length && rank < 4 && isMultiple(at, all[fine + rank + 1])) {
      rank++;
    }
    found.push({ at, rank, text: isMultiple(at, texts) ? written(at, unit) : '' });
  }
  return found;
}

/** @param {number} step @param {string} unit whether its multiples are short to write */
function wholeText(step, unit) {
  return unit === 'in' ? step >= INCH / 4 - 1e-9 : step >= 1;
}

/** @param {number} mm @param {string} unit */
function written(mm, unit) {
  if (unit !== 'in') {
    return String(Math.round(mm * 10) / 10);
  }
  const quarters = Math.round((mm / INCH) * 4);
  const whole = Math.trunc(quarters / 4);
  const rest = ['', '¼', '½', '¾'][Math.abs(quarters % 4)];
  return rest ? `${whole || (quarters < 0 ? '-' : '')}${rest}` : String(whole);
}

/** @param {number} at @param {number} step */
function isMultiple(at, step) {
  const n = at / step;
  return Math.abs(n - Math.round(n)) < 1e-6;
}
