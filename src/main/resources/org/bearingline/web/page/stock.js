/** The wood and the saw: what the part is made of and how its blank is cut. */

import { byId } from './dom.js';
import { choiceField, putOptions, putValue, textField } from './fields.js';
import { onTheBoard } from './work.js';

/** @typedef {import('./types.js').Work} Work */

/** Fields of a part that the whole job may give for all. */
const TEXTS = [
  ['allowance', 'Left for the bit', 'Wood that the saw leaves outside the part, 1/16 in or 1.5 mm where nothing is said.', '1/16 in', '1.5 mm'],
  ['run-out', 'Template runs on', 'How far the template goes on past the ends of the work, so that the bearing is on it before the bit meets wood.', '1-1/2 in', '40 mm'],
  ['deepest-pass', 'Deepest pass', 'No pass takes more than this. Light passes are the safer ones.', 'as usual', 'as usual'],
  ['kerf', 'Kerf of the laser', 'Width that a laser or cutter burns away; it moves the line of the DXF alone.', 'none', 'none'],
];

export class Stock {
  /** @param {{part: (fields: Record<string, string>) => void, stock: (fields: Record<string, string>) => void}} tell */
  constructor(tell) {
    this.species = choiceField({ id: 'species', label: 'Wood', about: 'Of the whole job. How much a panel moves depends on it.', field: 'job:stock/species' }, [], (value) => tell.stock({ species: value }));
    this.thickness = textField({ id: 'thickness', label: 'Thickness', about: 'Of this part. It sets the passes: light cuts, one under the other.', field: 'part:thickness job:stock/thickness', usual: '3/4 in' }, (text) => tell.part({ thickness: text }));
    this.blade = choiceField({ id: 'saw-blade', label: 'Band-saw blade', about: 'Its width decides how tight the saw line turns.', field: 'part:saw-blade job:saw-blade' }, [], (value) => tell.part({ 'saw-blade': value }));
    this.router = choiceField({ id: 'router', label: 'Router', about: 'Held in the hands, or upside down in a table: at the table the feed goes the other way.', field: 'part:router job:router' },
      [{ value: '', text: 'as usual, in the hands' }, { value: 'hand', text: 'in the hands' }, { value: 'table', text: 'in a table' }], (value) => tell.part({ router: value }));
    this.texts = TEXTS.map(([name, label, about, usual, metric]) => ({
      name, usual, metric,
      ...textField({ id: name, label, about, usual, field: `part:${name} job:${name}` }, (text) => tell.part({ [name]: text })),
    }));
    byId('stock-fields').replaceChildren(this.species.element, this.thickness.element, this.router.element, this.blade.element,
      ...this.texts.map((text) => text.element));
  }

  /** @param {{name: string}[]} species */
  know(species) {
    putOptions(this.species.input, [{ value: '', text: 'not said' }, ...species.map(({ name }) => ({ value: name, text: name }))]);
  }

  /** @param {Work} work @param {import('./types.js').Rack|null} rack */
  show(work, rack) {
    const item = onTheBoard(work)?.item ?? {};
    const { job } = work;
    putValue(this.species.input, String(item.species ?? job.stock?.species ?? ''));
    const metric = job.units === 'mm';
    this.thickness.input.placeholder = metric ? '20 mm' : '3/4 in';
    for (const text of this.texts) {
      text.input.placeholder = metric ? text.metric : text.usual;
    }
    putValue(this.thickness.input, String(item.thickness ?? job.stock?.thickness ?? ''));
    const blades = (rack?.blades ?? []).map((blade) => ({ value: blade.write, text: `${blade.words}, turns ${blade.radius}` }));
    const key = JSON.stringify(blades);
    if (this.blade.input.dataset.made !== key) {
      this.blade.input.dataset.made = key;
      putOptions(this.blade.input, [{ value: '', text: 'as usual' }, ...blades]);
    }
    putValue(this.blade.input, String(item['saw-blade'] ?? job['saw-blade'] ?? ''));
    putValue(this.router.input, String(item.router ?? job.router ?? ''));
    for (const { name, input } of this.texts) {
      putValue(input, String(item[name] ?? job[name] ?? ''));
    }
  }
}
