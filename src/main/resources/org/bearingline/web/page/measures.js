/** The measures of the part: typed, stepped by keys and buttons, or pulled on the tape. */

import { byId } from './dom.js';
import { MeasureRow } from './measurerow.js';

/** @typedef {import('./types.js').Measure} Measure */

export class Measures {
  /** @param {{set: (name: string, text: string) => void, hold: (name: string|null) => void,
   *     left: () => void}} tell */
  constructor(tell) {
    this.tell = tell;
    this.list = byId('measure-list');
    this.list.addEventListener('focusout', () => tell.left());
    /** @type {Map<string, MeasureRow>} */
    this.rows = new Map();
    this.made = '';
    this.unit = 'in';
    /** @type {Map<string, Measure>} */
    this.usual = new Map();
    /** @type {string|null} */
    this.held = null;
  }

  /**
   * @param {string} key of the part and shape; rows are made anew when it changes
   * @param {Measure[]} measures
   * @param {Record<string, string>} texts as the job gives them
   * @param {string} unit
   * @param {Measure[]} usual the same measures as the shape has them
   */
  show(key, measures, texts, unit, usual) {
    this.unit = unit;
    this.usual = new Map(usual.map((measure) => [measure.name, measure]));
    const names = `${key} ${measures.map((measure) => measure.name).join(' ')}`;
    if (names !== this.made) {
      this.made = names;
      this.rows = new Map(measures.map((measure) => [measure.name, new MeasureRow(measure, this)]));
      this.list.replaceChildren(...[...this.rows.values()].map((row) => row.element));
      this.hold(measures[0]?.name ?? null);
    }
    for (const measure of measures) {
      this.rows.get(measure.name)?.show(measure, texts[measure.name]);
    }
  }

  /** @param {string|null} name of the measure in hand */
  hold(name) {
    if (this.held !== name) {
      this.held = name;
      for (const [each, row] of this.rows) {
        row.element.classList.toggle('held', each === name);
      }
      this.tell.hold(name);
    }
  }

  /** What is being typed counts no longer: the fields show the work. */
  settle() {
    for (const row of this.rows.values()) {
      row.typing = false;
    }
  }

  /** @param {string} name */
  row(name) {
    return this.rows.get(name);
  }
}
