package org.bearingline.drawing;

import java.util.Locale;

/** The layers of a drawing, in the order they are drawn. */
public enum LayerName {
  STOCK,
  HOLDING,
  LEFTOVER,
  GROOVE,
  PANEL,
  RECESS,
  PART,
  ROUGH_LINE,
  CUTTER_CENTRE,
  TEMPLATE,
  MARKS,
  FEED,
  LABELS;

  /** Lower case with hyphens, for SVG group ids. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Upper case with underscores, for DXF layers. */
  public String dxf() {
    return name();
  }
}
