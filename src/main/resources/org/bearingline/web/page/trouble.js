/** The road to the program: what to say and do when it does not answer. */

import { byId, h } from './dom.js';

/** How long to wait before asking again without being told, in ms. */
const AGAIN = 3000;

export class TroubleBar {
  /**
   * @param {{retry: () => void, keep: () => void, moveTo: (address: string) => void}} tell
   */
  constructor(tell) {
    this.tell = tell;
    this.bar = byId('trouble');
    this.timer = 0;
    this.kind = '';
  }

  /** @param {import('./api.js').Refused} error */
  show(error) {
    const kind = error.status === 0 ? 'gone' : error.status === 401 || error.status === 403 ? 'token' : 'busy';
    clearTimeout(this.timer);
    if (kind === 'gone') {
      this.timer = setTimeout(() => this.tell.retry(), AGAIN);
    }
    if (kind === this.kind && kind !== 'busy') {
      return;
    }
    this.kind = kind;
    const again = h('button', { type: 'button', onclick: () => this.tell.retry() }, 'Try again');
    const keep = h('button', { type: 'button', onclick: () => this.tell.keep() }, 'Keep a copy of my work');
    const words = {
      gone: 'The program behind this page does not answer. Start it again with “bearingline page”. Nothing is lost: your work stands in this page and in its address.',
      token: 'This page belongs to an earlier start of the program. Nothing is lost: paste the new address that “bearingline page” printed, and your work goes there with you.',
      busy: error.trouble.sentence,
    }[kind];
    this.bar.replaceChildren(h('p', {}, words), ...(kind === 'busy' ? [again] : kind === 'gone' ? [again, this.address(), keep] : [this.address(), keep]));
    this.bar.hidden = false;
  }

  /** Takes the bar away: an answer came. */
  clear() {
    clearTimeout(this.timer);
    if (this.kind) {
      this.kind = '';
      this.bar.hidden = true;
      this.bar.replaceChildren();
    }
  }

  address() {
    const input = h('input', { type: 'text', id: 'new-address', placeholder: 'http://127.0.0.1:…/#token=…', autocomplete: 'off' });
    return h('form', {
      class: 'address',
      onsubmit: (/** @type {SubmitEvent} */ event) => {
        event.preventDefault();
        this.tell.moveTo(input.value.trim());
      },
    }, h('label', { for: 'new-address' }, 'New address'), input, h('button', { type: 'submit' }, 'Go there'));
  }
}
