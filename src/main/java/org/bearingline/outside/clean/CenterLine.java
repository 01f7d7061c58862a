package org.bearingline.outside.clean;

/** In which centre line of its bounds an outline is made its own mirror image. */
public enum CenterLine {
  /** In none: the outline stays as drawn. */
  NONE,
  /** Left and right become alike. */
  VERTICAL,
  /** Top and bottom become alike. */
  HORIZONTAL
}
