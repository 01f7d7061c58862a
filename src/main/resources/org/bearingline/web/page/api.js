/** The program behind the page: every request goes through here, to this machine only. */

/** @typedef {import('./types.js').Trouble} Trouble */

const TOKEN = 'bearingline.token';

/** What came back instead of an answer. */
export class Refused extends Error {
  /** @param {Trouble} trouble @param {number} status 0 where nothing answered
   * @param {any} [answer] all that came with the trouble */
  constructor(trouble, status, answer = {}) {
    super(trouble.sentence);
    this.trouble = trouble;
    this.status = status;
    this.answer = answer;
  }

  /** Whether the maker's input is at fault, and not the road to the program. */
  get isInput() {
    return this.status >= 400 && this.status < 500 && this.status !== 401 && this.status !== 403;
  }
}

/** @param {string} token of this run of the program */
export function keepToken(token) {
  localStorage.setItem(TOKEN, token);
}

/** @param {() => void} then called when another tab brings a newer token */
export function onNewToken(then) {
  addEventListener('storage', (event) => {
    if (event.key === TOKEN) {
      then();
    }
  });
}

/** @param {string} path @returns {Promise<any>} */
export function get(path) {
  return json(path, { method: 'GET' });
}

/**
 * @param {string} path
 * @param {any} body
 * @param {AbortSignal} [signal]
 * @returns {Promise<any>}
 */
export function post(path, body, signal) {
  return json(path, sent(body, signal));
}

/** @param {string} path @param {any} body @returns {Promise<Blob>} */
export async function postForBytes(path, body) {
  return (await answered(path, sent(body))).blob();
}

/** @param {string} path @param {File} file @returns {Promise<any>} */
export function postFile(path, file) {
  return json(path, {
    method: 'POST',
    headers: {
      'Content-Type': 'application/octet-stream',
      'X-File-Name': encodeURIComponent(file.name),
    },
    body: file,
  });
}

/** @param {any} body @param {AbortSignal} [signal] @returns {RequestInit} */
function sent(body, signal) {
  return {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
    signal,
  };
}

/** @param {string} path @param {RequestInit} options */
async function json(path, options) {
  return (await answered(path, options)).json();
}

/** @param {string} path @param {RequestInit} options @returns {Promise<Response>} */
async function answered(path, options) {
  const headers = { ...options.headers, Authorization: `Bearer ${localStorage.getItem(TOKEN) ?? ''}` };
  let response;
  try {
    response = await fetch(path, { ...options, headers, cache: 'no-store' });
  } catch (error) {
    if (options.signal?.aborted) {
      throw error;
    }
    throw new Refused({ sentence: 'The program does not answer.', field: null }, 0);
  }
  if (response.ok) {
    return response;
  }
  const answer = await answerIn(response);
  throw new Refused(answer.problem, response.status, answer);
}

/** @param {Response} response @returns {Promise<{problem: Trouble}>} */
async function answerIn(response) {
  try {
    return await response.json();
  } catch {
    return { problem: { sentence: `The program answered with status ${response.status}.`, field: null } };
  }
}
