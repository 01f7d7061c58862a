package org.bearingline.outside;

import java.util.List;

/**
 * One pull of the pencil: pieces that follow each other. Their ends may miss each other a little;
 * cleaning closes such gaps.
 *
 * @param pieces in the order drawn, at least one
 * @param closed whether the drawing says that the end joins the start
 */
public record Stroke(List<StrokePiece> pieces, boolean closed) {

  public Stroke {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("a stroke has at least one piece");
    }
  }
}
