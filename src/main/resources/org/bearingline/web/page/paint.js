/** Draws the layers of an answer as SVG, using again what is already there. */

import { setAttr, setText, svg } from './dom.js';

/** @typedef {import('./types.js').Layer} Layer */
/** @typedef {import('./types.js').Figure} Figure */

/** Lettering is this many pixels high on the screen, at every zoom. */
export const LETTERING = 15;

/** The server's lettering in mm at an enlargement of 1. */
export const LETTER_MM = 4;

/**
 * @param {SVGGElement} world whose children are the groups of the layers
 * @param {Layer[]} layers
 * @param {number} enlargement that was asked for
 */
export function paintLayers(world, layers, enlargement) {
  const groups = /** @type {SVGGElement[]} */ ([...world.children]);
  const known = new Map(groups.map((group) => [group.dataset.layer, group]));
  layers.forEach((layer, i) => {
    let group = known.get(layer.id);
    if (!group) {
      group = /** @type {SVGGElement} */ (svg('g', { class: `layer ${layer.id}` }));
      group.dataset.layer = layer.id;
    }
    known.delete(layer.id);
    if (world.children[i] !== group) {
      world.insertBefore(group, world.children[i] ?? null);
    }
    paintFigures(group, layer.figures, enlargement);
  });
  for (const gone of known.values()) {
    gone.remove();
  }
}

/** @param {SVGGElement} group @param {Figure[]} figures @param {number} enlargement */
function paintFigures(group, figures, enlargement) {
  figures.forEach((figure, i) => {
    const tag = figure.kind === 'words' ? 'text' : 'path';
    let element = /** @type {SVGElement} */ (group.children[i]);
    if (!element || element.localName !== tag) {
      const fresh = svg(tag);
      if (element) {
        element.replaceWith(fresh);
      } else {
        group.append(fresh);
      }
      element = fresh;
    }
    setAttr(element, 'class', figure.kind);
    if (figure.kind === 'words') {
      words(element, figure, enlargement);
    } else {
      setAttr(element, 'd', figure.d);
      if (figure.kind === 'head') {
        head(element, figure.d);
      }
    }
  });
  while (group.children.length > figures.length) {
    group.lastElementChild?.remove();
  }
}

/** @param {SVGElement} element @param {Extract<Figure, {kind: 'words'}>} figure
 * @param {number} enlargement */
function words(element, figure, enlargement) {
  setText(element, figure.text);
  setAttr(element, 'text-anchor', figure.anchor);
  setAttr(element, 'transform', `translate(${figure.x} ${figure.y}) rotate(${figure.turn})`);
  const pixels = Math.max(12, (LETTERING * figure.size) / (LETTER_MM * enlargement));
  element.style.setProperty('--high', `${pixels}px`);
}

/** An arrow's head shrinks to its tip when the drawing is enlarged.
 * @param {SVGElement} element @param {string} d */
function head(element, d) {
  const tip = /^M\s*(-?[\d.e-]+)[ ,](-?[\d.e-]+)/.exec(d);
  if (tip) {
    element.style.transformOrigin = `${tip[1]}px ${tip[2]}px`;
  }
}

/**
 * How much smaller an arrow's head is drawn than it was set, so that it keeps its size on the
 * screen.
 *
 * @param {number} enlargement
 * @param {number} scale pixels for a mm
 */
export function headScale(enlargement, scale) {
  return LETTERING / (LETTER_MM * enlargement * scale);
}

/**
 * The closed lines of a layer as one path, to be filled by the even-odd rule.
 *
 * @param {Layer|undefined} layer
 * @returns {string}
 */
export function areaOf(layer) {
  return (layer?.figures ?? [])
    .map((figure) => (figure.kind === 'line' ? figure.d : ''))
    .join('');
}
