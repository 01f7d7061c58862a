package org.bearingline.export.dxf;

/**
 * Handles of things that other parts of the file point to.
 *
 * @param modelSpace block record of the drawing itself
 * @param paperSpace block record of the one empty page that the format asks for
 * @param modelLayout its layout
 * @param paperLayout the page's layout
 * @param textStyle the one style of lettering
 * @param plotStyle the plot style that every layer names
 */
record DxfHandles(
    String modelSpace,
    String paperSpace,
    String modelLayout,
    String paperLayout,
    String textStyle,
    String plotStyle) {

  static DxfHandles from(DxfTags tags) {
    return new DxfHandles(
        tags.handle(), tags.handle(), tags.handle(), tags.handle(), tags.handle(), tags.handle());
  }
}
