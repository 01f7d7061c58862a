package org.bearingline.routing;

import org.bearingline.kit.Kit;
import org.bearingline.part.Part;

/** Works out everything that pattern routing a part needs. */
public final class Routing {

  private Routing() {}

  /** Fails with a Problem where the tools cannot work the part. */
  public static RoutingResult workOut(Part part, RoutingSettings settings, Kit kit) {
    throw new UnsupportedOperationException();
  }
}
