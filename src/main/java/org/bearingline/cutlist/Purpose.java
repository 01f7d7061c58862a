package org.bearingline.cutlist;

/** What a blank or a board is for. */
public enum Purpose {
  /** Wood of the piece of furniture. */
  PART,
  /** Sheet material for templates. */
  TEMPLATE
}
