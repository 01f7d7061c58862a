package org.bearingline.shape;

/** What a measure counts. */
public enum MeasureKind {
  /** A length, in mm inside. */
  LENGTH,
  /** A plain number. */
  NUMBER,
  /** A whole number. */
  COUNT,
  /** An angle in degrees. */
  ANGLE,
  /** One of a few words. */
  CHOICE
}
