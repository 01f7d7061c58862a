/** The steps of a maker's work, so that each can be taken back and done again. */

/** @typedef {import('./types.js').Work} Work */

/** A change of the same thing within this time, in ms, belongs to the step before. */
const TOGETHER = 600;
const MOST = 200;

export class Steps {
  /** @param {Work} work */
  constructor(work) {
    /** @type {Work[]} */
    this.past = [];
    this.present = work;
    /** @type {Work[]} */
    this.future = [];
    this.key = '';
    this.at = -Infinity;
  }

  /**
   * @param {Work} work
   * @param {string} key what was changed, such as `measure rise`
   * @param {number} now ms
   */
  record(work, key, now) {
    const first = this.present.job.parts.length === 0 && this.past.length === 0;
    if (first || (key === this.key && now - this.at < TOGETHER)) {
      // There is no going back to an empty bench that nothing was done on.
      this.present = work;
    } else {
      this.past = [...this.past, this.present].slice(-MOST);
      this.present = work;
    }
    this.future = [];
    this.key = key;
    this.at = now;
  }

  /** Takes note of something that is no step, such as another part being looked at.
   * @param {Work} work */
  amend(work) {
    this.present = work;
    this.key = '';
  }

  get canUndo() {
    return this.past.length > 0;
  }

  get canRedo() {
    return this.future.length > 0;
  }

  /** @returns {Work} */
  undo() {
    const before = this.past.pop();
    if (before) {
      this.future = [...this.future, this.present];
      this.present = before;
    }
    this.key = '';
    return this.present;
  }

  /** @returns {Work} */
  redo() {
    const after = this.future.pop();
    if (after) {
      this.past = [...this.past, this.present];
      this.present = after;
    }
    this.key = '';
    return this.present;
  }

  /** What to keep over a reload. @param {number} most steps each way */
  kept(most) {
    return { past: this.past.slice(-most), future: this.future.slice(-most) };
  }

  /** @param {{past?: Work[], future?: Work[]}} kept */
  restore(kept) {
    this.past = kept.past ?? [];
    this.future = kept.future ?? [];
  }
}
