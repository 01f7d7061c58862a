/** Changes of the maker's work. Each gives new work and leaves the old as it was. */

/** @typedef {import('./types.js').Work} Work */
/** @typedef {import('./types.js').Part} Part */

/** Fields of a part drawn elsewhere, besides its drawing. */
const DRAWN = ['drawn-in', 'width', 'height', 'layer', 'outline', 'sawn-edges', 'symmetric', 'unite', 'drill-up-to', 'tolerance', 'gap'];

/** @param {string} units `in` or `mm` @returns {Work} */
export function emptyWork(units) {
  return { job: { job: 'My job', units, parts: [] }, files: {}, part: '' };
}

/**
 * The part on the board and where it stands in the job.
 *
 * @param {Work} work
 * @returns {{list: 'parts'|'panels', index: number, item: Part} | null}
 */
export function onTheBoard(work) {
  for (const list of /** @type {const} */ (['parts', 'panels'])) {
    const index = (work.job[list] ?? []).findIndex((item) => item.name === work.part);
    if (index >= 0) {
      return { list, index, item: /** @type {Part[]} */ (work.job[list])[index] };
    }
  }
  return null;
}

/** @param {Work} work @param {string} name of the part to look at @returns {Work} */
export function looking(work, name) {
  return { ...work, part: name };
}

/**
 * Sets a field of the part on the board; an empty text takes it out.
 *
 * @param {Work} work
 * @param {Record<string, any>} fields
 * @returns {Work}
 */
export function withFields(work, fields) {
  return onItem(work, (item) => merged(item, fields));
}

/** @param {Work} work @param {string} measure @param {string} text @returns {Work} */
export function withMeasure(work, measure, text) {
  return onItem(work, (item) => {
    const measures = merged(item.measures ?? {}, { [measure]: text });
    return merged(item, { measures: Object.keys(measures).length ? measures : '' });
  });
}

/** @param {Work} work @param {Record<string, any>} fields of the whole job @returns {Work} */
export function withJob(work, fields) {
  return { ...work, job: /** @type {any} */ (merged(work.job, fields)) };
}

/** @param {Work} work @param {Record<string, any>} fields of the job's stock @returns {Work} */
export function withStock(work, fields) {
  const stock = merged(work.job.stock ?? {}, fields);
  return withJob(work, { stock: Object.keys(stock).length ? stock : '' });
}

/**
 * @param {Work} work
 * @param {string} shape name or file
 * @param {Record<string, any>} [files] that the shape needs
 * @returns {Work}
 */
export function withPart(work, shape, files = {}) {
  const name = freeName(work, plainName(shape));
  const job = { ...work.job, parts: [...work.job.parts, { name, shape }] };
  return { ...work, job, files: { ...work.files, ...files }, part: name };
}

/**
 * @param {Work} work
 * @param {string} file name of a drawing that was mended
 * @param {string} text of it
 * @returns {Work|null} with the drawing of the part on the board in place of the old one; null where
 *     that part is made after another file
 */
export function withDrawingAgain(work, file, text) {
  const drawing = onTheBoard(work)?.item.drawing;
  const { plain, ending } = drawingName(file);
  return drawing && drawing === `${plain}${ending}` ? { ...work, files: { ...work.files, [drawing]: text } } : null;
}

/**
 * @param {Work} work
 * @param {string} file name of a drawing
 * @param {string} text of it
 * @returns {Work} with a part made after the drawing
 */
export function withDrawing(work, file, text) {
  const { plain, ending } = drawingName(file);
  const name = freeName(work, plain);
  const drawing = `${name}${ending}`;
  const job = { ...work.job, parts: [...work.job.parts, { name, drawing }] };
  return { ...work, job, files: { ...work.files, [drawing]: text }, part: name };
}

/** @param {string} file */
function drawingName(file) {
  const [, stem, ending] = /** @type {string[]} */ (/^(.*?)(\.[^.]*)?$/.exec(file));
  return { plain: stem.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '') || 'drawing', ending: ending.toLowerCase() };
}

/** @param {Work} work @param {string} shape @returns {Work} the part on the board made after another
 *     shape; what only the old one had is left out */
export function withShape(work, shape) {
  const place = onTheBoard(work);
  if (!place || place.list !== 'parts') {
    return withPart(work, shape);
  }
  const old = plainName(String(place.item.shape ?? place.item.drawing));
  const named = place.item.name === old || new RegExp(`^${old}-\\d+$`).test(place.item.name);
  const gone = Object.fromEntries(['measures', 'operations', 'drawing', ...DRAWN].map((field) => [field, '']));
  const next = pruned(onItem(work, (item) => merged(item, { ...gone, shape })));
  return named ? renamed(next, freeName(next, plainName(shape))) : next;
}

/** @param {Work} work @returns {Work} */
export function copied(work) {
  const place = onTheBoard(work);
  if (!place || place.list !== 'parts') {
    return work;
  }
  const name = freeName(work, place.item.name);
  const parts = [...work.job.parts];
  parts.splice(place.index + 1, 0, { ...structuredClone(place.item), name });
  return { ...work, job: { ...work.job, parts }, part: name };
}

/** @param {Work} work @param {string} name @returns {Work} */
export function renamed(work, name) {
  const place = onTheBoard(work);
  if (!place) {
    return work;
  }
  const old = place.item.name;
  const next = onItem(work, (item) => ({ ...item, name }));
  // A panel names the rails that carry its groove.
  const panels = next.job.panels?.map((panel) => ({
    ...panel,
    ...(panel['top-rail'] === old ? { 'top-rail': name } : {}),
    ...(panel['bottom-rail'] === old ? { 'bottom-rail': name } : {}),
  }));
  return { ...next, job: panels ? { ...next.job, panels } : next.job, part: name };
}

/** @param {Work} work @returns {Work} without the part on the board */
export function removed(work) {
  const place = onTheBoard(work);
  if (!place) {
    return work;
  }
  const left = /** @type {Part[]} */ (work.job[place.list]).filter((_, i) => i !== place.index);
  const job = { ...work.job, [place.list]: left };
  if (place.list === 'panels' && !left.length) {
    delete job.panels;
  }
  const near = left[Math.min(place.index, left.length - 1)] ?? job.parts[0];
  return pruned({ ...work, job, part: near ? near.name : '' });
}

/** @param {Work} work @param {Record<string, any>} kit the maker's own @returns {Work} */
export function withKit(work, kit) {
  const name = work.job.kit ?? 'my-kit.yaml';
  return { ...withJob(work, { kit: name }), files: { ...work.files, [name]: kit } };
}

/** @param {Work} work @returns {Work} with the usual kit again */
export function withUsualKit(work) {
  const files = { ...work.files };
  if (work.job.kit) {
    delete files[work.job.kit];
  }
  return { ...withJob(work, { kit: '' }), files };
}

/** @param {Work} work @param {string} wanted @returns {string} that name, or one like it still free */
export function freeName(work, wanted) {
  const taken = new Set([...work.job.parts, ...(work.job.panels ?? [])].map((item) => item.name));
  taken.add('job');
  const stem = wanted.replace(/-\d+$/, '') || 'part';
  let name = wanted;
  for (let i = 2; taken.has(name); i++) {
    name = `${stem}-${i}`;
  }
  return name;
}

/** @param {string} shape @returns {string} what a part of that shape may be called */
export function plainName(shape) {
  return shape.replace(/^.*\//, '').replace(/\.(ya?ml|svg|dxf)$/, '');
}

/** Files that nothing in the job names any longer are let go. @param {Work} work @returns {Work} */
function pruned(work) {
  const named = new Set([work.job.kit, ...work.job.parts.flatMap((part) => [part.shape, part.drawing])]);
  return { ...work, files: Object.fromEntries(Object.entries(work.files).filter(([name]) => named.has(name))) };
}

/** @param {Work} work @param {(item: Part) => Part} change @returns {Work} */
function onItem(work, change) {
  const place = onTheBoard(work);
  if (!place) {
    return work;
  }
  const list = [.../** @type {Part[]} */ (work.job[place.list])];
  list[place.index] = change(place.item);
  return { ...work, job: { ...work.job, [place.list]: list } };
}

/** @param {Record<string, any>} object @param {Record<string, any>} fields
 * @returns {Record<string, any>} */
function merged(object, fields) {
  const next = { ...object, ...fields };
  for (const [name, value] of Object.entries(fields)) {
    if (value === '' || value === undefined || (Array.isArray(value) && !value.length)) {
      delete next[name];
    }
  }
  return next;
}
