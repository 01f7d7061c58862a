package org.bearingline.outside;

/** How loops of one figure that lie inside each other count as wood or as opening. */
public enum FillRule {
  /** A place is wood where an odd number of loops surround it. */
  EVEN_ODD,
  /** A place is wood where the loops do not wind round it zero times in all. */
  NON_ZERO,
  /** Nothing is filled: every closed line that is drawn counts, as in {@link #EVEN_ODD}. */
  UNFILLED
}
