package org.bearingline.oracle;

/**
 * Something along a straight edge, drawn from right to left with the wood below (the top edge of a
 * counter-clockwise loop). Widths stay below 50 mm, depths below 40 mm.
 *
 * @param kind what it is
 * @param width mm along the edge
 * @param depth mm square to the edge
 */
record Feature(Kind kind, double width, double depth) {

  enum Kind {
    NOTCH,
    SLOT,
    SCALLOP,
    LIFT,
    TAB,
    ROUND_TAB,
    HAIR_STEP,
    DOVETAIL,
    KEYHOLE
  }

  /** Draws it about {@code middle}; the trace comes in and goes out on the edge's height. */
  void draw(Trace trace, double middle) {
    double right = middle + width / 2;
    double left = middle - width / 2;
    double top = trace.y();
    trace.to(right, top);
    switch (kind) {
      case NOTCH -> trace.by(0, -depth).to(left, top - depth);
      case SLOT -> slot(trace, right, left, top - Math.max(0.5, depth - width / 2));
      case SCALLOP -> trace.bulge(left, top, -Math.min(1, Math.max(0.02, depth / 40)));
      case LIFT -> lift(trace, right, left, depth / 4);
      case TAB -> trace.by(0, depth).to(left, top + depth);
      case ROUND_TAB -> trace.bulge(left, top, Math.max(0.02, depth / 40));
      case HAIR_STEP -> trace.by(0, -1e-7).to(left, top - 1e-7);
      case DOVETAIL -> trace.to(right + 4, top - depth).to(left - 4, top - depth);
      case KEYHOLE -> keyhole(trace, right, left, top);
    }
    trace.to(left, top);
  }

  private void slot(Trace trace, double right, double left, double shoulder) {
    double middle = (right + left) / 2;
    trace.to(right, shoulder).round(middle, shoulder, left, shoulder, false);
  }

  // A mouth half as wide as the round behind it.
  private void keyhole(Trace trace, double right, double left, double top) {
    double middle = (right + left) / 2;
    double r = width / 2;
    double mouth = r / 2;
    double drop = Math.sqrt(r * r - mouth * mouth);
    double center = top - drop - Math.min(depth / 4, 5);
    trace
        .to(middle + mouth, top)
        .to(middle + mouth, center + drop)
        .round(middle, center, middle - mouth, center + drop, false)
        .to(middle - mouth, top);
  }

  // Up by two tangent arcs of 60°, along, and down again.
  private void lift(Trace trace, double right, double left, double r) {
    double run = 2 * r * Math.sin(Math.PI / 3);
    double top = trace.y();
    double rise = 2 * r * (1 - Math.cos(Math.PI / 3));
    double reach = Math.min(run, (right - left) / 2);
    if (reach < run) {
      trace.by(0, rise).to(left, top + rise);
      return;
    }
    double half = run / 2;
    trace
        .round(right, top + r, right - half, top + rise / 2, false)
        .round(right - run, top + rise - r, right - run, top + rise, true)
        .to(left + run, top + rise)
        .round(left + run, top + rise - r, left + half, top + rise / 2, true)
        .round(left, top + r, left, top, false);
  }
}
