package org.bearingline.shape;

import org.bearingline.shape.formula.Dimension;

/** What a measure counts. */
public enum MeasureKind {
  /** A length, in mm inside. */
  LENGTH(Dimension.LENGTH),
  /** A plain number. */
  NUMBER(Dimension.NUMBER),
  /** A whole number. */
  COUNT(Dimension.NUMBER),
  /** An angle in degrees. */
  ANGLE(Dimension.ANGLE),
  /** One of a few words. */
  CHOICE(Dimension.WORD);

  private final Dimension dimension;

  MeasureKind(Dimension dimension) {
    this.dimension = dimension;
  }

  Dimension dimension() {
    return dimension;
  }
}
