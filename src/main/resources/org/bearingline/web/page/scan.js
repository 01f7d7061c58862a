/** A photo or scan of a template: asked how large the thing in it is, traced, looked at, and taken. */

import { Refused, postFile } from './api.js';
import { byId, h, setText, svg } from './dom.js';
import { listed, named } from './traced.js';

/** @typedef {import('./types.js').Layer} Layer */
/** @typedef {{name: string, text: string, words: string[], drawing: {layers: Layer[]}|null, problem: any}} Traced */

/** Lettering of the numbers at faults, in pixels of a picture as wide as the dialog. */
const LETTER = 15;
const ACROSS = 590;

/**
 * Asks until the picture is traced and taken, or the maker leaves it.
 *
 * @param {File} file
 * @param {string} units of the maker's job
 * @returns {Promise<Traced|null>} null where it was left
 */
export function traced(file, units) {
  const dialog = byId('scan-dialog');
  setText(byId('scan-title'), `How large is what ${file.name} shows?`);
  refuse('', null);
  result(null);
  dialog.showModal();
  /** @type {Traced|null} */
  let found = null;
  return new Promise((resolve, reject) => {
    /** @param {SubmitEvent} event */
    async function trace(event) {
      event.preventDefault();
      setText(byId('scan-busy'), 'Tracing …');
      byId('scan-trace').disabled = true;
      found = null;
      try {
        found = await postFile(`/api/outline?${wishes(units)}`, file);
        refuse('', null);
        result(found);
      } catch (error) {
        if (error instanceof Refused && error.isInput) {
          result(error.answer.drawing ? error.answer : null);
          refuse(error.trouble.sentence, error.trouble.field);
        } else {
          end(() => reject(error));
        }
      }
      byId('scan-trace').disabled = false;
      setText(byId('scan-busy'), '');
    }

    /** @param {() => void} then */
    function end(then) {
      byId('scan-form').removeEventListener('submit', trace);
      byId('scan-take').removeEventListener('click', take);
      dialog.removeEventListener('close', left);
      dialog.close();
      then();
    }

    function left() {
      end(() => resolve(null));
    }

    function take() {
      end(() => resolve(found));
    }

    byId('scan-form').addEventListener('submit', trace);
    byId('scan-take').addEventListener('click', take);
    dialog.addEventListener('close', left);
  });
}

/** @returns {any[]} the fields of the dialog */
function fields() {
  return [...byId('scan-form').querySelectorAll('[data-wish]')];
}

/** @param {string} units @returns {string} what the fields ask for, as a query */
function wishes(units) {
  const given = fields().map((field) => [field.dataset.wish, field.value.trim()]).filter(([, value]) => value);
  const sawn = [...document.querySelectorAll('[name=scan-sawn]:checked')].map((/** @type {any} */ box) => box.value);
  return new URLSearchParams([['units', units], ...given, ...(sawn.length ? [['sawn-edges', sawn.join(',')]] : [])]).toString();
}

/** @param {string} sentence @param {string|null} at pointer to the field at fault, such as `/dpi` */
function refuse(sentence, at) {
  setText(byId('scan-refusal'), named(sentence));
  for (const field of fields()) {
    const wrong = at === `/${field.dataset.wish}`;
    field.setAttribute('aria-invalid', String(wrong));
    if (wrong) {
      field.closest('details')?.setAttribute('open', '');
      field.focus();
    }
  }
  if (sentence) {
    byId('scan-refusal').scrollIntoView({ block: 'nearest' });
  }
}

/** @param {Traced|null} answer */
function result(answer) {
  const good = answer !== null && !answer.problem;
  byId('scan-result').hidden = !answer;
  byId('scan-teach').hidden = Boolean(answer);
  byId('scan-take').hidden = !good;
  byId('scan-trace').classList.toggle('main', !good);
  setText(byId('scan-trace'), answer ? 'Trace it again' : 'Trace it');
  if (!answer) {
    return;
  }
  setText(byId('scan-found'), good ? 'Traced: look it over, then take it' : 'Traced, but no template yet');
  listed(answer.words, byId('scan-mind'), byId('scan-words'));
  const layers = answer.drawing?.layers ?? [];
  sight(layers);
  byId('scan-faults').replaceChildren(...texts(layers).filter((text) => /^\d+: /.test(text)).map((text) => h('li', {}, text.replace(/^\d+: /, ''))));
  byId('scan-dialog').scrollTo({ top: 0 });
  byId('scan-found').focus({ preventScroll: true });
}

/** @param {Layer[]} layers @returns {string[]} all words on the picture */
function texts(layers) {
  return layers.flatMap((layer) => layer.figures).flatMap((figure) => (figure.kind === 'words' ? [figure.text] : []));
}

/** The traced edge with the clean line on it, and numbers at faults. @param {Layer[]} layers */
function sight(layers) {
  const picture = byId('scan-sight');
  picture.replaceChildren(...layers.filter((layer) => layer.id !== 'labels').map((layer) => svg('g', { class: `seen-${layer.id}` },
    ...layer.figures.map((figure) => figure.kind !== 'words' && svg('path', { class: figure.kind, d: figure.d })))));
  const box = picture.getBBox();
  const rim = Math.max(box.width, box.height) * 0.06;
  const letter = (LETTER * (Math.max(box.width, box.height) + 2 * rim)) / ACROSS;
  for (const figure of layers.flatMap((layer) => layer.figures)) {
    if (figure.kind === 'words' && /^\d+$/.test(figure.text)) {
      picture.append(svg('text', { class: 'seen-number', x: figure.x, y: figure.y, 'font-size': letter }, figure.text));
    }
  }
  picture.setAttribute('viewBox', `${box.x - rim} ${box.y - rim} ${box.width + 2 * rim} ${box.height + 2 * rim}`);
}
