/** Says in one sentence what changed, for those who listen rather than look. */

import { byId, setText } from './dom.js';

const PAUSE = 500;
let timer = 0;

/** @param {string} sentence said once all is quiet for half a second */
export function say(sentence) {
  clearTimeout(timer);
  timer = setTimeout(() => setText(byId('said'), sentence), PAUSE);
}
