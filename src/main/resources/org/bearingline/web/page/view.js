/** How the board is looked at: pure arithmetic between mm on the board and pixels of the screen. */

/** @typedef {import('./types.js').View} View */
/** @typedef {import('./types.js').Box} Box */
/** @typedef {import('./types.js').Size} Size */

/** Fewest and most pixels for a mm. */
const LEAST = 0.02;
const MOST = 400;

/**
 * The view that shows a box as large as a window allows.
 *
 * @param {Box} box
 * @param {Size} size of the window
 * @param {{left: number, top: number, right: number, bottom: number}} rim pixels kept free
 * @returns {View}
 */
export function fitted(box, size, rim) {
  const width = Math.max(1, size.width - rim.left - rim.right);
  const height = Math.max(1, size.height - rim.top - rim.bottom);
  const scale = bounded(Math.min(width / Math.max(box.width, 1e-6), height / Math.max(box.height, 1e-6)));
  return {
    scale,
    x: rim.left + width / 2 - (box.x + box.width / 2) * scale,
    y: rim.top + height / 2 - (box.y + box.height / 2) * scale,
  };
}

/**
 * Whether a box still sits well in a window: wholly inside it and not much smaller than it.
 *
 * @param {Box} box
 * @param {View} view
 * @param {Size} size
 * @param {{left: number, top: number, right: number, bottom: number}} rim
 */
export function sitsWell(box, view, size, rim) {
  const best = fitted(box, size, rim).scale;
  const slack = 6;
  const left = box.x * view.scale + view.x;
  const top = box.y * view.scale + view.y;
  const inside = left >= rim.left - slack && top >= rim.top - slack
    && left + box.width * view.scale <= size.width - rim.right + slack
    && top + box.height * view.scale <= size.height - rim.bottom + slack;
  return inside && view.scale > best * 0.72;
}

/** @param {View} view @param {number} factor @param {number} px @param {number} py @returns {View} */
export function zoomedAt(view, factor, px, py) {
  const scale = bounded(view.scale * factor);
  const real = scale / view.scale;
  return { scale, x: px - (px - view.x) * real, y: py - (py - view.y) * real };
}

/** @param {View} view @param {number} dx @param {number} dy @returns {View} */
export function moved(view, dx, dy) {
  return { scale: view.scale, x: view.x + dx, y: view.y + dy };
}

/** The view of another scale that has a point of the board in the middle of the window.
 * @param {number} scale @param {{x: number, y: number}} point @param {Size} size @returns {View} */
export function centredOn(scale, point, size) {
  const bound = bounded(scale);
  return { scale: bound, x: size.width / 2 - point.x * bound, y: size.height / 2 - point.y * bound };
}

/** A view between two, for a short glide. @param {View} a @param {View} b @param {number} t 0 to 1
 * @returns {View} */
export function between(a, b, t) {
  const scale = a.scale * (b.scale / a.scale) ** t;
  // The point that stays put under a zoom from a to b, if there is one, keeps the glide straight.
  const s = Math.abs(b.scale - a.scale) < 1e-9 ? t : (scale - a.scale) / (b.scale - a.scale);
  return { scale, x: a.x + (b.x - a.x) * s, y: a.y + (b.y - a.y) * s };
}

/** @param {View} view @param {{x: number, y: number}} point of the board */
export function onScreen(view, point) {
  return { x: point.x * view.scale + view.x, y: point.y * view.scale + view.y };
}

/** @param {View} view @param {{x: number, y: number}} point of the window */
export function onBoard(view, point) {
  return { x: (point.x - view.x) / view.scale, y: (point.y - view.y) / view.scale };
}

/** @param {number} scale */
function bounded(scale) {
  return Math.min(MOST, Math.max(LEAST, scale));
}
