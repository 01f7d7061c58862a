/** One measure: its name, what it is, its field, and the ways to step it. */

import { h, setAttr, setText } from './dom.js';
import { largeStep, readLength, smallStep, stepped, writeLength } from './length.js';
import { refusalProps } from './refusals.js';
import { plain } from './words.js';

/** @typedef {import('./types.js').Measure} Measure */

export class MeasureRow {
  /** @param {Measure} measure @param {import('./measures.js').Measures} all */
  constructor(measure, all) {
    this.all = all;
    this.measure = measure;
    /** @type {string|undefined} */
    this.text = undefined;
    this.typing = false;
    const id = `measure-${measure.name}`;
    const about = h('span', { class: 'about', id: `${id}-about` }, measure.about);
    this.range = h('span', { class: 'range', id: `${id}-range` });
    this.usual = h('button', { type: 'button', class: 'usual', hidden: true, onclick: () => this.set('') });
    this.refusal = h('p', refusalProps(id));
    const described = `${id}-about ${id}-range ${id}-refusal`;
    if (measure.kind === 'choice') {
      this.field = this.choices(id, described);
    } else {
      this.input = this.textField(id, described);
      this.field = h('div', { class: 'stepper' },
        this.stepButton(-1, '−', `Less ${plain(measure.name)}`), this.input,
        this.stepButton(1, '+', `More ${plain(measure.name)}`));
    }
    const title = measure.kind === 'choice'
      ? h('span', { class: 'name', id: `${id}-name` }, plain(measure.name))
      : h('label', { class: 'name', for: id }, plain(measure.name));
    this.element = h('li', { class: 'measure', onfocusin: () => all.hold(measure.name), onpointerdown: () => all.hold(measure.name) },
      title, this.field, h('p', { class: 'foot' }, about, ' ', this.range, ' ', this.usual), this.refusal);
  }

  /** @param {string} id @param {string} described */
  textField(id, described) {
    const input = h('input', {
      id, type: 'text', role: 'spinbutton', autocomplete: 'off', spellcheck: 'false',
      inputmode: 'text', 'aria-describedby': described, 'data-field': `part:measures/${this.measure.name}`,
      oninput: () => {
        this.typing = true;
        this.set(input.value.trim());
      },
      onblur: () => {
        this.typing = false;
        this.show(this.measure, this.text);
      },
      onkeydown: (/** @type {KeyboardEvent} */ event) => this.key(event),
      onfocus: () => input.select(),
    });
    input.addEventListener('wheel', (/** @type {WheelEvent} */ event) => {
      if (document.activeElement === input) {
        event.preventDefault();
        this.step(event.deltaY < 0 ? 1 : -1, event.shiftKey);
      }
    }, { passive: false });
    return input;
  }

  /** @param {string} id @param {string} described */
  choices(id, described) {
    const name = this.measure.name;
    return h('div', { class: 'choice', id, role: 'radiogroup', 'aria-labelledby': `${id}-name`,
      'aria-describedby': described, 'data-field': `part:measures/${name}` },
    ...this.measure.choices.map((word) => h('label', {},
      h('input', { type: 'radio', name: id, value: word, onchange: () => this.set(word) }), h('span', {}, word))));
  }

  /** @param {number} by @param {string} sign @param {string} label */
  stepButton(by, sign, label) {
    let timer = 0;
    const stop = () => clearTimeout(timer);
    return h('button', {
      type: 'button', class: 'step', 'aria-label': label, tabindex: '-1',
      onpointerdown: (/** @type {PointerEvent} */ event) => {
        if (event.button === 0) {
          let wait = 420;
          const again = () => {
            this.step(by, event.shiftKey);
            wait = Math.max(60, wait * 0.8);
            timer = setTimeout(again, wait);
          };
          again();
        }
      },
      onpointerup: stop, onpointerleave: stop, onpointercancel: stop,
      onclick: (/** @type {MouseEvent} */ event) => {
        // A click without a pointer comes from a key or a helping device.
        if (event.detail === 0) {
          this.step(by, event.shiftKey);
        }
      },
    }, sign);
  }

  /** @param {KeyboardEvent} event */
  key(event) {
    const by = { ArrowUp: 1, ArrowDown: -1, PageUp: 1, PageDown: -1 }[event.key];
    if (by) {
      event.preventDefault();
      this.step(by, event.shiftKey || event.key.startsWith('Page'));
    } else if (event.key === 'Enter') {
      this.input.select();
    } else if (event.key === 'Escape' && this.text !== undefined) {
      this.typing = false;
      this.set('');
    }
  }

  /** @param {number} by @param {boolean} large */
  step(by, large) {
    const { unit, value, size } = this.current();
    const many = large ? (this.measure.kind === 'length' ? largeStep(unit) : 5) : 1;
    let next = value;
    for (let i = 0; i < many; i++) {
      next = stepped(next, size, by);
    }
    this.put(Math.min(this.most(), Math.max(this.least(), next)));
  }

  /** @param {number} value mm, degrees or a number, to be written into the field */
  put(value) {
    this.typing = false;
    const { unit } = this.current();
    const text = this.measure.kind === 'length' ? writeLength(value, unit) : String(round(value));
    this.set(this.measure.kind === 'angle' ? `${text}deg` : text);
  }

  /** The value in hand: what the job says, as far as it is understood, else what is drawn. */
  current() {
    const { kind } = this.measure;
    const read = kind === 'length' && this.text ? readLength(this.text, this.all.unit) : null;
    const unit = read?.unit ?? this.all.unit;
    if (kind === 'length') {
      return { unit, value: read?.mm ?? Number(this.measure.value), size: smallStep(unit) };
    }
    const typed = Number.parseFloat(this.text ?? '');
    const value = Number.isFinite(typed) ? typed : Number(this.measure.value);
    const size = kind === 'number' ? 0.1 : 1;
    return { unit, value, size };
  }

  least() {
    return this.measure.from?.value ?? -Infinity;
  }

  most() {
    return this.measure.to?.value ?? Infinity;
  }

  /** @param {string} text empty for the usual value */
  set(text) {
    this.text = text || undefined;
    this.all.tell.set(this.measure.name, text);
  }

  /** @param {Measure} measure @param {string|undefined} text as the job gives it */
  show(measure, text) {
    this.measure = measure;
    this.text = text;
    if (measure.kind === 'choice') {
      const chosen = text ?? String(measure.value);
      for (const radio of this.field.querySelectorAll('input')) {
        radio.checked = radio.value === chosen;
      }
    } else if (!this.typing) {
      const shown = this.shown();
      if (this.input.value !== shown) {
        this.input.value = shown;
      }
      const { value } = this.current();
      setAttr(this.input, 'aria-valuetext', shown);
      setAttr(this.input, 'aria-valuenow', String(round(value)));
      setAttr(this.input, 'aria-valuemin', String(round(this.least())));
      setAttr(this.input, 'aria-valuemax', String(round(this.most())));
    }
    const [from, to] = [measure.from, measure.to].map((end) => end && (this.all.unit === 'in' ? end.inch : end.mm));
    setText(this.range, from ? `${from} to ${to}` : '');
    const usual = this.all.usual.get(measure.name);
    const back = usual ? (this.all.unit === 'in' ? usual.inch : usual.mm) : 'the usual';
    this.usual.hidden = text === undefined || this.shown() === back;
    setText(this.usual, `back to ${back}`);
    setAttr(this.usual, 'aria-label', `${plain(measure.name)} back to ${back}`);
  }

  /** What stands in the field: the job's text in the maker's units. */
  shown() {
    const { kind } = this.measure;
    const unit = this.all.unit;
    if (this.text === undefined) {
      return unit === 'in' ? this.measure.inch : this.measure.mm;
    }
    const read = kind === 'length' ? readLength(this.text, unit) : null;
    const written = read ? writeLength(read.mm, unit) : '';
    // A length that the maker's units cannot write exactly stays as it was given.
    return read && Math.abs((readLength(written, unit)?.mm ?? NaN) - read.mm) < 1e-3 ? written : this.text;
  }

  /** What the tape pulls. @returns {import('./tape.js').Pulled|null} */
  pulled() {
    const { kind } = this.measure;
    if (kind === 'choice') {
      return null;
    }
    const { unit, value, size } = this.current();
    return {
      name: plain(this.measure.name), text: this.shown(), value, from: this.least(), to: this.most(),
      step: size, kind: kind === 'length' ? 'length' : 'plain', unit,
    };
  }
}

/** @param {number} value */
function round(value) {
  return Number(value.toFixed(4));
}
