/** What leaves the page and what comes to it: files taken, printed, saved and opened. */

import { packed } from './address.js';
import { Refused, post, postForBytes } from './api.js';
import { byId } from './dom.js';
import { printBlob, saveBlob } from './files.js';
import { opened, takeFiles } from './opening.js';
import { onThePage } from './refusals.js';
import { say } from './say.js';
import { keepTraced } from './traced.js';
import * as works from './work.js';

/** @typedef {import('./desk.js').Desk} Desk */
/** @typedef {import('./bench.js').Bench} Bench */

/**
 * @param {Desk} desk
 * @param {Bench} bench
 * @param {import('./trouble.js').TroubleBar} trouble
 */
export function wireFiles(desk, bench, trouble) {
  const state = () => ({ job: desk.work.job, files: desk.work.files });
  // The text as it was opened brings its comments to the saved one.
  const kept = () => ({ ...state(), opened: desk.work.opened });

  /** @param {string} what is being made @param {() => Promise<string|void>} make which may have a word to add */
  async function making(what, make) {
    bench.note(`Making ${what} …`);
    try {
      const more = await make();
      const words = [`${what} is ready.`, ...(more ? [more] : [])].join(' ');
      bench.note(words);
      say(words);
    } catch (error) {
      if (!(error instanceof Refused)) {
        throw error;
      }
      if (error.isInput) {
        bench.note(`${what} could not be made: ${error.trouble.sentence}`, true);
      } else {
        bench.note('');
        trouble.show(error);
      }
    }
  }

  bench.files.tell = {
    take: (name) => making(name, async () => saveBlob(await postForBytes('/api/file', { state: state(), name }), name)),
    print: () => {
      const name = `${desk.work.part}${bench.plate > 1 ? `-template-${bench.plate}` : ''}-sheets.pdf`;
      making(name, async () => printBlob(await postForBytes('/api/file', { state: state(), name })));
    },
    zip: (all) => {
      const name = `${all ? fileName(desk.work.job.job) : desk.work.part}.zip`;
      making(name, async () => saveBlob(await postForBytes('/api/zip', all ? { state: state() } : { state: state(), part: desk.work.part }), name));
    },
  };

  byId('save').addEventListener('click', () => making('The job file', async () => {
    const { name, text, losesComments } = await post('/api/save', { state: kept() });
    if (Object.keys(desk.work.files).length) {
      saveBlob(await postForBytes('/api/save.zip', { state: kept() }), `${fileName(desk.work.job.job)}-job.zip`);
    } else {
      saveBlob(new Blob([text], { type: 'application/yaml' }), name);
    }
    return losesComments ? 'The comments of the opened file are not in it.' : '';
  }));

  /** Files that the job on the bench names and that did not come with it. @type {Set<string>} */
  const missing = new Set();

  /** @param {File} file */
  async function take(file) {
    bench.note(`Reading ${file.name} …`);
    byId('picker').close();
    try {
      if (missing.delete(file.name)) {
        const files = { ...desk.work.files, [file.name]: await file.text() };
        desk.change({ ...desk.work, files }, `file ${file.name}`);
        bench.note(`${file.name} is with the job now.`);
        return;
      }
      taken(await opened(file, bench.unit), file.name);
    } catch (error) {
      if (!(error instanceof Refused)) {
        throw error;
      }
      bench.note(error.isInput ? `${file.name}: ${onThePage(error.trouble.sentence)}` : '', error.isInput);
      if (!error.isInput) {
        trouble.show(error);
      }
      if (!desk.work.job.parts.length) {
        bench.picker.open('What are we making?', false);
      }
    }
  }

  /** @param {import('./opening.js').Opened} what @param {string} from */
  function taken(what, from) {
    if (what.kind === 'nothing') {
      bench.note('');
      if (!desk.work.job.parts.length) {
        bench.picker.open('What are we making?', false);
      }
    } else if (what.kind === 'work') {
      const first = what.work.job.parts[0]?.name ?? '';
      desk.change({ ...what.work, files: what.work.files ?? {}, part: what.work.part || first }, `open ${from}`, true);
      missing.clear();
      what.missing.forEach((name) => missing.add(name));
      bench.note(missing.size ? `${from} names ${[...missing].join(', ')}; open that file, too.` : `${from} lies on the bench.`, missing.size > 0);
    } else if (what.kind === 'kit') {
      desk.change(works.withKit(desk.work, what.kit), 'kit', false);
      bench.note(`The rack holds what ${from} lists.`);
    } else if (what.kind === 'drawing') {
      const again = works.withDrawingAgain(desk.work, from, what.text);
      if (again) {
        desk.change(again, `draw ${from} again`, true);
        bench.note(`${from} is read again; what was set for the part stays.`);
        return;
      }
      desk.change(works.withDrawing(desk.work, from, what.text), `draw ${from}`, true);
      bench.note(`${from} is a part now: say which edges are sawn and how large it is.`);
    } else {
      keepTraced(what.name, from, what.words);
      desk.change(works.withPart(desk.work, what.name, { [what.name]: what.text }), `draw ${from}`, true);
      bench.note(`${from} is a part now.`);
    }
  }

  const choose = takeFiles(take);
  byId('open').addEventListener('click', choose);
  byId('scan-leave').addEventListener('click', () => byId('scan-dialog').close());

  return {
    choose,
    keepCopy() {
      saveBlob(new Blob([JSON.stringify(desk.work, null, 2)], { type: 'application/json' }), 'bearing-line-work.json');
    },
    /** @param {string} address printed by the program */
    async moveTo(address) {
      const field = byId('new-address');
      if (!/^http:\/\/(127\.0\.0\.1|localhost):\d+\/#token=/.test(address)) {
        field.setAttribute('aria-invalid', 'true');
        say('That is not the address that the program printed; it begins with http://127.0.0.1: and holds a token.');
        return;
      }
      const work = desk.work.job.parts.length ? `&state=${await packed(desk.work)}` : '';
      if (new URL(address).origin === location.origin) {
        location.hash = `${new URL(address).hash}${work}`;
      } else {
        location.assign(address + work);
      }
    },
  };
}

/** @param {unknown} name @returns {string} of the job, as file names are written */
function fileName(name) {
  return String(name ?? 'job').toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '') || 'job';
}
