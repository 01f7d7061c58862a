package org.bearingline.routing;

import java.util.Arrays;
import java.util.List;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** A path by the distance walked along it, mm from its start. */
final class Walked {

  private final List<Primitive> pieces;

  /** Where each piece ends. */
  private final double[] ends;

  Walked(Path path) {
    pieces = path.primitives();
    ends = new double[pieces.size()];
    double walked = 0;
    for (int i = 0; i < ends.length; i++) {
      walked += pieces.get(i).length();
      ends[i] = walked;
    }
  }

  double length() {
    return ends[ends.length - 1];
  }

  Point at(double distance) {
    int piece = piece(distance);
    return pieces.get(piece).pointAt(share(piece, distance));
  }

  /** Direction of travel, counter-clockwise from x. */
  double degreesAt(double distance) {
    int piece = piece(distance);
    return Degrees.of(pieces.get(piece).tangentAt(share(piece, distance)));
  }

  private int piece(double distance) {
    int found = Arrays.binarySearch(ends, distance);
    return Math.min(found < 0 ? -found - 1 : found, ends.length - 1);
  }

  private double share(int piece, double distance) {
    double begin = piece == 0 ? 0 : ends[piece - 1];
    return Math.min(1, Math.max(0, (distance - begin) / pieces.get(piece).length()));
  }
}
