/**
 * Lengths in the fields: read for stepping, and written again. The program on the other side reads
 * what is typed and refuses it; here a text that is not understood is simply not stepped.
 */

const INCH = 25.4;
const FRACTIONS = 64;

/**
 * @param {string} text such as `1-1/2in`, `3/4 in`, `19mm`, `≈ 2-1/64 in`
 * @param {string} bare unit of a text without one: `in` or `mm`
 * @returns {{mm: number, unit: 'in'|'mm'} | null} null where this is not plainly a length
 */
export function readLength(text, bare) {
  const match = /^≈?\s*(?:(\d+)(?:\s*-\s*|\s+))?(?:(\d+)\s*\/\s*(\d+)|(\d*\.?\d+))\s*(mm|cm|m|in|inch|inches|"|”|″)?$/i
    .exec(text.trim());
  if (!match || (match[1] && match[4]) || match[3] === '0') {
    return null;
  }
  const number = match[4] ? Number(match[4])
    : Number(match[1] ?? 0) + Number(match[2]) / Number(match[3]);
  const unit = (match[5] ?? bare).toLowerCase();
  const metric = { mm: 1, cm: 10, m: 1000 }[unit];
  return metric ? { mm: number * metric, unit: 'mm' } : { mm: number * INCH, unit: 'in' };
}

/**
 * @param {number} mm
 * @param {string} unit `in` for fractions down to 1/64, else millimetres to a thousandth
 * @returns {string} such as `1-1/2 in` or `19 mm`
 */
export function writeLength(mm, unit) {
  if (unit !== 'in') {
    return `${Number(mm.toFixed(3))} mm`;
  }
  const steps = Math.round((mm / INCH) * FRACTIONS);
  const whole = Math.floor(steps / FRACTIONS);
  let over = steps % FRACTIONS;
  let under = FRACTIONS;
  while (over && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (!over) {
    return `${whole} in`;
  }
  return `${whole ? `${whole}-` : ''}${over}/${under} in`;
}

/**
 * The next value up or down that is a whole number of steps.
 *
 * @param {number} value
 * @param {number} step more than 0
 * @param {number} by how many steps, below 0 for down
 * @returns {number}
 */
export function stepped(value, step, by) {
  const at = value / step;
  const near = Math.round(at);
  const on = Math.abs(at - near) < 1e-6;
  const from = on ? near : by > 0 ? Math.floor(at) : Math.ceil(at);
  return (from + by) * step;
}

/** @param {string} unit @returns {number} mm of one small step */
export function smallStep(unit) {
  return unit === 'in' ? INCH / 16 : 1;
}

/** @param {string} unit @returns {number} how many small steps make a large one */
export function largeStep(unit) {
  return unit === 'in' ? 8 : 10;
}
