package org.bearingline.length;

/** The units a reader thinks in. */
public enum Units {
  INCH,
  MM
}
