package org.bearingline.routing;

import org.bearingline.kit.SlotCutter;
import org.bearingline.part.Part;

/** Works a groove out. */
final class GrooveMaker {

  private GrooveMaker() {}

  static Groove make(Part part, SlotCutter tool, GrooveExtent extent, double templateOffset) {
    throw new UnsupportedOperationException();
  }
}
