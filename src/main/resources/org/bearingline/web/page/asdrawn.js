/** The drawing that a part is made after: what is wrong with it and where, or what was made of it. */

import { byId, h, setText } from './dom.js';

/** @typedef {import('./types.js').Sight} Sight */
/** @typedef {import('./types.js').Spot} Spot */
/** @typedef {import('./types.js').Drawing} Drawing */

export class AsDrawn {
  /**
   * @param {object} tell
   * @param {(spot: Spot) => void} tell.pick
   * @param {(fields: Record<string, string>) => void} tell.set
   */
  constructor(tell) {
    this.tell = tell;
    this.box = byId('drawing-box');
    this.list = byId('drawing-places');
    this.choices = byId('drawing-choices');
    this.words = byId('drawing-words');
    this.made = '';
    /** @type {Sight|null} */
    this.sight = null;
  }

  /** @param {Sight|null} sight of the part on the board */
  show(sight) {
    this.sight = sight;
    this.box.hidden = !sight;
    const key = JSON.stringify(sight && [sight.sound, sight.places, sight.words, sight.units, sight.layers, sight.more, sight.unites]);
    if (!sight || key === this.made) {
      return;
    }
    this.made = key;
    this.box.classList.toggle('faulty', !sight.sound);
    setText(byId('drawing-head'), headOf(sight));
    this.list.replaceChildren(...sight.places.map((spot) => h('li', {},
      h('button', { type: 'button', class: 'leftover-row', 'data-place': spot.number, 'aria-pressed': 'false', onclick: () => this.tell.pick(spot) },
        h('span', { class: 'balloon' }, signOf(spot, sight)), h('span', { class: 'leftover-words' }, spot.words)),
      spot.kind === 'outline' && choice(`outline ${spot.number}`, 'is the part', () => this.tell.set({ outline: String(spot.number) })))),
      ...(sight.more ? [h('li', {}, `and ${sight.more} more`)] : []));
    this.choices.replaceChildren(...this.offered(sight));
    this.words.replaceChildren(...sight.words.map((words) => h('li', {}, words)));
    byId('drawing-done').hidden = !sight.words.length;
  }

  /** @param {Sight} sight @returns {Element[]} what the drawing leaves open, to be said by one press */
  offered(sight) {
    if (sight.units.length) {
      return sight.units.map((unit) => choice(unit.write, `so it is ${unit.words}`, () => this.tell.set({ 'drawn-in': unit.write })));
    }
    if (sight.unites) {
      return [choice('unite', 'make one outline of the shapes that lie over each other', () => this.tell.set({ unite: 'yes' }))];
    }
    const several = sight.places.some((spot) => spot.kind === 'outline');
    return several && sight.layers.length > 1
      ? sight.layers.map((layer) => choice(layer.name, layer.shapes === 1 ? '1 line' : `${layer.shapes} lines`, () => this.tell.set({ layer: layer.name })))
      : [];
  }

  /** @param {number|null} number of the place that is looked at */
  mark(number) {
    for (const row of this.list.querySelectorAll('button')) {
      row.setAttribute('aria-pressed', String(Number(row.dataset.place) === number));
    }
  }

  /** @param {number} number */
  reveal(number) {
    this.list.querySelector(`[data-place="${number}"]`)?.scrollIntoView({ block: 'nearest' });
  }
}

/** @param {string} name @param {string} about @param {() => void} take */
function choice(name, about, take) {
  return h('button', { type: 'button', class: 'drawing-choice', 'data-choice': name, onclick: take }, h('span', { class: 'name' }, name), ' ', h('span', { class: 'about' }, about));
}

/** @param {Sight} sight */
function headOf(sight) {
  const count = (/** @type {string} */ kind) => sight.places.filter((spot) => spot.kind === kind).length;
  const outlines = count('outline') && count('outline') + sight.more;
  const faults = outlines ? 0 : count('fault') + sight.more;
  if (faults) {
    const mend = `end the drawing ${faults === 1 ? 'where the board shows 1' : `at the ${faults} numbers on the board`}, save it under its name, and drop it here again. What is set for this part stays.`;
    return sight.unites ? `Shapes lie over each other here. Unite them, or m${mend}` : `M${mend}`;
  }
  if (outlines) {
    return `The drawing holds ${outlines} outlines side by side, and a part is one of them. Which ${sight.layers.length > 1 ? 'layer, or which outline,' : 'of them'} is it?`;
  }
  if (sight.units.length) {
    return 'The drawing does not say how long its units are. What is one unit of it? Or give its width below.';
  }
  return sight.sound ? 'As it was drawn, and made clean' : '';
}

/** The numbers on a sound part are those of what the bit leaves; its drawing has letters.
 * @param {Spot} spot @param {Sight} sight @returns {string} */
export function signOf(spot, sight) {
  return sight.sound ? String.fromCharCode(96 + spot.number) : String(spot.number);
}

/**
 * A drawing that no part can be made of, as the board shows parts.
 *
 * @param {Sight} sight
 * @param {string} part
 * @returns {Drawing}
 */
export function asDrawing(sight, part) {
  const rim = Math.max(sight.view.width, sight.view.height) * 0.04;
  const { x, y, width, height } = sight.view;
  return {
    part,
    title: part,
    shape: '',
    quantity: 1,
    view: { x: x - rim, y: y - rim, width: width + 2 * rim, height: height + 2 * rim },
    outline: { ...sight.view, words: '' },
    measures: [],
    tool: { words: '', bit: 0, bitWords: '', follower: '', followerDiameter: 0, chosen: false },
    plates: [],
    layers: [{ id: 'drawn', title: 'as drawn', role: 'note', words: [], figures: [{ kind: 'line', d: sight.drawn }] }],
    leftovers: sight.places.filter((spot) => spot.kind !== 'gap').map((spot) => ({
      ...spot, d: '', advice: '', depthMm: 0, label: `${spot.kind === 'fault' ? 'Fault' : 'Outline'} ${spot.number} of the drawing: ${spot.words}`,
    })),
    overcuts: [],
    words: [],
    cautions: [],
    largest: '',
    proof: '',
    warnings: [],
    grain: null,
  };
}
