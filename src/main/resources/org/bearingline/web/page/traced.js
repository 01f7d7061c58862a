/** What was found while a picture was traced: shown when it is traced, and with its part afterwards. */

import { byId, h, setText } from './dom.js';

const TRACED = 'bearingline.traced';
const MIND = /^mind: /;

/** @typedef {Record<string, {from: string, words: string[]}>} Kept by the name of the shape's file */

/**
 * Lays what the program says of a picture into two lists, what to mind first.
 *
 * @param {string[]} words @param {Element} mind @param {Element} rest
 */
export function listed(words, mind, rest) {
  const items = (/** @type {string[]} */ some) => some.map((one) => h('li', {}, capital(named(one.replace(MIND, '')))));
  mind.replaceChildren(...items(words.filter((one) => MIND.test(one))));
  rest.replaceChildren(...items(words.filter((one) => !MIND.test(one))));
}

/** @param {string} sentence of the program, with the options of its commands @returns {string} with the dialog's own names */
export function named(sentence) {
  return sentence.replaceAll(/ \(--[^)]*\)/g, '').replaceAll(/--([a-z]+(?:-[a-z]+)*)/g, (option, name) => {
    const label = document.querySelector(`label[for="scan-${name}"]`);
    return label ? `“${label.textContent}”` : option;
  });
}

/** Keeps it as long as this tab is open. @param {string} shape @param {string} from @param {string[]} words */
export function keepTraced(shape, from, words) {
  try {
    sessionStorage.setItem(TRACED, JSON.stringify({ ...kept(), [shape]: { from, words } }));
  } catch {
    // No room for it; it was read when the picture was taken.
  }
}

/** @param {string} words @returns {string} with a capital letter, unless a file's name comes first */
function capital(words) {
  return /^\S+\.[a-z]+:/i.test(words) ? words : words.charAt(0).toUpperCase() + words.slice(1);
}

/** @returns {Kept} */
function kept() {
  try {
    return JSON.parse(sessionStorage.getItem(TRACED) ?? '{}');
  } catch {
    return {};
  }
}

/** @param {string|undefined} shape of the part on the board */
export function showTraced(shape) {
  const box = byId('traced-box');
  const known = shape ? kept()[shape] : undefined;
  box.hidden = !known;
  if (known && box.dataset.made !== JSON.stringify(known)) {
    box.dataset.made = JSON.stringify(known);
    setText(byId('traced-head'), `${/\.(svg|dxf)$/i.test(known.from) ? 'Made clean from' : 'Traced from'} ${known.from}`);
    listed(known.words, byId('traced-mind'), byId('traced-words'));
  }
}
