/**
 * What the page asks of the program, in the order of haste: the drawing with every change; the rack
 * and the sheets when the drawing has come to rest; the job's list of files last.
 */

import { Refused, post } from './api.js';
import { latest } from './latest.js';
import { onTheBoard } from './work.js';

/** @typedef {import('./types.js').Work} Work */

/** Quiet after the last change before the slower questions are put, in ms. */
const REST = 90;
const LONG_REST = 600;

/** No answer within this time counts as none, in ms. */
const PATIENCE = 20_000;

export class Asking {
  /**
   * @param {object} tell
   * @param {(drawing: any, wish: any) => void} tell.drawn
   * @param {(trouble: import('./types.js').Trouble, wish: any) => void} tell.refused
   * @param {(trouble: import('./types.js').Trouble) => void} tell.doubted the drawing stands, but
   *     something else asked with it is refused
   * @param {(error: Refused) => void} tell.lost
   * @param {() => void} tell.answered
   * @param {(rack: any, wish: any) => void} tell.racked
   * @param {(pages: any, wish: any) => void} tell.paged
   * @param {(sight: any, wish: any) => void} tell.sighted
   * @param {(job: any, wish: any) => void} tell.listed
   */
  constructor(tell) {
    this.tell = tell;
    this.resting = 0;
    this.longResting = 0;
    this.number = 0;
    this.draw = latest((wish) => this.put('/api/draw', wish.body), (answer, wish) => {
      tell.answered();
      tell.drawn(answer, wish);
    }, (error, wish) => this.failed(error, (trouble) => tell.refused(trouble, wish)));
    this.rack = this.slow('/api/rack', tell.racked);
    this.pages = this.slow('/api/pages', tell.paged);
    // What is wrong with a drawing is told with its part; here nothing is told twice.
    this.sight = this.slow('/api/drawn', tell.sighted, () => {});
    this.job = this.slow('/api/job', tell.listed);
  }

  /** @param {string} path @param {(answer: any, wish: any) => void} accept
   * @param {(trouble: import('./types.js').Trouble) => void} [refuse] */
  slow(path, accept, refuse = (trouble) => this.tell.doubted(trouble)) {
    return latest((wish) => this.put(path, wish.body), (answer, wish) => {
      this.tell.answered();
      if (wish.number === this.number) {
        accept(answer, wish);
      }
    }, (error, wish) => this.failed(error, (trouble) => {
      if (wish.number === this.number) {
        refuse(trouble);
      }
    }));
  }

  /**
   * @param {Work} work
   * @param {number} enlargement
   * @param {number} plate number of the template shown
   */
  ask(work, enlargement, plate) {
    const number = ++this.number;
    const state = { job: work.job, files: work.files };
    const body = { state, part: work.part, plate };
    this.draw.ask({ body: { ...body, enlargement }, number, work, enlargement, asked: performance.now() });
    clearTimeout(this.resting);
    clearTimeout(this.longResting);
    this.resting = setTimeout(() => {
      if (onTheBoard(work)?.item.drawing) {
        this.sight.ask({ body: { state, part: work.part }, number, work });
      }
      this.rack.ask({ body: { state, part: work.part }, number });
      this.pages.ask({ body, number });
    }, REST);
    this.longResting = setTimeout(() => this.job.ask({ body: { state }, number }), LONG_REST);
  }

  /** @param {Work} work @param {number} plate */
  askPages(work, plate) {
    this.pages.ask({ body: { state: { job: work.job, files: work.files }, part: work.part, plate }, number: this.number });
  }

  /** @param {string} path @param {any} body */
  async put(path, body) {
    const limit = AbortSignal.timeout(PATIENCE);
    try {
      return await post(path, body, limit);
    } catch (error) {
      if (limit.aborted) {
        throw new Refused({ sentence: 'This takes longer than it should. Make the last change smaller, or try again.', field: null }, 503);
      }
      throw error;
    }
  }

  /** @param {unknown} error @param {(trouble: import('./types.js').Trouble) => void} refuse */
  failed(error, refuse) {
    if (!(error instanceof Refused)) {
      throw error;
    }
    if (error.isInput) {
      this.tell.answered();
      refuse(error.trouble);
    } else {
      this.tell.lost(error);
    }
  }
}
