/** The maker's own kit: bits, bearings, collars and blades, to add to and take from. */

import { byId, h, setText } from './dom.js';
import { refusalProps } from './refusals.js';

/** Each kind of tool: where it stands in the kit, its fields, and what is wanted of each. */
const KINDS = {
  bits: ['diameter', 'cutting-length', 'shank', 'bearing'],
  bearings: ['diameter'],
  collars: ['outside', 'inside'],
  blades: ['width', 'radius'],
};

const LABELS = {
  diameter: 'diameter', 'cutting-length': 'cutting length', shank: 'shank', bearing: 'bearing',
  outside: 'outside', inside: 'inside', width: 'width', radius: 'tightest radius',
};

const BEARINGS = { none: 'no bearing', shank: 'bearing at the shank', tip: 'bearing at the tip', both: 'bearings at both ends' };

const TITLES = { bits: 'Bits', bearings: 'Bearings', collars: 'Collars', blades: 'Band-saw blades' };

export class Kit {
  /** @param {{kit: (kit: Record<string, any>, what: string) => void, usual: () => void,
   *     tried: (kit: Record<string, any>) => Promise<string>}} tell the last answers what is wrong
   *     with a kit, empty for nothing */
  constructor(tell) {
    this.tell = tell;
    this.dialog = byId('kit-dialog');
    /** @type {Record<string, any>} */
    this.kit = {};
    byId('kit-open').addEventListener('click', () => this.dialog.showModal());
    byId('kit-close').addEventListener('click', () => this.dialog.close());
    byId('kit-usual').addEventListener('click', () => tell.usual());
    byId('kit-kinds').append(h('p', refusalProps('kit-kinds')));
    byId('kit-kinds').dataset.field = 'job:kit';
    this.made = '';
  }

  /** @param {Record<string, any>} kit in force @param {Record<string, any>} usual */
  show(kit, usual) {
    // A kind that a kit does not list at all is the usual one.
    this.kit = Object.fromEntries(Object.keys(KINDS).map((kind) => [kind, kit[kind] ?? usual[kind] ?? []]));
    this.name = kit.name ?? 'my shop';
    const key = JSON.stringify(this.kit);
    if (key === this.made) {
      return;
    }
    this.made = key;
    const refusal = byId('kit-kinds-refusal');
    byId('kit-kinds').replaceChildren(refusal, ...Object.keys(KINDS).map((kind) => this.section(kind)));
  }

  /** @param {string} kind */
  section(kind) {
    const fields = KINDS[/** @type {keyof typeof KINDS} */ (kind)];
    const rows = this.kit[kind].map((/** @type {any} */ tool, /** @type {number} */ i) => {
      const words = toolWords(tool, fields);
      return h('li', {}, h('span', {}, words), h('button', {
        type: 'button', class: 'quiet', 'aria-label': `Take out ${words}`,
        onclick: () => this.put(kind, this.kit[kind].filter((/** @type {any} */ _, /** @type {number} */ at) => at !== i), `${words} taken out`),
      }, 'Take out'));
    });
    return h('section', { class: 'kind' }, h('h3', {}, TITLES[/** @type {keyof typeof TITLES} */ (kind)]), h('ul', {}, ...rows), this.form(kind, fields));
  }

  /** @param {string} kind @param {string[]} fields */
  form(kind, fields) {
    const inputs = fields.map((field) => h(field === 'bearing' ? 'select' : 'input', {
      id: `kit-${kind}-${field}`, name: field, autocomplete: 'off', ...(field === 'bearing' ? {} : { type: 'text', size: 8 }),
    }, ...(field === 'bearing' ? ['shank', 'tip', 'both', 'none'].map((where) => h('option', { value: where }, BEARINGS[/** @type {keyof typeof BEARINGS} */ (where)])) : [])));
    const note = h('p', { class: 'refusal', role: 'alert' });
    return h('form', {
      class: 'add-tool', novalidate: true,
      onsubmit: async (/** @type {SubmitEvent} */ event) => {
        event.preventDefault();
        const given = Object.fromEntries(inputs.map((input) => [input.name, input.value.trim()]).filter(([, value]) => value));
        if (!given[fields[0]]) {
          setText(note, `a ${LABELS[/** @type {keyof typeof LABELS} */ (fields[0])]} is missing; write a number with its unit, such as 3/4in or 19mm`);
          inputs[0].focus();
          return;
        }
        const tool = fields.length === 1 ? given[fields[0]] : given;
        const tools = [...this.kit[kind], tool];
        const wrong = await this.tell.tried(this.kitWith(kind, tools));
        setText(note, wrong);
        if (wrong) {
          inputs[0].focus();
          note.scrollIntoView({ block: 'nearest' });
          return;
        }
        this.put(kind, tools, `${toolWords(tool, fields)} added`);
        byId(`kit-${kind}-${fields[0]}`).focus();
      },
    }, ...inputs.map((input) => h('label', {}, h('span', {}, LABELS[/** @type {keyof typeof LABELS} */ (input.name)]), input)),
    h('button', { type: 'submit' }, 'Add'), note);
  }

  /** @param {string} kind @param {any[]} tools @param {string} what */
  put(kind, tools, what) {
    this.tell.kit(this.kitWith(kind, tools), what);
  }

  /** @param {string} kind @param {any[]} tools */
  kitWith(kind, tools) {
    return { name: this.name === 'the usual kit' ? 'my shop' : this.name, ...this.kit, [kind]: tools };
  }
}

/** @param {any} tool @param {string[]} fields */
function toolWords(tool, fields) {
  if (typeof tool !== 'object') {
    return spaced(String(tool));
  }
  return fields.filter((field) => tool[field] !== undefined).map((field, i) => {
    const value = spaced(String(tool[field]));
    if (i === 0) {
      return value;
    }
    return field === 'bearing' ? (BEARINGS[/** @type {keyof typeof BEARINGS} */ (value)] ?? value)
      : `${LABELS[/** @type {keyof typeof LABELS} */ (field)]} ${value}`;
  }).join(', ');
}

/** @param {string} length */
function spaced(length) {
  // 1-3/4 is one figure: it does not break behind its hyphen.
  return length.replace(/(\d)(in|mm|cm)$/, '$1 $2').replace(/(\d)-(?=\d)/, '$1\u2011');
}
