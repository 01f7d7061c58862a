/** Small labelled fields: a text, or a choice, of the part or of the whole job. */

import { h } from './dom.js';
import { refusalProps } from './refusals.js';

/**
 * @typedef {object} FieldWords
 * @property {string} id
 * @property {string} label
 * @property {string} about
 * @property {string} field its name among the refusals, such as `part:allowance job:allowance`
 * @property {string} [usual] shown while nothing is given
 */

/**
 * A field for a text; what is typed counts at once.
 *
 * @param {FieldWords} words
 * @param {(text: string) => void} set
 */
export function textField(words, set) {
  const input = h('input', {
    id: words.id, type: 'text', autocomplete: 'off', spellcheck: 'false', placeholder: words.usual,
    'aria-describedby': `${words.id}-about ${words.id}-refusal`, 'data-field': words.field,
    oninput: () => set(input.value.trim()),
  });
  return { input, element: framed(words, input) };
}

/**
 * A field for one of several.
 *
 * @param {FieldWords} words
 * @param {{value: string, text: string}[]} options
 * @param {(value: string) => void} set
 */
export function choiceField(words, options, set) {
  const input = h('select', {
    id: words.id, 'aria-describedby': `${words.id}-about ${words.id}-refusal`, 'data-field': words.field,
    onchange: () => set(input.value),
  });
  putOptions(input, options);
  return { input, element: framed(words, input) };
}

/** @param {HTMLSelectElement} select @param {{value: string, text: string}[]} options */
export function putOptions(select, options) {
  select.replaceChildren(...options.map(({ value, text }) => h('option', { value }, text)));
}

/** What was last put into each field. @type {WeakMap<Element, string>} */
const put = new WeakMap();

/**
 * Puts a value into a field. Where the maker is typing only a new value counts: a name counts when
 * it is typed to its end, and an answer that comes before must not take the letters away.
 *
 * @param {any} input
 * @param {string} value
 */
export function putValue(input, value) {
  const isSelect = input.localName === 'select';
  if (isSelect && ![...input.options].some((option) => option.value === value)) {
    input.append(h('option', { value }, value));
  }
  const isOld = put.get(input) === value;
  const isTyped = !isSelect && document.activeElement === input;
  put.set(input, value);
  if (input.value !== value && !(isTyped && (isOld || input.value.trim() === value))) {
    input.value = value;
  }
}

/** @param {FieldWords} words @param {Element} input */
function framed(words, input) {
  return h('div', { class: 'field' }, h('label', { class: 'name', for: words.id }, words.label), input,
    h('p', refusalProps(words.id)), h('p', { class: 'about', id: `${words.id}-about` }, words.about));
}
