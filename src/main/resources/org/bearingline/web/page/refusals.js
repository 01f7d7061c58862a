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
  if (work.job.kit && pointer === `files/${work.job.kit}`) {
    return 'job:kit';
  }
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
 * @returns {Element|null} the field of the page that shows it, null where none does
 */
export function showRefusal(trouble, work) {
  const name = fieldOf(trouble, work);
  let shown = null;
  for (const field of document.querySelectorAll('[data-field]')) {
    const names = (/** @type {HTMLElement} */ (field).dataset.field ?? '').split(' ');
    const here = name !== '' && names.some((one) => name === one || name.startsWith(`${one}/`));
    const line = byId(`${field.id}-refusal`);
    setText(line, here && trouble ? onThePage(trouble.sentence) : '');
    field.setAttribute('aria-invalid', String(here));
    if (here && field.checkVisibility()) {
      shown ??= field;
    }
  }
  return shown;
}

/**
 * @param {string} sentence of the program, which speaks of the options of its commands
 * @returns {string} the same with the names that the page's fields have
 */
export function onThePage(sentence) {
  return sentence.replaceAll(/ \(--[^)]*\)/g, '')
    .replaceAll(/--([a-z]+(?:-[a-z]+)*)/g, (option, name) => labelOf(name) ?? option);
}

/** @param {string} name of a job's field @returns {string|null} what stands before it on the page */
function labelOf(name) {
  const field = [...document.querySelectorAll('[data-field]')].find((one) =>
    (/** @type {HTMLElement} */ (one).dataset.field ?? '').split(' ').some((each) => each.endsWith(`:${name}`)));
  const label = field && document.querySelector(`label[for="${field.id}"]`);
  return label ? `“${label.textContent}”` : null;
}

/** @param {string} id of the field @returns {Record<string, any>} of the line that refuses */
export function refusalProps(id) {
  return { id: `${id}-refusal`, class: 'refusal', role: 'alert' };
}
