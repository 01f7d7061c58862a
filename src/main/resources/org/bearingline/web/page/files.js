/** The files: each can be taken away, printed, or all of them at once. */

import { byId, h, setText } from './dom.js';
import { fileWords } from './words.js';

/** @typedef {{name: string, files: string[], problem: any}} JobPart */

export class Files {
  /** @param {{take: (name: string) => void, print: () => void, zip: (all: boolean) => void}} tell */
  constructor(tell) {
    this.tell = tell;
    this.list = byId('file-list');
    this.jobList = byId('job-file-list');
    this.made = '';
    byId('print-sheets').addEventListener('click', () => this.tell.print());
    byId('zip-part').addEventListener('click', () => this.tell.zip(false));
    byId('zip-all').addEventListener('click', () => this.tell.zip(true));
  }

  /**
   * @param {string} part on the board
   * @param {string[]} own files of the part
   * @param {string[]} whole files of the job
   * @param {string[]} cautions
   */
  show(part, own, whole, cautions) {
    const key = JSON.stringify([part, own, whole, cautions]);
    if (key === this.made) {
      return;
    }
    this.made = key;
    this.list.replaceChildren(...own.map((name) => this.row(name)));
    this.jobList.replaceChildren(...whole.map((name) => this.row(name)));
    byId('cautions').replaceChildren(...cautions.map((caution) => h('li', {}, caution)));
    setText(byId('caution-count'), String(cautions.length));
  }

  /** @param {string} name */
  row(name) {
    const [title, about] = fileWords(name);
    return h('li', { class: 'file' },
      h('button', { type: 'button', class: 'take', 'data-file': name, onclick: () => this.tell.take(name) },
        h('span', { class: 'name' }, title), h('span', { class: 'about' }, about), h('span', { class: 'file-name' }, name)));
  }
}

/** @param {Blob} blob @param {string} name */
export function saveBlob(blob, name) {
  const url = URL.createObjectURL(blob);
  const link = h('a', { href: url, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Opens the browser's printing of a PDF. @param {Blob} blob */
export function printBlob(blob) {
  const url = URL.createObjectURL(blob);
  const frame = h('iframe', { class: 'print-frame', title: 'sheets to print' });
  frame.addEventListener('load', () => {
    try {
      frame.contentWindow.focus();
      frame.contentWindow.print();
    } catch {
      // A viewer that cannot be asked to print is shown in a tab of its own.
      open(url, '_blank');
    }
  });
  document.querySelector('.print-frame')?.remove();
  frame.src = url;
  document.body.append(frame);
}
