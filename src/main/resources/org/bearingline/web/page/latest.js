/**
 * Asks one thing after another: one request on its way, and of those that wait only the newest. An
 * answer of an older question can never come after a newer one.
 *
 * @template Wish, Answer
 * @param {(wish: Wish) => Promise<Answer>} send
 * @param {(answer: Answer, wish: Wish) => void} accept
 * @param {(error: unknown, wish: Wish) => void} refuse
 */
export function latest(send, accept, refuse) {
  /** @type {{wish: Wish} | null} */
  let waiting = null;
  let busy = false;

  async function run() {
    busy = true;
    while (waiting) {
      const { wish } = waiting;
      waiting = null;
      try {
        const answer = await send(wish);
        accept(answer, wish);
      } catch (error) {
        refuse(error, wish);
      }
    }
    busy = false;
  }

  return {
    /** @param {Wish} wish */
    ask(wish) {
      waiting = { wish };
      if (!busy) {
        run();
      }
    },
    /** Whether an answer is still to come. */
    get pending() {
      return busy;
    },
  };
}
