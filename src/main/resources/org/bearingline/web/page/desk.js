/** The work on the bench: what it is now, its steps back and forth, and its place in the address. */

import { packed, parts, unpacked } from './address.js';
import { Steps } from './undo.js';

/** @typedef {import('./types.js').Work} Work */

const LAST = 'bearingline.last';
const STEPS = 'bearingline.steps';
const KEPT_STEPS = 40;
const ADDRESS_PAUSE = 150;

export class Desk {
  /** @param {Work} work @param {(work: Work, how: 'changed'|'looked'|'returned') => void} changed */
  constructor(work, changed) {
    this.steps = new Steps(work);
    this.changed = changed;
    this.timer = 0;
    this.newPlace = false;
    addEventListener('popstate', () => this.fromAddress());
    addEventListener('pagehide', () => this.keepSteps());
  }

  get work() {
    return this.steps.present;
  }

  /**
   * @param {Work} work
   * @param {string} key what was changed; changes of one key in quick succession are one step
   * @param {boolean} [place] whether this is a place to come back to by the browser's back
   */
  change(work, key, place = false) {
    if (work === this.work) {
      return;
    }
    this.steps.record(work, key, performance.now());
    this.write(place);
    this.changed(work, 'changed');
  }

  /** Looks at another part; no step. @param {Work} work */
  lookAt(work) {
    this.steps.amend(work);
    this.write(true);
    this.changed(work, 'looked');
  }

  /** @param {'undo'|'redo'} way */
  step(way) {
    if (way === 'undo' ? this.steps.canUndo : this.steps.canRedo) {
      this.steps[way]();
      this.write(false);
      this.changed(this.work, 'returned');
    }
  }

  /** Begins with the work in the address. @returns {Promise<boolean>} whether there was any */
  async begin() {
    const { state } = parts(location.hash);
    const work = state ? await unpacked(state) : null;
    if (!work) {
      return false;
    }
    this.steps.amend(work);
    try {
      const kept = JSON.parse(sessionStorage.getItem(STEPS) ?? 'null');
      if (kept?.state === state) {
        this.steps.restore(kept);
      }
    } catch {
      // Steps that cannot be read are only steps; the work itself is in the address.
    }
    return true;
  }

  /** @returns {Promise<Work|null>} the work last seen in this browser under this address */
  async last() {
    const state = localStorage.getItem(LAST);
    return state ? unpacked(state) : null;
  }

  async fromAddress() {
    clearTimeout(this.timer);
    const { state } = parts(location.hash);
    const work = state ? await unpacked(state) : null;
    if (work && JSON.stringify(work) !== JSON.stringify(this.work)) {
      const otherPartOnly = JSON.stringify({ ...work, part: '' }) === JSON.stringify({ ...this.work, part: '' });
      if (otherPartOnly) {
        this.steps.amend(work);
      } else {
        this.steps.record(work, 'address', performance.now());
      }
      this.changed(work, 'returned');
    }
  }

  /** @param {boolean} place */
  write(place) {
    if (place && this.timer) {
      // What stood before is a place of its own and must not be lost to the pause.
      clearTimeout(this.timer);
    }
    this.newPlace ||= place;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.writeNow(), place ? 0 : ADDRESS_PAUSE);
  }

  async writeNow() {
    this.timer = 0;
    const work = this.work;
    const state = await packed(work);
    if (work !== this.work) {
      return;
    }
    const place = this.newPlace && parts(location.hash).state !== null;
    this.newPlace = false;
    history[place ? 'pushState' : 'replaceState'](null, '', `#state=${state}`);
    this.state = state;
    localStorage.setItem(LAST, state);
  }

  keepSteps() {
    try {
      sessionStorage.setItem(STEPS, JSON.stringify({ state: this.state ?? parts(location.hash).state, ...this.steps.kept(KEPT_STEPS) }));
    } catch {
      // No room for the steps; the work itself is in the address.
    }
  }
}
