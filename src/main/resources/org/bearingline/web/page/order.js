/** How the part is made: what the shop card says, step by step. */

import { byId, h } from './dom.js';

/** Said elsewhere on the page. */
const ELSEWHERE = new Set(['Reach', 'Measures']);

export class Order {
  constructor() {
    this.place = byId('order-list');
    this.made = '';
  }

  /** @param {import('./types.js').Drawing|null} drawing */
  show(drawing) {
    const sections = (drawing?.words ?? []).filter((section) => !ELSEWHERE.has(section.title));
    const key = JSON.stringify(sections);
    if (key === this.made) {
      return;
    }
    this.made = key;
    this.place.replaceChildren(...sections.map((section) => h('section', { class: 'order' }, h('h3', {}, section.title),
      ...section.lines.map((line) => h('p', {}, line)), table(section.rows ?? []))));
  }
}

/** @param {string[][]} rows the first is the head */
function table(rows) {
  const [head, ...body] = rows;
  return head && h('div', { class: 'table', tabindex: '0', role: 'group', 'aria-label': head.join(', ') }, h('table', {},
    h('thead', {}, h('tr', {}, ...head.map((cell) => h('th', { scope: 'col' }, cell)))),
    h('tbody', {}, ...body.map((row) => h('tr', {}, ...row.map((cell) => h('td', {}, cell)))))));
}
