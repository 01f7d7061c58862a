/** The bench: what lies on the board, in the rack and on the notes beside it, kept in step. */

import { byId, setText } from './dom.js';
import { fittings } from './fittings.js';
import { writeLength } from './length.js';
import { measured } from './realsize.js';
import { say } from './say.js';
import { showTraced } from './traced.js';
import { allLayers, plain } from './words.js';
import * as works from './work.js';

/** @typedef {import('./types.js').Work} Work */
/** @typedef {import('./types.js').Drawing} Drawing */
/** @typedef {import('./types.js').Trouble} Trouble */

/** How long a note that asks for nothing stays, in ms. */
const NOTE_TIME = 8000;

export class Bench {
  /** @param {import('./desk.js').Desk} desk @param {import('./asking.js').Asking} asking
   * @param {import('./picker.js').Picker} picker */
  constructor(desk, asking, picker) {
    this.desk = desk;
    this.asking = asking;
    this.picker = picker;
    /** @type {Drawing|null} */
    this.drawing = null;
    /** @type {Trouble|null} */
    this.refusal = null;
    /** The drawing that the part on the board is made after. @type {import('./types.js').Sight|null} */
    this.sight = null;
    /** Part that it belongs to. */
    this.sightPart = '';
    /** Whether a field shows the refusal. */
    this.refusalShown = false;
    /** Shape that the drawing was made from. @type {string|undefined} */
    this.drawnShape = undefined;
    /** @type {import('./types.js').Rack|null} */
    this.rackAnswer = null;
    /** @type {import('./types.js').Pages|null} */
    this.pages = null;
    this.job = { parts: /** @type {any[]} */ ([]), files: /** @type {string[]} */ ([]) };
    this.plate = 1;
    this.map = false;
    // Whether the sheets are what the maker listens for.
    this.paperAsked = false;
    // Where clamps may stand fills the drawing; it is shown when it is asked for.
    this.hidden = new Set(['holding']);
    this.replace = false;
    this.noteTimer = 0;
    this.again = () => {};
    const fitted = fittings(this);
    this.board = fitted.board;
    this.real = fitted.real;
    this.tape = fitted.tape;
    this.measures = fitted.measures;
    this.whatIf = fitted.whatIf;
    this.rack = fitted.rack;
    this.leftovers = fitted.leftovers;
    this.order = fitted.order;
    this.layers = fitted.layers;
    this.drawnPart = fitted.drawnPart;
    this.asDrawn = fitted.asDrawn;
    this.stock = fitted.stock;
    this.paper = fitted.paper;
    this.kit = fitted.kit;
    this.parts = fitted.parts;
    this.files = fitted.files;
  }

  /** @param {import('./types.js').Shop} shop */
  know(shop) {
    this.shop = shop;
    this.picker.know(shop);
    this.stock.know(shop.species);
    this.paper.know(shop, (mm) => writeLength(mm, this.unit));
  }

  get unit() {
    return this.desk.work.job.units === 'mm' ? 'mm' : 'in';
  }

  /** Nothing is on the bench yet. @param {Work|null} last seen here */
  first(last) {
    byId('go-on').hidden = !last;
    if (last) {
      setText(byId('go-on'), `Go on with ${last.job.job}`);
      byId('go-on').onclick = () => {
        byId('picker').close();
        this.desk.change(last, 'go on', true);
      };
    }
    this.picker.open('What are we making?', false);
  }

  /** @param {string} question @param {boolean} replace the shape of the part on the board */
  askShape(question, replace) {
    this.replace = replace;
    byId('go-on').hidden = true;
    this.picker.open(question, true);
  }

  /** @param {string} shape */
  picked(shape) {
    const { work } = this.desk;
    this.desk.change(this.replace ? works.withShape(work, shape) : works.withPart(work, shape), `shape ${shape}`, true);
    this.replace = false;
    byId('measures-title').focus({ preventScroll: true });
  }

  /** @param {Work} work @param {'changed'|'looked'|'returned'} how */
  show(work, how) {
    if (!works.onTheBoard(work) && work.job.parts.length) {
      this.desk.lookAt(works.looking(work, work.job.parts[0].name));
      return;
    }
    if (this.drawing && this.drawing.part !== work.part) {
      this.plate = 1;
    }
    if (how !== 'changed') {
      this.measures.settle();
    }
    if (this.shop && work.job.parts.length === 0) {
      this.picker.open('What are we making?', this.desk.steps.canUndo);
    }
    this.showFields();
    this.ask();
    if (how === 'returned' && this.shop) {
      this.passing();
      say('An earlier state of the work is back.');
    }
  }

  /** What the maker can set, from the work alone. */
  showFields() {
    const { work, steps } = this.desk;
    document.title = work.part ? `${plain(work.part)} — Bearing Line` : 'Bearing Line';
    byId(this.unit === 'in' ? 'units-in' : 'units-mm').checked = true;
    byId('undo').disabled = !steps.canUndo;
    byId('redo').disabled = !steps.canRedo;
    this.board.rulers.unit = this.unit;
    const troubled = new Set(this.job.parts.filter((part) => part.problem).map((part) => part.name));
    this.parts.show(work, troubled);
    const item = works.onTheBoard(work)?.item ?? {};
    const own = this.drawing && this.drawing.part === work.part && this.drawnShape === item.shape;
    const usual = this.shop?.shapes.find((shape) => shape.name === item.shape)?.measures ?? [];
    const measures = own && this.drawing?.measures.length ? this.drawing.measures : usual;
    this.measures.show(`${work.part} ${item.shape ?? item.drawing}`, item.drawing ? [] : measures, item.measures ?? {}, this.unit, usual);
    if (own || usual.length || item.drawing) {
      byId('tape').hidden = measures.length === 0;
    }
    byId('measures-teach').hidden = measures.length === 0 || Boolean(item.drawing);
    this.drawnPart.show(item);
    showTraced(item.shape);
    if (this.sight && (this.sightPart !== work.part || !item.drawing)) {
      this.see(null);
    }
    byId('no-measures').hidden = measures.length > 0 || Boolean(item.drawing);
    setText(byId('no-measures'), works.onTheBoard(work)?.list === 'panels' ? 'A panel takes its size from the frame it sits in.'
      : 'This shape has no measures to set.');
    this.held();
    this.rack.show(this.rackAnswer, this.drawing, item);
    this.stock.show(work, this.rackAnswer);
    this.paper.show(work, this.pages, this.map);
    this.kit.show(work.job.kit ? work.files[work.job.kit] ?? {} : this.shop?.kit ?? {}, this.shop?.kit ?? {});
    const empty = work.job.parts.length === 0;
    document.body.classList.toggle('nothing', empty);
    if (empty) {
      this.board.clear();
    }
  }

  ask() {
    const { work } = this.desk;
    if (works.onTheBoard(work) && this.shop) {
      this.board.busy(true);
      this.asking.ask(work, this.board.enlargement(), this.plate);
    }
  }

  showFiles() {
    const { work } = this.desk;
    const part = this.job.parts.find((one) => one.name === work.part);
    const own = part?.files ?? [];
    const whole = this.job.files.filter((name) => !this.job.parts.some((one) => one.files.includes(name)));
    this.files.show(work.part, own, whole, this.drawing?.cautions ?? this.shop?.cautions ?? []);
  }

  /** Every line that can be shown or not, that of the part's own drawing too. */
  shownLayers() {
    const layers = this.drawing ? allLayers(this.drawing) : [];
    return this.sight?.sound ? [...layers, { id: 'drawn', title: 'as drawn', role: 'note', words: [], figures: [] }] : layers;
  }

  /** @param {boolean} on */
  showMap(on) {
    this.map = on;
    this.paperAsked = on;
    byId('map-button').setAttribute('aria-pressed', String(on));
    if (on) {
      this.asking.askPages(this.desk.work, this.plate);
    } else {
      this.board.showPages(null);
    }
    this.showFields();
  }

  /** Paper is the whole job's, unless this part has its own. @param {Record<string, string>} fields */
  onPaper(fields) {
    this.paperAsked = true;
    const { work } = this.desk;
    const [name] = Object.keys(fields);
    return works.onTheBoard(work)?.item[name] === undefined ? works.withJob(work, fields) : works.withFields(work, fields);
  }

  /** @param {import('./types.js').Sight|null} sight of the drawing of the part on the board */
  see(sight) {
    this.sight = sight;
    this.sightPart = sight ? this.desk.work.part : '';
    this.asDrawn.show(sight);
    this.drawnPart.know(sight?.layers ?? []);
    // Without a unit the rules would measure what nobody knows.
    byId('board-window').classList.toggle('unsized', Boolean(sight?.units.length));
    this.board.underlay(sight?.sound ? sight : null);
    this.asDrawn.mark(sight?.sound ? null : this.board.marked);
  }

  /** Whether a drawing that no part can be made of lies on the board. */
  get faulty() {
    return this.sight !== null && !this.sight.sound && this.sightPart === this.desk.work.part;
  }

  /** @param {import('./types.js').Spot} spot of the drawing, looked at or no more */
  lookAt(spot) {
    if (this.faulty && spot.kind !== 'gap') {
      this.pick(spot.number);
      return;
    }
    const same = this.board.spot?.number === spot.number;
    this.board.lookInto(same ? null : spot);
    this.leftovers.show(this.drawing, this.board.marked);
    this.asDrawn.mark(same ? null : spot.number);
  }

  /** @param {number} number of a leftover, or of a fault of the drawing */
  pick(number) {
    const same = this.board.marked === number;
    this.board.mark(same ? null : number);
    this.leftovers.show(this.drawing, this.board.marked);
    this.asDrawn.mark(this.faulty ? this.board.marked : null);
    if (!same) {
      this.board.bring(number);
      (this.faulty ? this.asDrawn : this.leftovers).reveal(number);
    }
  }

  /** @param {import('./types.js').View} view of the board as it now is */
  seen(view) {
    this.rack?.scaled(view.scale);
    const real = measured();
    const isReal = real !== null && Math.abs(view.scale / real - 1) < 1e-3;
    byId('real').setAttribute('aria-pressed', String(isReal));
    byId('real-again').hidden = !isReal;
  }

  realSize() {
    const scale = measured();
    if (scale) {
      this.board.atScale(scale);
    } else {
      this.real.open();
    }
  }

  /** The measure in hand goes to the tape. */
  held() {
    const row = this.measures?.row(this.measures.held ?? '');
    this.tape.show(row ? row.pulled() : null);
  }

  /** Shows which edge the measure in hand moves. */
  pointAt() {
    const row = this.measures?.row(this.measures.held ?? '');
    if (row?.measure.kind === 'length' && row.element.contains(document.activeElement) && !this.refusal) {
      this.whatIf.show(this.desk.work, row.measure, row.current().value);
    } else {
      this.whatIf?.clear();
    }
  }

  /** A note that asks for nothing goes when what it told of is past. */
  passing() {
    if (!byId('note').classList.contains('trouble')) {
      this.note('');
    }
  }

  /** @param {string} text @param {boolean} [trouble] */
  note(text, trouble = false) {
    const note = byId('note');
    clearTimeout(this.noteTimer);
    if (text && !trouble) {
      this.noteTimer = setTimeout(() => this.note(''), NOTE_TIME);
    }
    note.classList.toggle('trouble', trouble);
    setText(byId('note-text'), text);
    note.hidden = !text;
  }
}
