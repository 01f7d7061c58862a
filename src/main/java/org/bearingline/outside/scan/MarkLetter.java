package org.bearingline.outside.scan;

/** The four corner marks, as a clock's hand meets them; A is at the upper left of the sheet. */
public enum MarkLetter {
  A,
  B,
  C,
  D
}
