/** The lines of the drawing, each with its look, a word on what it is for, and a switch. */

import { byId, h, setAttr, setText, svg } from './dom.js';
import { LAYERS } from './words.js';

/** @typedef {import('./types.js').Layer} Layer */

/** Everything that can be switched, in the order of the work. */
const ORDER = ['part', 'template', 'leftover', 'overcut', 'rough-line', 'cutter-centre', 'feed', 'groove', 'panel', 'recess', 'holding', 'stock', 'marks', 'drawn', 'labels'];

export class Layers {
  /** @param {(id: string, on: boolean) => void} turn */
  constructor(turn) {
    this.list = byId('layer-list');
    /** @type {Map<string, HTMLElement>} */
    this.rows = new Map(ORDER.map((id) => [id, this.row(id, turn)]));
    this.list.replaceChildren(...this.rows.values());
  }

  /** @param {string} id @param {(id: string, on: boolean) => void} turn */
  row(id, turn) {
    const [name, about] = LAYERS[/** @type {keyof typeof LAYERS} */ (id)];
    const box = h('input', { type: 'checkbox', class: 'switch', id: `layer-${id}`, 'aria-describedby': `layer-${id}-about`,
      onchange: () => turn(id, box.checked) });
    return h('li', { class: 'layer-row' }, h('label', { for: `layer-${id}` }, box, sample(id), h('span', { class: 'name' }, name)),
      h('p', { class: 'about', id: `layer-${id}-about` }, about), h('p', { class: 'about own' }));
  }

  /** @param {Layer[]} layers on the drawing @param {Set<string>} hidden */
  show(layers, hidden) {
    for (const [id, row] of this.rows) {
      const layer = layers.find((one) => one.id === id);
      row.hidden = !layer;
      const box = /** @type {HTMLInputElement} */ (row.querySelector('input'));
      box.checked = !hidden.has(id);
      setText(/** @type {Element} */ (row.querySelector('.own')), (layer?.words ?? []).join(' '));
    }
  }
}

/** @param {string} id a short stretch of that line @returns {SVGElement} */
function sample(id) {
  const box = svg('svg', { class: 'sample', width: 56, height: 28, viewBox: '0 0 56 28', 'aria-hidden': 'true' });
  const group = svg('g', { class: `layer ${id}` });
  setAttr(group, 'data-layer', id);
  if (id === 'labels') {
    group.append(svg('text', { class: 'words', x: 28, y: 20, 'text-anchor': 'middle' }, '24 in'));
  } else if (['leftover', 'overcut', 'part'].includes(id)) {
    group.append(svg('path', { class: id === 'part' ? 'line wood' : 'area', d: 'M4 4H52V24H4Z' }));
  } else {
    group.append(svg('path', { class: 'line', d: 'M2 14H54' }));
  }
  if (id === 'feed') {
    group.append(svg('path', { class: 'head', d: 'M54 14L42 9V19Z' }));
  }
  box.append(group);
  return box;
}
