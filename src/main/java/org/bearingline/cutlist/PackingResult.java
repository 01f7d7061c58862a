package org.bearingline.cutlist;

import java.util.List;

/**
 * Blanks laid out on boards.
 *
 * @param boards those cut into
 * @param leftOut blanks that found no board; empty where all is placed
 * @param bound how near to the best this is, over all boards
 * @param sentences for the maker
 */
public record PackingResult(
    List<CutBoard> boards, List<LeftOut> leftOut, Bound bound, List<String> sentences) {

  public PackingResult {
    boards = List.copyOf(boards);
    leftOut = List.copyOf(leftOut);
    sentences = List.copyOf(sentences);
  }

  public boolean isComplete() {
    return leftOut.isEmpty();
  }
}
