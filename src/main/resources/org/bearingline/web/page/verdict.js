/** The line over the board: what lies there, what the bit makes of it, which template is shown. */

import { byId, setText } from './dom.js';
import { onThePage } from './refusals.js';
import { plain, verdict } from './words.js';

/** @typedef {import('./types.js').Drawing} Drawing */

/**
 * @param {Drawing|null} drawing on the board
 * @param {import('./types.js').Trouble|null} refusal of what is asked for now
 * @param {boolean} shown whether a field shows the refusal, so that it need not stand here
 */
export function showVerdict(drawing, refusal, shown) {
  const leaves = drawing !== null && drawing.leftovers.length + drawing.overcuts.length > 0;
  byId('verdict').dataset.verdict = refusal ? 'refused' : leaves ? 'leaves' : 'clean';
  setText(byId('verdict-part'), drawing ? `${plain(drawing.part)}, ${drawing.outline.words}` : '');
  if (refusal) {
    const why = shown ? 'Not drawn: see the field marked red.' : `Not drawn: ${onThePage(refusal.sentence)}.`;
    setText(byId('verdict-words'), drawing ? `${why} The last good drawing stays.` : why);
  } else {
    setText(byId('verdict-words'), drawing ? `${drawing.tool.words} ${verdict(drawing)}` : '');
  }
  setText(byId('warnings'), refusal || !drawing ? '' : drawing.warnings.join(' '));
}

/** @param {Drawing} drawing @param {number} plate number of the template shown */
export function showPlates(drawing, plate) {
  const select = byId('plates');
  byId('plates-box').hidden = drawing.plates.length < 2;
  const key = drawing.plates.map((one) => one.title).join('\n');
  if (select.dataset.made !== key) {
    select.dataset.made = key;
    select.replaceChildren(...drawing.plates.map((one) => new Option(one.title.replace(`${drawing.part}, `, ''), String(one.number))));
  }
  select.value = String(plate);
}
