/** The drawing board: the part lying on it, its lines, the sheets of paper, the flags. */

import { byId, setAttr, svg } from './dom.js';
import { Flags } from './flags.js';
import { gestures } from './gestures.js';
import { Loupe } from './loupe.js';
import { LETTERING, LETTER_MM, areaOf, headScale, paintLayers } from './paint.js';
import { RULE, Rulers, lookOf } from './rulers.js';
import { allLayers } from './words.js';
import * as views from './view.js';

/** @typedef {import('./types.js').Drawing} Drawing */
/** @typedef {import('./types.js').View} View */
/** @typedef {import('./types.js').Pages} Pages */

const GLIDE = 180;

export class Board {
  /** @param {{pick: (number: number) => void, seen: (view: View) => void, real: () => void}} tell */
  constructor(tell) {
    this.tell = tell;
    this.window = byId('board-window');
    this.world = byId('world');
    this.wood = byId('wood');
    this.fibres = byId('wood-grain');
    this.plate = byId('plate');
    this.drawn = byId('drawn');
    this.ghost = byId('ghost');
    this.paper = byId('paper-sheets');
    this.rulers = new Rulers(byId('rule-across'), byId('rule-up'));
    this.flags = new Flags(byId('flags'), tell.pick);
    this.loupe = new Loupe(byId('flags'), byId('world-content'));
    /** @type {Drawing|null} */
    this.drawing = null;
    /** @type {number|null} */
    this.marked = null;
    /** @type {View} */
    this.view = { scale: 1, x: 0, y: 0 };
    this.size = { width: 0, height: 0 };
    /** Whether the maker has not moved the board away from the whole. */
    this.shownWhole = true;
    /** Enlargement that the lettering shown was set for. */
    this.enlarged = 1;
    /** @type {Pages|null} */
    this.pages = null;
    /** Place of the part's own drawing that is looked at. @type {import('./types.js').Spot|null} */
    this.spot = null;
    this.hidden = new Set();
    this.glide = 0;
    gestures(this.window, () => this.view, (view) => this.look(view), {
      whole: () => this.whole(),
      real: () => tell.real(),
      middle: () => ({ x: this.size.width / 2, y: this.size.height / 2 }),
    });
    new ResizeObserver(([entry]) => this.resized(entry.contentRect)).observe(this.window);
  }

  /** Lettering that the server sets for this size of board. @returns {number} */
  enlargement(width = this.drawing?.outline.width ?? 600, height = this.drawing?.outline.height ?? 200) {
    const room = { width: Math.max(200, this.size.width - 180), height: Math.max(120, this.size.height - 160) };
    const scale = Math.min(room.width / width, room.height / height);
    return Number(Math.min(60, Math.max(0.05, LETTERING / (LETTER_MM * scale))).toPrecision(3));
  }

  /** @param {Drawing} drawing @param {number} enlargement that it was asked with
   * @param {boolean} other whether it is another part or shape than the one shown */
  show(drawing, enlargement, other) {
    this.drawing = drawing;
    this.lay(drawing.layers);
    this.enlarged = enlargement;
    this.paintLines();
    this.fibres.style.display = drawing.grain === null ? 'none' : '';
    setAttr(byId('grain'), 'patternTransform', `rotate(${-(drawing.grain ?? 0)})`);
    this.flags.show(drawing.leftovers);
    this.rulers.zero = { x: drawing.outline.x, y: drawing.outline.y + drawing.outline.height };
    this.stale(false);
    this.mark(other || !drawing.leftovers.some((one) => one.number === this.marked) ? null : this.marked);
    if (other) {
      this.shownWhole = true;
    }
    if (other || (this.shownWhole && !views.sitsWell(this.box(), this.view, this.size, this.rim()))) {
      this.whole(!other);
    } else {
      this.repaint();
    }
  }

  /** Fills the part with wood and the template's plate with its tint.
   * @param {import('./types.js').Layer[]} layers */
  lay(layers) {
    const area = (/** @type {string} */ id) => areaOf(layers.find((layer) => layer.id === id));
    setAttr(this.wood, 'd', area('part'));
    setAttr(this.fibres, 'd', area('part'));
    setAttr(this.plate, 'd', area('template'));
  }

  paintLines() {
    if (this.drawing) {
      paintLayers(this.drawn, withoutDoubles(this.drawing, this.hidden), this.enlarged);
    }
  }

  /** Lays the drawing that the part was made after on it. @param {import('./types.js').Sight|null} sight */
  underlay(sight) {
    setAttr(/** @type {Element} */ (document.querySelector('.drawn-line')), 'd', sight?.drawn ?? '');
    byId('drawn-rings').replaceChildren(...(sight?.places ?? []).map((spot) => svg('circle', { class: 'drawn-ring', 'data-place': spot.number, cx: spot.x, cy: spot.y })));
    this.lookInto(null);
  }

  /** Looks at a place of the drawing through the glass. @param {import('./types.js').Spot|null} spot */
  lookInto(spot) {
    if (spot) {
      this.mark(null);
    }
    this.spot = spot;
    for (const ring of document.querySelectorAll('.drawn-ring')) {
      ring.classList.toggle('looked-at', Number(/** @type {SVGElement} */ (ring).dataset.place) === spot?.number);
    }
    this.showLoupe();
    if (spot) {
      this.bringPoint(spot);
    }
  }

  /** Nothing lies on the board. */
  clear() {
    this.underlay(null);
    this.drawing = null;
    this.lay([]);
    this.drawn.replaceChildren();
    this.flags.show([]);
    this.showPages(null);
    this.showGhost('');
    this.mark(null);
  }

  /** @param {boolean} stale whether what is drawn is not what is asked for */
  stale(stale) {
    this.window.classList.toggle('stale', stale);
  }

  /** @param {boolean} busy whether a newer drawing is on its way */
  busy(busy) {
    setAttr(this.window, 'aria-busy', String(busy));
  }

  /** @param {string} d an outline as it would be, or nothing */
  showGhost(d) {
    setAttr(this.ghost, 'd', d);
  }

  /** @param {Pages|null} pages */
  showPages(pages) {
    this.pages = pages;
    this.paper.replaceChildren(...(pages?.pages ?? []).map((page) => svg('g', { class: 'sheet' },
      svg('rect', { x: page.x, y: page.y, width: page.width, height: page.height }),
      svg('text', { transform: `translate(${page.x} ${page.y})`, dx: '0.5em', dy: '1.3em' }, page.name))));
    if (this.shownWhole && this.drawing && !views.sitsWell(this.box(), this.view, this.size, this.rim())) {
      this.whole();
    }
  }

  /** @param {Set<string>} hidden ids of layers */
  hide(hidden) {
    this.hidden = hidden;
    this.world.setAttribute('data-hidden', [...hidden].join(' '));
    this.paintLines();
    this.mark(this.marked);
  }

  /** @param {number|null} number of a leftover to point at */
  mark(number) {
    this.marked = number;
    this.spot = null;
    this.flags.mark(number, this.hidden.has('leftover'));
    this.showLoupe();
  }

  /** Shows a leftover even where it lay outside the window. @param {number} number */
  bring(number) {
    const leftover = this.drawing?.leftovers.find((one) => one.number === number);
    if (leftover) {
      this.bringPoint(leftover);
    }
  }

  /** @param {{x: number, y: number}} point */
  bringPoint(point) {
    const spot = views.onScreen(this.view, point);
    const inside = spot.x > RULE + 20 && spot.y > RULE + 20
      && spot.x < this.size.width - 20 && spot.y < this.size.height - 20;
    if (!inside) {
      this.shownWhole = false;
      this.glideTo(views.centredOn(this.view.scale, point, this.size));
    }
  }

  /** @param {boolean} [glide] */
  whole(glide = true) {
    this.shownWhole = true;
    if (this.drawing && this.size.width) {
      const view = views.fitted(this.box(), this.size, this.rim());
      if (glide) {
        this.glideTo(view);
      } else {
        this.set(view);
      }
    }
  }

  /** @param {number} scale pixels for a mm */
  atScale(scale) {
    const middle = views.onBoard(this.view, { x: this.size.width / 2, y: this.size.height / 2 });
    const outline = this.drawing?.outline;
    // From the whole one comes to an edge rather than to bare wood.
    const point = this.drawing?.leftovers.find((one) => one.number === this.marked)
      ?? (this.shownWhole && outline ? { x: outline.x + outline.width / 2, y: outline.y + outline.height } : middle);
    this.shownWhole = false;
    this.glideTo(views.centredOn(scale, point, this.size));
  }

  /** @param {number} factor */
  zoom(factor) {
    this.look(views.zoomedAt(this.view, factor, this.size.width / 2, this.size.height / 2));
  }

  /** @param {View} view as the maker moves it */
  look(view) {
    this.shownWhole = false;
    cancelAnimationFrame(this.glide);
    this.set(view);
  }

  /** @param {View} to */
  glideTo(to) {
    cancelAnimationFrame(this.glide);
    const from = this.view;
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches || document.hidden;
    if (still || !from.x) {
      this.set(to);
      return;
    }
    const start = performance.now();
    const step = (/** @type {number} */ now) => {
      const t = Math.min(1, Math.max(0, (now - start) / GLIDE));
      this.set(t === 1 ? to : views.between(from, to, 1 - (1 - t) ** 3));
      if (t < 1) {
        this.glide = requestAnimationFrame(step);
      }
    };
    this.glide = requestAnimationFrame(step);
  }

  /** @param {View} view */
  set(view) {
    this.view = view;
    this.repaint();
    this.tell.seen(view);
  }

  repaint() {
    const { scale, x, y } = this.view;
    setAttr(this.world, 'transform', `matrix(${scale} 0 0 ${scale} ${x} ${y})`);
    this.world.style.setProperty('--k', String(1 / scale));
    this.world.style.setProperty('--head', String(headScale(this.enlarged, scale)));
    setAttr(byId('left-hatch'), 'patternTransform', `rotate(45) scale(${1 / scale})`);
    setAttr(byId('over-hatch'), 'patternTransform', `rotate(-45) scale(${1 / scale})`);
    if (this.size.width) {
      this.rulers.paint(this.view, this.size);
    }
    if (this.drawing) {
      const { outline } = this.drawing;
      const middle = { x: outline.x + outline.width / 2, y: outline.y + outline.height / 2 };
      this.flags.stand((point) => views.onScreen(this.view, point), views.onScreen(this.view, middle), this.words());
      this.showLoupe();
    }
  }

  /** Where the drawing's words stand on the screen. */
  words() {
    const all = this.hidden.has('labels') ? [] : withoutDoubles(/** @type {Drawing} */ (this.drawing), this.hidden)
      .flatMap((layer) => layer.figures.filter((figure) => figure.kind === 'words'));
    return all.map((figure) => {
      const at = views.onScreen(this.view, figure);
      const half = figure.text.length * LETTERING * 0.28;
      const lean = { start: half, middle: 0, end: -half }[figure.anchor];
      const level = Math.abs(figure.turn) < 45;
      return { x: at.x + (level ? lean : 0), y: at.y - (level ? 5 : 0), half: level ? half : 8 };
    });
  }

  showLoupe() {
    const leftover = this.drawing?.leftovers.find((one) => one.number === this.marked) ?? null;
    const looked = this.spot ? { ...this.spot, d: '' } : leftover;
    this.loupe.show(looked, this.spot ? 0 : this.drawing?.tool.bit ?? 0, (point) => views.onScreen(this.view, point), this.enlarged);
  }

  /** What the whole is: the drawing, and the sheets that lie over it. */
  box() {
    const boxes = [/** @type {Drawing} */ (this.drawing).view, ...(this.pages?.pages ?? [])];
    const x = Math.min(...boxes.map((box) => box.x));
    const y = Math.min(...boxes.map((box) => box.y));
    return {
      x,
      y,
      width: Math.max(...boxes.map((box) => box.x + box.width)) - x,
      height: Math.max(...boxes.map((box) => box.y + box.height)) - y,
    };
  }

  rim() {
    return { left: RULE + 14, top: RULE + 14, right: 14, bottom: 14 };
  }

  /** @param {{width: number, height: number}} size */
  resized({ width, height }) {
    this.size = { width, height };
    this.rulers.look = lookOf(this.rulers.across);
    if (this.shownWhole) {
      this.whole(false);
    } else {
      this.repaint();
    }
  }
}

/** The flags carry the numbers of the leftovers, so the drawing need not; and where the room for
 * clamps is not shown, its words are not either.
 * @param {Drawing} drawing @param {Set<string>} hidden */
function withoutDoubles(drawing, hidden) {
  const numbers = new Set(drawing.leftovers.map((leftover) => String(leftover.number)));
  const double = (/** @type {string} */ text) => numbers.has(text) || (hidden.has('holding') && /^(clamp|tape)\b/.test(text));
  return allLayers(drawing).map((layer) => (layer.id !== 'labels' ? layer : {
    ...layer, figures: layer.figures.filter((figure) => figure.kind !== 'words' || !double(figure.text)),
  }));
}
