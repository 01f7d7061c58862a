package org.bearingline.routing;

import java.util.Objects;
import org.bearingline.outline.Path;
import org.bearingline.outline.Similarity;

/**
 * The inner edge of a rail, as it stands in the frame, the rail's wood on the left.
 *
 * @param inner between the stiles
 * @param whole run on over the tenons, which hold the groove too
 * @param shaped whether it is anything but one straight square to the stiles
 */
public record FrameEdge(Path inner, Path whole, boolean shaped) {

  public FrameEdge {
    Objects.requireNonNull(inner);
    Objects.requireNonNull(whole);
  }

  FrameEdge transformed(Similarity similarity) {
    return new FrameEdge(inner.transformed(similarity), whole.transformed(similarity), shaped);
  }
}
