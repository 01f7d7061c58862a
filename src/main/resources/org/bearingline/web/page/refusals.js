/** Shows a refusal at the field it speaks of, in the program's own sentence. */

import { byId, setText } from './dom.js';
import { onTheBoard } from './work.js';

/** @typedef {import('./types.js').Trouble} Trouble */
/** @typedef {import('./types.js').Work} Work */

/**
 * A field's name here: `part:bit` for the part on the board, `job:paper` for the whole job.
 *
 * @param {Trouble|null} trouble
 * @param {Work} work
 * @returns {string} empty where it is at no field of the page
 */
export function fieldOf(trouble, work) {
  const pointer = trouble?.field ?? '';
  const place = onTheBoard(work);
  const own = place ? `/${place.list}/${place.index}/` : '';
  if (own && pointer.startsWith(own)) {
    return `part:${pointer.slice(own.length)}`;
  }
  return /^\/(parts|panels)\//.test(pointer) || !pointer.startsWith('/') ? '' : `job:${pointer.slice(1)}`;
}

/**
 * Shows a refusal, or takes away the one shown.
 *
 * @param {Trouble|null} trouble
 * @param {Work} work
 * @returns {boolean} whether a field of the page showed it
 */
export function showRefusal(trouble, work) {
  const name = fieldOf(trouble, work);
  let shown = false;
  for (const field of document.querySelectorAll('[data-field]')) {
    const names = (/** @type {HTMLElement} */ (field).dataset.field ?? '').split(' ');
    const here = name !== '' && names.some((one) => name === one || name.startsWith(`${one}/`));
    const line = byId(`${field.id}-refusal`);
    setText(line, here && trouble ? trouble.sentence : '');
    field.setAttribute('aria-invalid', String(here));
    shown ||= here && field.checkVisibility();
  }
  return shown;
}

/** @param {string} id of the field @returns {Record<string, any>} of the line that refuses */
export function refusalProps(id) {
  return { id: `${id}-refusal`, class: 'refusal', role: 'alert' };
}
