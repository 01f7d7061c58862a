/** The wall of patterns: every shape of the shop drawn from its real outline, to pick one from. */

import { byId, h, setAttr, svg } from './dom.js';
import { areaOf } from './paint.js';
import { plain } from './words.js';

/** @typedef {import('./types.js').Shop} Shop */
/** @typedef {import('./types.js').Drawing} Drawing */

export class Picker {
  /**
   * @param {{pick: (shape: string) => void, open: () => void}} tell
   * @param {(shape: string) => Promise<Drawing>} draw a shape at its usual measures
   */
  constructor(tell, draw) {
    this.tell = tell;
    this.draw = draw;
    this.dialog = byId('picker');
    this.wall = byId('wall');
    this.drawnFor = new Set();
    byId('picker-open').addEventListener('click', () => tell.open());
    byId('picker-close').addEventListener('click', () => this.dialog.close());
  }

  /** @param {Shop} shop */
  know(shop) {
    this.wall.replaceChildren(...shop.shapes.map((shape) => h('li', {}, h('button', {
      type: 'button', class: 'pattern', 'data-shape': shape.name,
      onclick: () => {
        this.dialog.close();
        this.tell.pick(shape.name);
      },
    }, svg('svg', { class: 'thumb', 'aria-hidden': 'true', preserveAspectRatio: 'xMidYMid meet' }),
    h('span', { class: 'name' }, plain(shape.name)), h('span', { class: 'about' }, shape.about)))));
  }

  /** @param {string} question @param {boolean} closable */
  async open(question, closable) {
    byId('picker-title').textContent = question;
    byId('picker-close').hidden = !closable;
    this.dialog.toggleAttribute('data-first', !closable);
    if (!this.dialog.open) {
      this.dialog.showModal();
    }
    for (const button of this.wall.querySelectorAll('.pattern')) {
      const shape = button.dataset.shape ?? '';
      if (!this.drawnFor.has(shape)) {
        this.drawnFor.add(shape);
        await this.thumb(button, shape);
      }
    }
  }

  /** @param {HTMLElement} button @param {string} shape */
  async thumb(button, shape) {
    try {
      const drawing = await this.draw(shape);
      const { x, y, width, height } = drawing.outline;
      const rim = Math.max(width, height) * 0.02;
      const picture = /** @type {SVGElement} */ (button.querySelector('svg'));
      setAttr(picture, 'viewBox', `${x - rim} ${y - rim} ${width + 2 * rim} ${height + 2 * rim}`);
      const area = (/** @type {string} */ id) => areaOf(drawing.layers.find((layer) => layer.id === id));
      picture.replaceChildren(svg('path', { class: 'thumb-wood', d: area('part') }),
        svg('path', { class: 'thumb-line', d: area('recess') + area('groove') }));
    } catch {
      // Without its picture a shape can be picked all the same; what is wrong shows on the board.
      this.drawnFor.delete(shape);
    }
  }
}
