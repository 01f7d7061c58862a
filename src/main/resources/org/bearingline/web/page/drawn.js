/** A part drawn elsewhere: how large it is, which edges are sawn, how its drawing is read. */

import { byId, h } from './dom.js';
import { choiceField, putOptions, putValue, textField } from './fields.js';
import { refusalProps } from './refusals.js';

const SIDES = ['bottom', 'left', 'right', 'top'];

const TEXTS = {
  width: ['Width', 'Of the whole part. One of the two is enough; the other keeps the proportion.', 'as drawn'],
  height: ['Height', 'Of the whole part.', 'as drawn'],
  'drill-up-to': ['Drilled up to', 'Round openings up to this diameter are holes to drill.', '1/2 in'],
  tolerance: ['How near', 'How far the clean line may lie from the drawn one.', '0.02 mm'],
  gap: ['Gaps joined', 'Loose ends that lie as near as this are joined.', '0.1 mm'],
};

const OUTLINE = { id: 'drawn-outline', label: 'Outline', about: 'Which of separate outlines is the part; 1 is the largest.', usual: 'the only one', field: 'part:outline' };

const ALL = [{ value: '', text: 'all that shows' }];

export class Drawn {
  /** @param {(fields: Record<string, any>) => void} set */
  constructor(set) {
    this.box = byId('drawn-fields');
    /** Layers offered, as text. */
    this.known = '';
    this.texts = Object.entries(TEXTS).map(([name, [label, about, usual]]) => ({
      name, ...textField({ id: `drawn-${name}`, label, about, usual, field: `part:${name}` }, (text) => set({ [name]: text })),
    }));
    this.unit = choiceField({ id: 'drawn-drawn-in', label: 'Drawn in', about: 'What one unit of the drawing is, where its file says none or a wrong one.', field: 'part:drawn-in' },
      ['', 'mm', 'cm', 'in', 'ft', 'm', 'px', 'pt'].map((value) => ({ value, text: { '': 'as the file says', px: 'px, 96 to the inch', pt: 'pt, 72 to the inch' }[value] ?? value })), (value) => set({ 'drawn-in': value }));
    this.layer = choiceField({ id: 'drawn-layer', label: 'Layer', about: 'The one layer of the drawing to take; of an SVG a group by its label or id.', field: 'part:layer' },
      ALL, (value) => set({ layer: value }));
    this.outline = textField(OUTLINE, (text) => set({ outline: text }));
    this.symmetric = choiceField({ id: 'drawn-symmetric', label: 'Made symmetric', about: 'Both halves become one another’s image.', field: 'part:symmetric' },
      [{ value: '', text: 'no' }, { value: 'left-right', text: 'left and right' }, { value: 'top-bottom', text: 'top and bottom' }], (value) => set({ symmetric: value }));
    this.unite = choiceField({ id: 'drawn-unite', label: 'Shapes over each other', about: 'Filled shapes that lie over or against each other become one.', field: 'part:unite' },
      [{ value: '', text: 'stay as drawn' }, { value: 'yes', text: 'become one' }], (value) => set({ unite: value }));
    this.sides = SIDES.map((side) => h('input', { type: 'checkbox', value: side,
      onchange: () => set({ 'sawn-edges': this.sides.filter((box) => box.checked).map((box) => box.value) }) }));
    const [width, height, ...rest] = this.texts;
    this.box.replaceChildren(width.element, height.element, this.sawn(), this.symmetric.element, this.unite.element, this.unit.element, this.layer.element, this.outline.element,
      ...rest.map((text) => text.element));
  }

  sawn() {
    return h('fieldset', { class: 'field', id: 'drawn-sawn-edges', 'data-field': 'part:sawn-edges' },
      h('legend', { class: 'name' }, 'Straight edges made at the saw'),
      h('div', { class: 'ticks' }, ...this.sides.map((box) => h('label', {}, box, h('span', {}, box.value)))),
      h('p', { class: 'about' }, 'They are not routed; the template is placed by them.'), h('p', refusalProps('drawn-sawn-edges')));
  }

  /** @param {{name: string, shapes: number}[]} layers of the drawing that show a line */
  know(layers) {
    const { input } = this.layer;
    const options = [...ALL, ...layers.map(({ name, shapes }) => ({ value: name, text: `${name} (${shapes === 1 ? '1 line' : `${shapes} lines`})` }))];
    const key = JSON.stringify(options);
    if (this.known !== key) {
      this.known = key;
      const { value } = input;
      putOptions(input, options);
      putValue(input, value);
    }
  }

  /** @param {Record<string, any>} item the part on the board */
  show(item) {
    this.box.hidden = !item.drawing;
    for (const { name, input } of [...this.texts, { name: 'drawn-in', ...this.unit }, { name: 'layer', ...this.layer }, { name: 'outline', ...this.outline }, { name: 'symmetric', ...this.symmetric }, { name: 'unite', ...this.unite }]) {
      putValue(input, String(item[name] ?? ''));
    }
    const sawn = item['sawn-edges'] ?? [];
    for (const box of this.sides) {
      box.checked = sawn.includes(box.value);
    }
  }
}
