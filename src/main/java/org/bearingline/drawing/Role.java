package org.bearingline.drawing;

/** What a layer asks of the maker; colour and line type follow from it in {@code export}. */
public enum Role {
  /** The line to work to: cut or file the template to it. */
  CUT,
  /** A reference that places the template on the work. */
  LOCATE,
  /** A line for the saw. */
  SAW,
  /** A centre, shoulder or drill mark to transfer. */
  MARK,
  /** Something to know, not to cut. */
  NOTE
}
