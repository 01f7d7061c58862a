/** The parts of the job: slips to pick from, and what can be done with the one on the board. */

import { byId, h, setAttr, setText } from './dom.js';
import { putValue } from './fields.js';
import { refusalProps } from './refusals.js';
import { onTheBoard } from './work.js';
import { plain } from './words.js';

/** @typedef {import('./types.js').Work} Work */

export class Parts {
  /**
   * @param {{look: (name: string) => void, rename: (name: string) => void, quantity: (text: string) => void,
   *     copy: () => void, remove: () => void, add: () => void, shape: () => void, job: (name: string) => void}} tell
   */
  constructor(tell) {
    this.tell = tell;
    this.slips = byId('slips');
    this.name = byId('part-name');
    this.quantity = byId('part-quantity');
    this.made = '';
    for (const id of ['part-name', 'part-quantity', 'job-name']) {
      byId(id).after(h('p', refusalProps(id)));
    }
    this.name.addEventListener('change', () => tell.rename(this.name.value.trim()));
    this.quantity.addEventListener('input', () => tell.quantity(this.quantity.value.trim()));
    byId('job-name').addEventListener('input', () => tell.job(byId('job-name').value));
    byId('part-copy').addEventListener('click', tell.copy);
    byId('part-remove').addEventListener('click', tell.remove);
    byId('part-shape').addEventListener('click', tell.shape);
    byId('add-part').addEventListener('click', tell.add);
  }

  /** @param {Work} work @param {Set<string>} troubled names of parts that cannot be made */
  show(work, troubled) {
    const all = [...work.job.parts, ...(work.job.panels ?? [])];
    const key = JSON.stringify(all.map((item) => [item.name, item.quantity]));
    if (key !== this.made) {
      this.made = key;
      this.slips.replaceChildren(...all.map((item) => h('li', {}, h('button', {
        type: 'button', class: 'slip', 'data-part': item.name, onclick: () => this.tell.look(item.name),
      }, h('span', {}, plain(item.name)), Number(item.quantity) > 1 && h('span', { class: 'times' }, `× ${item.quantity}`),
      h('span', { class: 'slip-trouble' })))));
    }
    for (const slip of this.slips.querySelectorAll('button')) {
      setAttr(slip, 'aria-current', String(slip.dataset.part === work.part));
      setText(/** @type {Element} */ (slip.querySelector('.slip-trouble')), troubled.has(slip.dataset.part ?? '') ? 'not drawn' : '');
    }
    this.showOwn(work);
  }

  /** @param {Work} work */
  showOwn(work) {
    const place = onTheBoard(work);
    const item = place?.item ?? { name: '' };
    if (place) {
      setAttr(this.name, 'data-field', 'part:name');
    }
    putValue(this.name, item.name);
    putValue(this.quantity, String(item.quantity ?? 1));
    putValue(byId('job-name'), String(work.job.job ?? ''));
    byId('part-copy').disabled = place?.list !== 'parts';
    byId('part-shape').disabled = place?.list !== 'parts';
    byId('kept').replaceChildren(...keptWords(work).map((words) => h('li', {}, words)));
    byId('kept-box').hidden = keptWords(work).length === 0;
  }
}

/** What the job says that this page keeps and does not change. @param {Work} work */
function keptWords(work) {
  const words = [];
  const place = onTheBoard(work);
  const item = place?.item ?? {};
  const operations = item.operations ?? [];
  for (const operation of operations) {
    const [kind] = Object.keys(operation);
    const tool = operation.bit ? `, ${operation.bit} bit` : '';
    const face = operation.face === 'B' ? ', on the back' : '';
    words.push(`${plain(kind)}: ${operation[kind]}${tool}${face}`);
  }
  if (place?.list === 'panels') {
    words.push(`a panel that sits in the grooves of ${[item['top-rail'], item['bottom-rail']].filter(Boolean).map(plain).join(' and ') || 'the frame'}`);
  }
  for (const [field, text] of [['pair', 'made in pairs'], ['register', 'kept in register by'], ['grain', 'grain']]) {
    if (item[field] !== undefined) {
      words.push(`${text}: ${item[field]}`);
    }
  }
  if (work.job.offcuts?.length) {
    words.push(`${work.job.offcuts.length} boards that the blanks are laid out on`);
  }
  return words;
}
