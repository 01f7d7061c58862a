/**
 * The shapes of data that the modules hand to each other. Nothing runs here.
 *
 * @typedef {Record<string, any>} Part a part or panel of a job, field for field as in a job file
 * @typedef {{parts: Part[], panels?: Part[], kit?: string, units?: string, [field: string]: any}} Job
 * @typedef {{job: Job, files: Record<string, any>, part: string, opened?: string|null}} Work the
 *     maker's work: the job, the files it names, the name of the part on the board, and the text of
 *     the job file that it came from, for its comments
 *
 * @typedef {{x: number, y: number, width: number, height: number}} Box mm on the board, y down
 * @typedef {{scale: number, x: number, y: number}} View pixels for a mm, and where mm 0, 0 lies
 * @typedef {{width: number, height: number}} Size in pixels
 *
 * @typedef {{value: number, inch: string, mm: string}} Amount
 * @typedef {object} Measure
 * @property {string} name
 * @property {'length'|'angle'|'number'|'count'|'choice'} kind
 * @property {string} about
 * @property {string} written
 * @property {number|string} value mm, degrees, a number or the word chosen
 * @property {string} inch
 * @property {string} mm
 * @property {Amount|null} from
 * @property {Amount|null} to
 * @property {string[]} choices
 * @property {boolean} [set] whether the job gives it
 *
 * @typedef {{kind: 'line'|'area'|'head', d: string}
 *   | {kind: 'words', text: string, x: number, y: number, turn: number, size: number,
 *      anchor: 'start'|'middle'|'end', width: number}} Figure
 * @typedef {{id: string, title: string, role: string, words: string[], figures: Figure[]}} Layer
 * @typedef {object} Leftover
 * @property {number} number
 * @property {number} x
 * @property {number} y
 * @property {string} d
 * @property {string} words
 * @property {string} advice
 * @property {number} depthMm
 * @property {string} [label] of its flag, where it is no place that the bit leaves
 * @property {number} [reach] mm across that the reading glass shows, where there is no shape to show
 *
 * @typedef {{number: number, kind: 'fault'|'outline'|'gap'|'move', x: number, y: number,
 *     words: string, reach: number}} Spot a place of a drawing made elsewhere
 * @typedef {object} Sight the answer of /api/drawn: the drawing that a part is made after
 * @property {boolean} sound whether a part can be made of it
 * @property {Box} view
 * @property {string} drawn path data
 * @property {string} clean path data
 * @property {Spot[]} places
 * @property {number} more faults or outlines that have no place here
 * @property {string[]} words
 * @property {{name: string, shapes: number}[]} layers
 * @property {boolean} unites whether all that is wrong is that filled shapes lie over each other
 * @property {{write: string, words: string}[]} units what one unit may be, where the file says none
 *
 * @typedef {object} Drawing the answer of /api/draw
 * @property {string} part
 * @property {string} title
 * @property {string} shape
 * @property {number} quantity
 * @property {Box} view
 * @property {Box & {words: string}} outline
 * @property {Measure[]} measures
 * @property {{words: string, bit: number, bitWords: string, follower: string,
 *     followerDiameter: number, chosen: boolean}} tool
 * @property {{number: number, title: string}[]} plates
 * @property {Layer[]} layers
 * @property {Leftover[]} leftovers
 * @property {{x: number, y: number, d: string, words: string}[]} overcuts
 * @property {{title: string, lines: string[], rows?: string[][]}[]} words
 * @property {string[]} cautions
 * @property {string} largest
 * @property {string} proof
 * @property {string[]} warnings
 * @property {number|null} grain degrees of the fibres, counter-clockwise from the right; null for sheet stock
 *
 * @typedef {{sentence: string, spoken?: string, field: string|null, part?: string|null}} Trouble
 *
 * @typedef {object} Rack the answer of /api/rack
 * @property {{write: string, words: string, diameter: number, cuttingLength: string,
 *     shank: string, bearing: string, speed: string, verdict: string, word: string,
 *     leftovers: number, details: string[], chosen: boolean}[]} bits
 * @property {{kind: string, write: string, words: string, inside: string|null,
 *     chosen: boolean}[]} followers
 * @property {{write: string, words: string, radius: string, chosen: boolean}[]} blades
 * @property {string} kit
 *
 * @typedef {{paper: string, words: string, rows: number, columns: number,
 *     pages: (Box & {name: string})[]}} Pages the answer of /api/pages
 *
 * @typedef {object} Shop the answer of /api/shop
 * @property {{name: string, about: string, measures: Measure[]}[]} shapes
 * @property {Record<string, any>} kit
 * @property {{name: string, width: number, height: number|null}[]} papers
 * @property {{name: string, solid: boolean}[]} species
 * @property {string[]} cautions
 * @property {{side: number, foot: number}} margin
 */
export {};
