/** Files brought to the page: picked, or dropped on it anywhere. */

import { postFile } from './api.js';
import { byId } from './dom.js';
import { isWork } from './address.js';
import { traced } from './scan.js';

/** @typedef {import('./types.js').Work} Work */

/**
 * @typedef {{kind: 'work', work: Work, missing: string[]} | {kind: 'kit', kit: Record<string, any>}
 *   | {kind: 'nothing'} | {kind: 'drawing', text: string}
 *   | {kind: 'outline', name: string, text: string, words: string[]}} Opened
 */

const DRAWN = /\.(svg|dxf)$/i;
/** A larger drawing, in bytes, is too much for the page's address: it is made clean at once. */
const LARGEST_DRAWN = 400_000;
const SCANNED = /\.(png|jpe?g|tiff?)$/i;

/**
 * @param {File} file
 * @param {string} units of the maker's job
 * @returns {Promise<Opened>}
 */
export async function opened(file, units) {
  if (/\.json$/i.test(file.name)) {
    const work = JSON.parse(await file.text().catch(() => 'null'));
    if (isWork(work)) {
      return { kind: 'work', work, missing: [] };
    }
  }
  if (DRAWN.test(file.name) && file.size > LARGEST_DRAWN) {
    return { kind: 'outline', ...await postFile(`/api/outline?${new URLSearchParams({ units })}`, file) };
  }
  if (DRAWN.test(file.name)) {
    return { kind: 'drawing', text: await file.text() };
  }
  if (SCANNED.test(file.name)) {
    const shape = await traced(file, units);
    return shape ? { kind: 'outline', ...shape } : { kind: 'nothing' };
  }
  const answer = await postFile('/api/open', file);
  return answer.kit ? { kind: 'kit', kit: answer.kit } : { kind: 'work', work: { part: '', ...answer.state }, missing: answer.missing ?? [] };
}

/**
 * Lets files be dropped anywhere, and picked by the buttons that open one.
 *
 * @param {(file: File) => void} take
 * @returns {() => void} opens the browser's choice of a file
 */
export function takeFiles(take) {
  const input = byId('file-input');
  input.addEventListener('change', () => {
    for (const file of input.files ?? []) {
      take(file);
    }
    input.value = '';
  });
  let depth = 0;
  const hint = byId('drop-hint');
  const carries = (/** @type {DragEvent} */ event) => event.dataTransfer?.types.includes('Files');
  addEventListener('dragenter', (event) => {
    if (carries(event)) {
      depth++;
      hint.hidden = false;
    }
  });
  addEventListener('dragleave', (event) => {
    if (carries(event) && --depth <= 0) {
      depth = 0;
      hint.hidden = true;
    }
  });
  addEventListener('dragover', (event) => {
    if (carries(event)) {
      event.preventDefault();
    }
  });
  addEventListener('drop', (event) => {
    if (carries(event)) {
      event.preventDefault();
      depth = 0;
      hint.hidden = true;
      for (const file of event.dataTransfer?.files ?? []) {
        take(file);
      }
    }
  });
  return () => input.click();
}
