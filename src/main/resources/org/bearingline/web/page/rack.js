/** The rack: the maker's bits, each a round of its size, with a plain word on how it cuts the part. */

import { byId, h, setAttr, setText, svg } from './dom.js';
import { templateWords } from './words.js';

/** @typedef {import('./types.js').Rack} RackAnswer */
/** @typedef {import('./types.js').Drawing} Drawing */

const ROOM = 46;
const LEAST = 7;

const SIGNS = {
  clean: 'M4 11l5 5L18 6',
  nearly: 'M3 9c3-4 5-4 8-1s5 3 8-1M3 16c3-4 5-4 8-1s5 3 8-1',
  leaves: 'M11 3v11M11 18v1',
  refused: 'M5 5l12 12M17 5L5 17',
};

export class Rack {
  /** @param {{bit: (write: string) => void, follower: (kind: string, write: string) => void}} tell */
  constructor(tell) {
    this.tell = tell;
    this.shelf = byId('shelf');
    this.rides = byId('rides');
    this.scaleNote = byId('shelf-scale');
    /** @type {RackAnswer|null} */
    this.answer = null;
    /** @type {Drawing|null} */
    this.drawing = null;
    this.scale = 1;
    this.made = '';
    this.revealed = -1;
    this.rides.addEventListener('change', () => {
      const [kind, write] = this.rides.value.split(' ');
      tell.follower(kind, write ?? '');
    });
    this.shelf.addEventListener('keydown', (/** @type {KeyboardEvent} */ event) => this.key(event));
  }

  /**
   * @param {RackAnswer|null} answer
   * @param {Drawing|null} drawing
   * @param {{bit?: string, bearing?: string, collar?: string}} chosen as the job says
   */
  show(answer, drawing, chosen) {
    this.answer = answer && { ...answer, bits: together(answer.bits) };
    this.drawing = drawing;
    this.chosen = chosen;
    if (!this.answer) {
      return;
    }
    const key = JSON.stringify([this.answer.bits.map((bit) => [bit.write, bit.cuttingLength]), this.answer.followers]);
    if (key !== this.made) {
      this.made = key;
      this.build(this.answer);
      this.revealed = -1;
    }
    this.showVerdicts(this.answer);
    this.showFollower();
    this.scaled(this.scale);
  }

  /** @param {RackAnswer} answer */
  build(answer) {
    const radios = [this.radio('', 'Choose for me', null), ...answer.bits.map((bit) => this.radio(bit.write, bit.words, bit))];
    this.shelf.replaceChildren(...radios);
    const group = (/** @type {string} */ kind, /** @type {string} */ label) => {
      const all = answer.followers.filter((follower) => follower.kind === kind);
      return all.length > 0 && h('optgroup', { label }, ...all.map((one) => h('option', { value: `${kind} ${one.write}` },
        one.inside ? `${one.words} collar, ${one.inside} inside` : `${one.words} bearing`)));
    };
    this.rides.replaceChildren(h('option', { value: 'own' }, 'its own bearing'),
      ...[group('bearing', 'Other bearings'), group('collar', 'Collars on the router’s base')].filter(Boolean));
  }

  /** @param {string} write @param {string} name @param {RackAnswer['bits'][0]|null} bit */
  radio(write, name, bit) {
    return h('button', { type: 'button', class: 'bit', role: 'radio', tabindex: '-1', 'data-write': write,
      onclick: () => this.tell.bit(write) },
    svg('svg', { class: 'round', width: ROOM, height: ROOM, viewBox: `${-ROOM / 2} ${-ROOM / 2} ${ROOM} ${ROOM}`, 'aria-hidden': 'true' },
      svg('circle', { class: 'steel' }),
      bit && svg('path', { class: 'wings' }),
      svg('circle', { class: 'follower' }),
      !bit && svg('path', { class: 'choose', d: 'M-8 1l6 6L9-7' })),
    h('span', { class: 'size' }, name),
    bit && h('span', { class: 'more' }, bit.cuttingLength === '?' ? '' : `${bit.cuttingLength} long`),
    h('span', { class: 'word' }, svg('svg', { class: 'sign', width: 22, height: 22, viewBox: '0 0 22 22', 'aria-hidden': 'true' }, svg('path', {})),
      h('span', { class: 'said' })));
  }

  /** @param {RackAnswer} answer */
  showVerdicts(answer) {
    const picked = this.pickedIndex(answer);
    this.reveal(picked);
    [...this.shelf.children].forEach((radio, i) => {
      const bit = i === 0 ? null : answer.bits[i - 1];
      const verdict = bit?.verdict ?? 'clean';
      setAttr(radio, 'data-verdict', bit ? verdict : 'choose');
      setAttr(/** @type {Element} */ (radio.querySelector('.sign path')), 'd', bit ? SIGNS[/** @type {keyof typeof SIGNS} */ (verdict)] ?? '' : '');
      const word = bit ? shortWord(bit) : this.drawing && !this.chosen?.bit ? `now ${this.drawing.tool.bitWords}` : 'largest clean bit';
      setText(/** @type {Element} */ (radio.querySelector('.said')), word);
      setAttr(radio, 'title', bit ? bit.word : '');
      setAttr(radio, 'aria-checked', String(i === picked));
      setAttr(radio, 'tabindex', i === picked ? '0' : '-1');
      const inRouter = bit !== null && this.drawing !== null && !this.chosen?.bit && Math.abs(bit.diameter - this.drawing.tool.bit) < 1e-6;
      radio.classList.toggle('in-router', inRouter);
    });
  }

  /** Brings the bit picked into the sight of the shelf when it changes. @param {number} picked */
  reveal(picked) {
    if (picked !== this.revealed) {
      this.revealed = picked;
      const radio = /** @type {HTMLElement} */ (this.shelf.children[picked]);
      const over = radio.offsetLeft + radio.offsetWidth - this.shelf.offsetLeft - this.shelf.clientWidth;
      const under = radio.offsetLeft - this.shelf.offsetLeft;
      this.shelf.scrollLeft = Math.min(Math.max(this.shelf.scrollLeft, over + 8), under);
    }
  }

  /** @param {RackAnswer} answer */
  pickedIndex(answer) {
    if (!this.chosen?.bit) {
      return 0;
    }
    const found = answer.bits.findIndex((bit) => bit.write === this.chosen?.bit);
    const near = this.drawing ? answer.bits.findIndex((bit) => Math.abs(bit.diameter - /** @type {Drawing} */ (this.drawing).tool.bit) < 1e-6) : -1;
    return (found >= 0 ? found : near) + 1;
  }

  showFollower() {
    const { bearing, collar } = this.chosen ?? {};
    const value = bearing ? `bearing ${bearing}` : collar ? `collar ${collar}` : 'own';
    if (![...this.rides.options].some((option) => option.value === value)) {
      this.rides.append(h('option', { value }, `${bearing ?? collar} ${bearing ? 'bearing' : 'collar'}, not in the kit`));
    }
    // A bit that the kit holds without a bearing is led by a collar unasked.
    const led = value === 'own' && this.drawing?.tool?.follower === 'collar';
    const own = this.rides.querySelector('option[value="own"]');
    own?.replaceChildren(led ? 'a collar: it has no bearing' : 'its own bearing');
    this.rides.value = value;
    setText(byId('rides-words'), `${this.ridesWords(Boolean(bearing), Boolean(collar) || led)} ${this.drawing ? templateWords(this.drawing) : ''}`);
  }

  /** @param {boolean} bearing of another size @param {boolean} collar */
  ridesWords(bearing, collar) {
    const tool = this.drawing?.tool;
    const differ = tool ? tool.followerDiameter - tool.bit : 0;
    if (collar) {
      return 'The collar on the router’s base rides the template; the bit runs inside it.';
    }
    if (Math.abs(differ) < 1e-6 || !bearing) {
      return 'The bearing rides the template.';
    }
    return differ > 0 ? 'The bearing is wider than the bit, so the cut stays out from the template.'
      : 'The bit is wider than its bearing, so it cuts in under the template.';
  }

  /** @param {number} scale pixels for a mm on the board */
  scaled(scale) {
    this.scale = scale;
    if (!this.answer) {
      return;
    }
    const widest = Math.max(...this.answer.bits.map((bit) => bit.diameter), 1);
    const thinnest = Math.min(...this.answer.bits.map((bit) => bit.diameter));
    let times = 1;
    while (thinnest * scale * times < LEAST && widest * scale * times * 2 <= ROOM) {
      times *= 2;
    }
    while (widest * scale * times > ROOM) {
      times /= 2;
    }
    const mm = scale * times;
    [...this.shelf.children].forEach((radio, i) => {
      const bit = i === 0 ? null : /** @type {RackAnswer} */ (this.answer).bits[i - 1];
      this.round(radio, bit ? bit.diameter * mm : 30, mm);
    });
    setText(this.scaleNote, times === 1 ? 'Drawn at the drawing’s scale.'
      : times > 1 ? `Drawn ${times} times the drawing’s scale.` : `Drawn at 1/${1 / times} of the drawing’s scale.`);
  }

  /** @param {Element} radio @param {number} wide in pixels @param {number} mm pixels for one */
  round(radio, wide, mm) {
    const r = wide / 2;
    setAttr(/** @type {Element} */ (radio.querySelector('.steel')), 'r', String(r));
    const wings = radio.querySelector('.wings');
    if (wings) {
      setAttr(wings, 'd', `M${-r} 0A${r / 2} ${r / 2} 0 0 1 0 0A${r / 2} ${r / 2} 0 0 0 ${r} 0`);
    }
    const held = radio.getAttribute('aria-checked') === 'true' || radio.classList.contains('in-router');
    const ring = held && this.drawing && wings ? (this.drawing.tool.followerDiameter * mm) / 2 : 0;
    setAttr(/** @type {Element} */ (radio.querySelector('.follower')), 'r', String(Math.min(ring, ROOM / 2 - 1)));
  }

  /** @param {KeyboardEvent} event */
  key(event) {
    const all = /** @type {HTMLElement[]} */ ([...this.shelf.children]);
    const at = all.indexOf(/** @type {HTMLElement} */ (document.activeElement));
    const to = { ArrowRight: at + 1, ArrowDown: at + 1, ArrowLeft: at - 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    if (to !== undefined && at >= 0) {
      event.preventDefault();
      const next = all[(to + all.length) % all.length];
      next.focus();
      this.tell.bit(next.dataset.write ?? '');
    }
  }
}

/** Bits of one diameter stand in one place of the rack: a job names a bit by its diameter.
 * @param {RackAnswer['bits']} bits @returns {RackAnswer['bits']} */
function together(bits) {
  /** @type {Map<string, RackAnswer['bits'][0]>} */
  const places = new Map();
  for (const bit of bits) {
    const there = places.get(bit.write);
    places.set(bit.write, there ? { ...there, cuttingLength: `${there.cuttingLength.replace(/ (in|mm)$/, '')}, ${bit.cuttingLength}` } : bit);
  }
  return [...places.values()];
}

/** @param {RackAnswer['bits'][0]} bit @returns {string} its verdict in few words */
function shortWord(bit) {
  const places = bit.leftovers === 1 ? '1 place' : `${bit.leftovers} places`;
  return { nearly: 'leaves a trace', leaves: `leaves ${places}`, refused: 'cannot cut it' }[bit.verdict] ?? bit.word;
}
