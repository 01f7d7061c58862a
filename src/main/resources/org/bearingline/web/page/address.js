/**
 * The work in the page's address, as `#state=…`: JSON, deflated and written in the URL's alphabet
 * of RFC 4648 section 5. So a bookmark, a reload and the browser's back and forward bring it back.
 */

/** @typedef {import('./types.js').Work} Work */

/** @param {Work} work @returns {Promise<string>} */
export async function packed(work) {
  const bytes = new TextEncoder().encode(JSON.stringify(work));
  const small = await through(bytes, new CompressionStream('deflate-raw'));
  let text = '';
  for (const byte of small) {
    text += String.fromCharCode(byte);
  }
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** @param {string} text @returns {Promise<Work|null>} null where it cannot be read */
export async function unpacked(text) {
  try {
    const raw = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(raw, (letter) => letter.charCodeAt(0));
    const plain = await through(bytes, new DecompressionStream('deflate-raw'));
    const work = JSON.parse(new TextDecoder().decode(plain));
    return isWork(work) ? work : null;
  } catch {
    return null;
  }
}

/** @param {string} hash @returns {{token: string|null, state: string|null}} */
export function parts(hash) {
  const fields = new URLSearchParams(hash.replace(/^#/, ''));
  return { token: fields.get('token'), state: fields.get('state') };
}

/** @param {any} work @returns {boolean} whether this is work of this page */
export function isWork(work) {
  return Array.isArray(work?.job?.parts)
    && work.job.parts.every((/** @type {any} */ part) => typeof part?.name === 'string')
    && typeof (work.files ?? {}) === 'object';
}

/** @param {Uint8Array<ArrayBuffer>} bytes @param {CompressionStream|DecompressionStream} stream */
async function through(bytes, stream) {
  const piped = new Blob([bytes]).stream().pipeThrough(stream);
  return new Uint8Array(await new Response(piped).arrayBuffer());
}
