package org.bearingline.routing;

import java.util.Optional;
import org.bearingline.outline.Loop;
import org.bearingline.part.Part;

/** Puts a frame's opening together from its parts. */
final class FrameOpeningMaker {

  private FrameOpeningMaker() {}

  static FrameOpening make(
      double width, double height, Optional<Part> topRail, Optional<Part> bottomRail) {
    throw new UnsupportedOperationException();
  }

  static Loop loop(FrameOpening opening) {
    throw new UnsupportedOperationException();
  }
}
