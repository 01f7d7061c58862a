/** What the page says of itself: one plain sentence at each thing. */

/** Every layer by its id: what to call it and what it is for. */
export const LAYERS = {
  part: ['The part', 'The finished piece, as designed.'],
  template: ['Template edge', 'Saw and file the template to this line. The bit’s bearing, or the collar, rides it and the bit copies it into the wood.'],
  leftover: ['What the bit leaves', 'Wood in corners and necks that this bit is too fat for. Each place has a number.'],
  overcut: ['Cut into the part', 'Wood of the part that this bit and follower would take by mistake.'],
  'rough-line': ['Saw line', 'Saw the blank here first. It stays outside the part and turns no tighter than your blade can.'],
  'cutter-centre': ['Path of the bit', 'Where the middle of the bit travels.'],
  feed: ['Feed and grain', 'Arrows: which way to move the router. Short strokes: the edge runs against the fibres there, so take less and go slowly.'],
  groove: ['Groove', 'How deep the slot cutter goes along the edge.'],
  panel: ['Panel', 'The panel that sits in the groove.'],
  recess: ['Recess', 'What is worked to a depth and not through.'],
  holding: ['Room for clamps', 'Strokes: a clamp may stand here. Where they slant the other way, hold the work with tape.'],
  stock: ['Stock', 'The blank that the part is made from.'],
  marks: ['Marks', 'Centre, shoulder and drill marks to carry over to the work.'],
  drawn: ['As drawn', 'The line of your drawing before it was made clean, with a ring where a gap was closed and where it moved most.'],
  labels: ['Measures and words', 'Dimensions written on the drawing.'],
};

/** What each file is for, by the end of its name. */
export const FILES = [
  ['-sheets.pdf', 'Full-size sheets', 'Print at 100 %, glue them on plywood, work to the fine black line.'],
  ['job-card.pdf', 'Job card', 'The cut list, and how it lies on your boards.'],
  ['-card.pdf', 'Shop card', 'For the wall: picture, bit, depths, order of work, cautions.'],
  ['.svg', 'Drawing, SVG', 'Full size, for drawing programs and laser shops.'],
  ['.dxf', 'Drawing, DXF', 'True arcs in millimetres, for laser and CNC shops.'],
  ['.png', 'Picture', 'A preview.'],
  ['report.json', 'All figures', 'Of all parts, in millimetres.'],
];

/** @param {string} name @returns {string[]} what a file is called and what it is for */
export function fileWords(name) {
  const found = FILES.find(([end]) => name.endsWith(end));
  const plate = /-template-(\d+)/.exec(name);
  return found ? [plate ? `${found[1]}, template ${plate[1]}` : found[1], found[2]] : [name, ''];
}

/** Words that stay joined in a name. */
const JOINED = /\b(cloud lift|drop in) (?=\w)/g;

/** @param {string} name as files write it @returns {string} as a person writes it */
export function plain(name) {
  return name.replaceAll(/[-_]/g, ' ').replaceAll(JOINED, (words) => `${words.trim().replace(' ', '-')} `);
}

/** What is no deeper than this, in mm, sanding takes: 1/64 in. */
const TRACE = 25.4 / 64;

/** @param {import('./types.js').Drawing} drawing @returns {string} what the bit makes of the part */
export function verdict(drawing) {
  const count = drawing.leftovers.length;
  const over = drawing.overcuts.length;
  const places = count === 1 ? '1 place' : `${count} places`;
  const trace = drawing.leftovers.every((one) => one.depthMm <= TRACE) ? 'a trace at ' : '';
  const leaves = count === 0 ? 'cuts it clean' : `leaves ${trace}${places}`;
  const cuts = over === 0 ? '' : over === 1 ? ', cuts into the part at 1 place' : `, cuts into the part at ${over} places`;
  return leaves + cuts;
}

/** @param {import('./types.js').Drawing} drawing @returns {string} how the template lies to the part */
export function templateWords(drawing) {
  const words = drawing.layers.find((layer) => layer.id === 'template')?.words[0] ?? '';
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/**
 * The layers of a drawing, with one more for what is cut into the part.
 *
 * @param {import('./types.js').Drawing} drawing
 * @returns {import('./types.js').Layer[]}
 */
export function allLayers(drawing) {
  if (!drawing.overcuts.length) {
    return drawing.layers;
  }
  /** @type {import('./types.js').Layer} */
  const overcut = {
    id: 'overcut', title: 'cut into the part', role: 'note', words: drawing.overcuts.map((one) => one.words),
    figures: drawing.overcuts.map((one) => ({ kind: 'area', d: one.d })),
  };
  return [...drawing.layers, overcut];
}
