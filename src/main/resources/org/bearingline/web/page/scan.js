/** A photo or scan of a template: asked how large the thing in it is, then traced. */

import { Refused, postFile } from './api.js';
import { byId, setText } from './dom.js';

/** @typedef {{name: string, text: string, words: string[]}} Traced */

const FIELDS = ['dpi', 'width', 'symmetric'];

/**
 * Asks until the picture is traced or the maker leaves it.
 *
 * @param {File} file
 * @returns {Promise<Traced|null>} null where it was left
 */
export function traced(file) {
  const dialog = byId('scan-dialog');
  setText(byId('scan-title'), `How large is what ${file.name} shows?`);
  refuse('');
  dialog.showModal();
  return new Promise((resolve, reject) => {
    /** @param {SubmitEvent} event */
    async function trace(event) {
      event.preventDefault();
      setText(byId('scan-busy'), 'Tracing …');
      try {
        const answer = await postFile(`/api/outline?${wishes()}`, file);
        if (answer.problem) {
          refuse(answer.problem.sentence);
        } else {
          end(() => resolve(answer));
        }
      } catch (error) {
        if (error instanceof Refused && error.isInput) {
          refuse(error.trouble.sentence);
        } else {
          end(() => reject(error));
        }
      }
      setText(byId('scan-busy'), '');
    }

    /** @param {() => void} then */
    function end(then) {
      byId('scan-form').removeEventListener('submit', trace);
      dialog.removeEventListener('close', left);
      dialog.close();
      then();
    }

    function left() {
      end(() => resolve(null));
    }

    byId('scan-form').addEventListener('submit', trace);
    dialog.addEventListener('close', left);
  });
}

/** @returns {string} what the fields ask for, as a query */
function wishes() {
  const given = FIELDS.map((name) => [name, byId(`scan-${name}`).value.trim()]).filter(([, value]) => value);
  return new URLSearchParams(given).toString();
}

/** @param {string} sentence */
function refuse(sentence) {
  setText(byId('scan-refusal'), sentence.replace('--dpi', 'its dots per inch'));
}
