/** Makes elements of the page. */

const SVG = 'http://www.w3.org/2000/svg';

/**
 * An HTML element. Names that begin with `on` are listeners, true and false set or leave out an
 * attribute, all else is an attribute.
 *
 * @param {string} tag
 * @param {Record<string, any>} [props]
 * @param {...(Node|string|null|undefined|false)} children
 * @returns {any}
 */
export function h(tag, props = {}, ...children) {
  return filled(document.createElement(tag), props, children);
}

/**
 * An SVG element, with the same manners as {@link h}.
 *
 * @param {string} tag
 * @param {Record<string, any>} [props]
 * @param {...(Node|string|null|undefined|false)} children
 * @returns {any}
 */
export function svg(tag, props = {}, ...children) {
  return filled(document.createElementNS(SVG, tag), props, children);
}

/** @param {any} element @param {Record<string, any>} props @param {any[]} children */
function filled(element, props, children) {
  for (const [name, value] of Object.entries(props)) {
    if (name.startsWith('on')) {
      element.addEventListener(name.slice(2), value);
    } else if (value !== false && value !== null && value !== undefined) {
      element.setAttribute(name, value === true ? '' : String(value));
    }
  }
  element.append(...children.filter((child) => child || child === ''));
  return element;
}

/** @param {string} id @returns {any} the element of that id, which the page always has */
export function byId(id) {
  const element = document.getElementById(id);
  if (!element) {
    throw new Error(`the page has no “${id}”`);
  }
  return element;
}

/**
 * Puts a text where it differs from what stands there, so that nothing is announced or laid out
 * again without need.
 *
 * @param {Element} element
 * @param {string} text
 */
export function setText(element, text) {
  if (element.textContent !== text) {
    element.textContent = text;
  }
}

/** @param {Element} element @param {string} name @param {string} value */
export function setAttr(element, name, value) {
  if (element.getAttribute(name) !== value) {
    element.setAttribute(name, value);
  }
}
