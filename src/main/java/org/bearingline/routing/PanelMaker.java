package org.bearingline.routing;

/** Fits a panel. */
final class PanelMaker {

  private PanelMaker() {}

  static Panel fit(String name, FrameOpening opening, PanelSettings settings) {
    throw new UnsupportedOperationException();
  }
}
