package org.bearingline.outside.clean;

import java.util.List;
import org.bearingline.outline.Point;

/**
 * Gaps between strokes that were closed.
 *
 * @param count how many
 * @param largest mm, 0 where there was none
 * @param places where the larger ones were, largest first, at most {@link #MOST_PLACES}
 */
public record ClosedGaps(int count, double largest, List<Point> places) {

  /** More places than this nobody looks at. */
  public static final int MOST_PLACES = 100;

  public static final ClosedGaps NONE = new ClosedGaps(0, 0, List.of());

  public ClosedGaps {
    places = List.copyOf(places);
  }
}
