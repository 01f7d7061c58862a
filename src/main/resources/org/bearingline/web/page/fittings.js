/** Fits the bench out: makes each thing on it and tells it what the others do when it is used. */

import { Refused, post } from './api.js';
import { AsDrawn } from './asdrawn.js';
import { Board } from './board.js';
import { byId } from './dom.js';
import { Drawn } from './drawn.js';
import { Files } from './files.js';
import { Kit } from './kit.js';
import { Layers } from './layers.js';
import { Leftovers } from './leftovers.js';
import { Measures } from './measures.js';
import { Paper } from './paper.js';
import { Order } from './order.js';
import { Parts } from './parts.js';
import { Rack } from './rack.js';
import { RealSize } from './realsize.js';
import { fieldOf } from './refusals.js';
import { say } from './say.js';
import { Stock } from './stock.js';
import { Tape } from './tape.js';
import { WhatIf } from './whatif.js';
import * as works from './work.js';

/** @typedef {import('./types.js').Work} Work */

/** @param {import('./bench.js').Bench} bench */
export function fittings(bench) {
  const { desk } = bench;
  const change = (/** @type {Work} */ work, /** @type {string} */ key, place = false) => desk.change(work, key, place);
  const board = new Board({
    pick: (number) => bench.pick(number),
    seen: (view) => bench.seen(view),
    real: () => bench.realSize(),
  });
  const real = new RealSize((scale) => bench.board.atScale(scale));
  const tape = new Tape((value) => bench.measures.row(bench.measures.held ?? '')?.put(value));
  const measures = new Measures({
    set: (name, text) => change(works.withMeasure(desk.work, name, text), `measure ${name}`),
    hold: () => {
      bench.held();
      bench.pointAt();
    },
    left: () => bench.whatIf.clear(),
  });
  const whatIf = new WhatIf((d) => bench.board.showGhost(d));
  const rack = new Rack({
    bit: (write) => change(works.withFields(desk.work, { bit: write, ...(write ? {} : { bearing: '', collar: '' }) }), 'bit'),
    follower: (kind, write) => change(works.withFields(desk.work, { bearing: '', collar: '', ...(kind === 'own' ? {} : { [kind]: write }) }), 'follower'),
  });
  const leftovers = new Leftovers((number) => bench.pick(number));
  const order = new Order();
  const layers = new Layers((id, on) => {
    bench.hidden = new Set([...bench.hidden].filter((one) => one !== id).concat(on ? [] : [id]));
    board.hide(bench.hidden);
  });
  const drawnPart = new Drawn((fields) => change(works.withFields(desk.work, fields), `drawn ${Object.keys(fields)[0]}`));
  const asDrawn = new AsDrawn({
    pick: (spot) => bench.lookAt(spot),
    set: (fields) => change(works.withFields(desk.work, fields), `drawn ${Object.keys(fields)[0]}`),
  });
  const stock = new Stock({
    part: (fields) => change(works.withFields(desk.work, fields), `part ${Object.keys(fields)[0]}`),
    stock: (fields) => change(works.withStock(desk.work, fields), 'stock'),
  });
  const paper = new Paper({
    job: (fields) => change(bench.onPaper(fields), `paper ${Object.keys(fields)[0]}`),
    map: (on) => bench.showMap(on),
  });
  const kit = new Kit({
    kit: (kit, what) => {
      change(works.withKit(desk.work, kit), `kit ${what}`);
      say(what);
    },
    usual: () => change(works.withUsualKit(desk.work), 'kit'),
    tried: async (kit) => {
      const work = works.withKit(desk.work, kit);
      try {
        await post('/api/rack', { state: { job: work.job, files: work.files }, part: work.part });
      } catch (error) {
        if (error instanceof Refused && fieldOf(error.trouble, work) === 'job:kit') {
          return error.trouble.sentence;
        }
        // What else is wrong is told where the kit is used.
      }
      return '';
    },
  });
  const parts = new Parts({
    look: (name) => desk.lookAt(works.looking(desk.work, name)),
    rename: (name) => change(works.renamed(desk.work, name), 'name'),
    quantity: (text) => change(works.withFields(desk.work, { quantity: text === '1' ? '' : text }), 'quantity'),
    copy: () => change(works.copied(desk.work), 'copy', true),
    remove: () => change(works.removed(desk.work), 'remove', true),
    add: () => bench.askShape('Which part comes next?', false),
    shape: () => bench.askShape('Which shape instead?', true),
    job: (name) => change(works.withJob(desk.work, { job: name }), 'job name'),
  });
  board.hide(bench.hidden);
  const files = new Files({ take: () => {}, print: () => {}, zip: () => {} });
  buttons(bench);
  return { board, real, tape, measures, whatIf, rack, leftovers, order, layers, drawnPart, asDrawn, stock, paper, kit, parts, files };
}

/** @param {import('./bench.js').Bench} bench */
function buttons(bench) {
  byId('note-close').addEventListener('click', () => bench.note(''));
  byId('whole').addEventListener('click', () => bench.board.whole());
  byId('real').addEventListener('click', () => bench.realSize());
  byId('real-again').addEventListener('click', () => bench.real.open());
  byId('larger').addEventListener('click', () => bench.board.zoom(1.4));
  byId('smaller').addEventListener('click', () => bench.board.zoom(1 / 1.4));
  byId('map-button').addEventListener('click', () => bench.showMap(!bench.map));
  byId('units').addEventListener('change', () => bench.desk.change(
    works.withJob(bench.desk.work, { units: byId('units-in').checked ? 'in' : 'mm' }), 'units'));
  byId('plates').addEventListener('change', (/** @type {any} */ event) => {
    bench.plate = Number(event.target.value);
    bench.ask();
  });
  for (const button of document.querySelectorAll('[data-to]')) {
    button.addEventListener('click', () => {
      const section = byId(/** @type {HTMLElement} */ (button).dataset.to ?? '');
      section.scrollIntoView({ block: 'start' });
      section.querySelector('h2')?.focus({ preventScroll: true });
    });
  }
}
