/** Moves the board under fingers, mouse, wheel and keys. */

import { moved, zoomedAt } from './view.js';

/** @typedef {import('./types.js').View} View */

const KEY_MOVE = 48;
const KEY_ZOOM = 1.25;

/**
 * @param {HTMLElement} window_ the board's window
 * @param {() => View} view as it is
 * @param {(view: View) => void} look
 * @param {{whole: () => void, real: () => void, middle: () => {x: number, y: number}}} keys
 */
export function gestures(window_, view, look, keys) {
  /** @type {Map<number, {x: number, y: number}>} */
  const fingers = new Map();

  window_.addEventListener('pointerdown', (event) => {
    if (event.button !== 0 || /** @type {Element} */ (event.target).closest('button, select, label')) {
      return;
    }
    fingers.set(event.pointerId, at(event));
    window_.setPointerCapture(event.pointerId);
  });
  window_.addEventListener('pointermove', (event) => {
    const before = fingers.get(event.pointerId);
    if (!before) {
      return;
    }
    const now = at(event);
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    look(other ? pinched(view(), before, now, other) : moved(view(), now.x - before.x, now.y - before.y));
    fingers.set(event.pointerId, now);
  });
  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
    window_.addEventListener(end, (event) => {
      fingers.delete(/** @type {PointerEvent} */ (event).pointerId);
    });
  }
  window_.addEventListener('wheel', (event) => {
    // Where the whole page scrolls, the wheel belongs to it until the board is being used.
    const scrolls = document.documentElement.scrollHeight > innerHeight + 1;
    if (scrolls && !event.ctrlKey && document.activeElement !== window_) {
      return;
    }
    event.preventDefault();
    const spot = at(event);
    if (event.shiftKey) {
      look(moved(view(), -(event.deltaX || event.deltaY), 0));
    } else {
      const notch = event.deltaMode === 1 ? 24 : 1;
      const factor = Math.exp(-event.deltaY * notch * (event.ctrlKey ? 0.01 : 0.0016));
      look(zoomedAt(view(), factor, spot.x, spot.y));
    }
  }, { passive: false });
  window_.addEventListener('keydown', (event) => {
    const action = keyAction(event, view(), keys);
    if (action && event.target === window_ && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      const next = action();
      if (next) {
        look(next);
      }
    }
  });

  /** @param {MouseEvent} event */
  function at(event) {
    const box = window_.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  }
}

/** @param {View} view @param {{x: number, y: number}} before @param {{x: number, y: number}} now
 * @param {{x: number, y: number}} other finger */
function pinched(view, before, now, other) {
  const was = Math.hypot(before.x - other.x, before.y - other.y);
  const is = Math.hypot(now.x - other.x, now.y - other.y);
  const middle = { x: (before.x + other.x) / 2, y: (before.y + other.y) / 2 };
  const zoomed = was > 1 ? zoomedAt(view, is / was, middle.x, middle.y) : view;
  return moved(zoomed, (now.x - before.x) / 2, (now.y - before.y) / 2);
}

/** @param {KeyboardEvent} event @param {View} view @param {any} keys
 * @returns {(() => View | void) | undefined} */
function keyAction(event, view, keys) {
  const far = event.shiftKey ? 4 : 1;
  const spot = keys.middle();
  /** @type {Record<string, () => View | void>} */
  const actions = {
    ArrowLeft: () => moved(view, KEY_MOVE * far, 0),
    ArrowRight: () => moved(view, -KEY_MOVE * far, 0),
    ArrowUp: () => moved(view, 0, KEY_MOVE * far),
    ArrowDown: () => moved(view, 0, -KEY_MOVE * far),
    '+': () => zoomedAt(view, KEY_ZOOM, spot.x, spot.y),
    '=': () => zoomedAt(view, KEY_ZOOM, spot.x, spot.y),
    '-': () => zoomedAt(view, 1 / KEY_ZOOM, spot.x, spot.y),
    0: keys.whole,
    1: keys.real,
  };
  return actions[event.key];
}
