/** What the program answers, laid on the bench: a drawing, a refusal, the rack, the sheets, the files. */

import { asDrawing } from './asdrawn.js';
import { byId } from './dom.js';
import { onThePage, showRefusal } from './refusals.js';
import { say } from './say.js';
import { showPlates, showVerdict } from './verdict.js';
import { plain, templateWords, verdict } from './words.js';
import * as works from './work.js';

/** @typedef {import('./types.js').Drawing} Drawing */
/** @typedef {import('./types.js').Trouble} Trouble */

/** @param {import('./bench.js').Bench} bench */
export function answers(bench) {
  /** @param {Drawing} drawing @param {any} wish */
  function drawn(drawing, wish) {
    const shape = works.onTheBoard(wish.work)?.item.shape;
    const fresh = bench.drawing?.part !== drawing.part || bench.drawnShape !== shape;
    bench.drawing = drawing;
    bench.drawnShape = shape;
    bench.refusal = null;
    requestAnimationFrame(() => {
      if (bench.drawing !== drawing) {
        return;
      }
      const { work } = bench.desk;
      if (bench.faulty) {
        bench.see(null);
      }
      bench.board.show(drawing, wish.enlargement, fresh);
      showRefusal(null, work);
      showVerdict(drawing, null, false);
      bench.leftovers.show(drawing, bench.board.marked);
      bench.order.show(drawing);
      bench.layers.show(bench.shownLayers(), bench.hidden);
      showPlates(drawing, bench.plate);
      bench.showFields();
      bench.showFiles();
      bench.pointAt();
      if (wish.number === bench.asking.number) {
        bench.board.busy(false);
      }
      performance.measure('change to drawing', { start: wish.asked, end: performance.now() });
      say(`${plain(drawing.part)}, ${drawing.outline.words}. ${drawing.tool.words}: ${verdict(drawing)}. ${templateWords(drawing)}`);
      if (fresh && Math.abs(bench.board.enlargement() / wish.enlargement - 1) > 0.15) {
        // Only now is the size known that the lettering is set for.
        bench.ask();
      }
    });
  }

  /** @param {Trouble} refusal @param {any} wish */
  function refused(refusal, wish) {
    if (wish.number !== bench.asking.number) {
      return;
    }
    const before = bench.refusal?.sentence;
    bench.refusal = refusal;
    bench.pages = null;
    bench.passing();
    if (bench.drawing && bench.drawing.part !== bench.desk.work.part) {
      // What lies on the board is another part, which nobody asks for now.
      bench.drawing = null;
      bench.board.clear();
    }
    const shown = showRefusal(refusal, bench.desk.work);
    bench.whatIf.clear();
    bench.board.busy(false);
    // A drawing with faults is no old news: it is what is to be mended.
    bench.board.stale(!bench.faulty);
    bench.refusalShown = shown !== null;
    showVerdict(bench.drawing, refusal, bench.refusalShown);
    if (!shown) {
      say(onThePage(refusal.sentence));
    } else if (refusal.sentence !== before) {
      const whole = shown.closest('.field, .measures > li');
      (whole ?? byId(`${shown.id}-refusal`)).scrollIntoView({ block: 'nearest' });
    }
  }

  /** The drawing stands, but not all that hangs on it, such as its sheets. @param {Trouble} doubt */
  function doubted(doubt) {
    bench.pages = null;
    if (!bench.refusal && !showRefusal(doubt, bench.desk.work)) {
      bench.note(onThePage(doubt.sentence), true);
    }
  }

  /** @param {import('./types.js').Sight} sight @param {any} wish */
  function sighted(sight, wish) {
    const again = bench.faulty;
    bench.see(sight);
    if (!sight.sound) {
      bench.drawing = null;
      bench.board.show(asDrawing(sight, wish.work.part), bench.board.enlargement(sight.view.width, sight.view.height), !again);
      bench.leftovers.show(null, null);
      bench.layers.show([], bench.hidden);
      if (bench.refusal) {
        showVerdict(null, bench.refusal, bench.refusalShown);
      }
    } else if (bench.drawing) {
      bench.layers.show(bench.shownLayers(), bench.hidden);
    }
  }

  /** @param {import('./types.js').Rack} rack */
  function racked(rack) {
    bench.rackAnswer = rack;
    bench.showFields();
  }

  /** @param {import('./types.js').Pages} pages */
  function paged(pages) {
    bench.pages = pages;
    if (bench.paperAsked) {
      bench.paperAsked = false;
      say(`${pages.words}.`);
    }
    if (bench.map) {
      bench.board.showPages(pages);
    }
    bench.showFields();
  }

  /** @param {any} job */
  function listed(job) {
    bench.job = job;
    const own = job.parts.find((/** @type {any} */ part) => part.name === bench.desk.work.part);
    if (own?.problem) {
      doubted(own.problem);
    }
    bench.showFields();
    bench.showFiles();
  }

  return { drawn, refused, doubted, sighted, racked, paged, listed };
}
