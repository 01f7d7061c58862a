/** Where the bit stands when it has gone as far into a corner as it can. */

/**
 * A leftover is bounded by the bit itself: among its arcs is one of the bit's radius.
 *
 * @param {string} d path data of the leftover, absolute M, L, A
 * @param {number} radius of the bit in mm
 * @returns {{x: number, y: number} | null} centre of the bit; null where no such arc is found
 */
export function bitPlace(d, radius) {
  const number = '(-?[\\d.]+(?:e-?\\d+)?)';
  const gap = '[ ,]*';
  const command = new RegExp(
    `([ML])${gap}${number}${gap}${number}|A${gap}${number}${gap}${number}${gap}${number}${gap}([01])${gap}([01])${gap}${number}${gap}${number}`, 'g');
  let at = { x: 0, y: 0 };
  let best = null;
  let longest = 0;
  for (const found of d.matchAll(command)) {
    if (found[1]) {
      at = { x: Number(found[2]), y: Number(found[3]) };
      continue;
    }
    const to = { x: Number(found[9]), y: Number(found[10]) };
    const r = Number(found[4]);
    const chord = Math.hypot(to.x - at.x, to.y - at.y);
    if (Math.abs(r - radius) < 1e-3 * Math.max(1, radius) && chord > longest) {
      longest = chord;
      best = centre(at, to, r, found[7] === '1', found[8] === '1');
    }
    at = to;
  }
  return best;
}

/**
 * Centre of an SVG arc that is part of a circle (SVG 2, implementation note on arcs).
 *
 * @param {{x: number, y: number}} from
 * @param {{x: number, y: number}} to
 * @param {number} r
 * @param {boolean} large
 * @param {boolean} sweep
 */
function centre(from, to, r, large, sweep) {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const chord = Math.hypot(dx, dy);
  const rise = Math.sqrt(Math.max(0, r * r - (chord * chord) / 4));
  const side = large === sweep ? -1 : 1;
  return {
    x: (from.x + to.x) / 2 - (side * rise * dy) / chord,
    y: (from.y + to.y) / 2 + (side * rise * dx) / chord,
  };
}
