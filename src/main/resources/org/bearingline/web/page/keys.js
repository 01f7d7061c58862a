/** Keys of the whole page: undo and redo. */

import { byId } from './dom.js';

/** @param {import('./desk.js').Desk} desk */
export function wireKeys(desk) {
  byId('undo').addEventListener('click', () => desk.step('undo'));
  byId('redo').addEventListener('click', () => desk.step('redo'));
  addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || document.querySelector('dialog[open]')) {
      return;
    }
    const key = event.key.toLowerCase();
    const way = key === 'z' && !event.shiftKey ? 'undo' : key === 'y' || key === 'z' ? 'redo' : null;
    if (way) {
      // The page's own steps hold what is typed in its fields, too.
      event.preventDefault();
      desk.step(way);
    }
  });
}
