/** The paper: which size, what the printer leaves white, how true it prints, how the sheets fall. */

import { byId, setText } from './dom.js';
import { choiceField, putOptions, putValue, textField } from './fields.js';
import { onTheBoard } from './work.js';

/** @typedef {import('./types.js').Work} Work */
/** @typedef {import('./types.js').Pages} Pages */

export class Paper {
  /** @param {{job: (fields: Record<string, string>) => void, map: (on: boolean) => void}} tell */
  constructor(tell) {
    this.paper = choiceField({ id: 'paper', label: 'Paper', about: 'A roll is cut off as needed. A copy shop can print the large ones.', field: 'part:paper job:paper' }, [], (value) => tell.job({ paper: value }));
    this.margin = textField({ id: 'margin', label: 'White rim', about: 'What your printer leaves white at the edge, if it is more or less than usual.', field: 'part:margin job:margin', usual: 'as usual' }, (text) => tell.job({ margin: text }));
    this.printed = textField({ id: 'printed', label: 'The two bars measured', about: 'Lay a rule on the two 100 mm bars of a printed page. If they are not 100 mm, write both here, such as 99.4,99.8, and print again.', field: 'part:printed job:printed', usual: '100,100' }, (text) => tell.job({ printed: text }));
    byId('paper-fields').replaceChildren(this.paper.element, this.margin.element, this.printed.element);
    this.map = byId('map-switch');
    this.map.addEventListener('change', () => tell.map(this.map.checked));
  }

  /** @param {import('./types.js').Shop} shop @param {(mm: number) => string} written */
  know(shop, written) {
    putOptions(this.paper.input, [{ value: '', text: 'as usual here' }, ...shop.papers.map((paper) => ({
      value: paper.name,
      text: `${paper.name}, ${written(paper.width)}${paper.height ? ` × ${written(paper.height)}` : ' wide'}`,
    }))]);
  }

  /** @param {Work} work @param {Pages|null} pages @param {boolean} map */
  show(work, pages, map) {
    const item = onTheBoard(work)?.item ?? {};
    for (const [field, name] of /** @type {const} */ ([[this.paper, 'paper'], [this.margin, 'margin'], [this.printed, 'printed']])) {
      putValue(field.input, String(item[name] ?? work.job[name] ?? ''));
    }
    this.map.checked = map;
    setText(byId('pages-words'), pages ? `${pages.words}.` : '');
  }
}
