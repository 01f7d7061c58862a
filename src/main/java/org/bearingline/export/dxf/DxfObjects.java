package org.bearingline.export.dxf;

import org.bearingline.outline.Bounds;

/** The blocks and the objects without a place, as few as the format allows. */
final class DxfObjects {

  private static final String NONE = "0";

  private final DxfTags tags;
  private final DxfHandles handles;

  DxfObjects(DxfTags tags, DxfHandles handles) {
    this.tags = tags;
    this.handles = handles;
  }

  /** The two empty blocks that stand for the model space and the page. */
  void blocks() {
    tags.section("BLOCKS");
    block("*Model_Space", handles.modelSpace(), false);
    block("*Paper_Space", handles.paperSpace(), true);
    tags.endSection();
  }

  private void block(String name, String owner, boolean paper) {
    entity("BLOCK", owner, paper).tag(100, "AcDbBlockBegin").tag(2, name).tag(70, 0);
    tags.spot(10, 0, 0).tag(3, name).tag(1, "");
    entity("ENDBLK", owner, paper).tag(100, "AcDbBlockEnd");
  }

  private DxfTags entity(String kind, String owner, boolean paper) {
    tags.tag(0, kind).tag(5, tags.handle()).tag(330, owner).tag(100, "AcDbEntity");
    if (paper) {
      tags.tag(67, 1);
    }
    return tags.tag(8, "0");
  }

  /** Dictionaries, the plot style and the two layouts. */
  void objects(Bounds content) {
    String root = tags.handle();
    String groups = tags.handle();
    String layouts = tags.handle();
    String plotStyles = tags.handle();
    tags.section("OBJECTS");
    dictionary(root, NONE);
    entry("ACAD_GROUP", groups);
    entry("ACAD_LAYOUT", layouts);
    entry("ACAD_PLOTSTYLENAME", plotStyles);
    dictionary(groups, root);
    dictionary(layouts, root);
    entry("Model", handles.modelLayout());
    entry("Layout1", handles.paperLayout());
    tags.tag(0, "ACDBDICTIONARYWDFLT").tag(5, plotStyles).tag(330, root);
    tags.tag(100, "AcDbDictionary").tag(281, 1);
    entry("Normal", handles.plotStyle());
    tags.tag(100, "AcDbDictionaryWithDefault").tag(340, handles.plotStyle());
    tags.tag(0, "ACDBPLACEHOLDER").tag(5, handles.plotStyle()).tag(330, plotStyles);
    layout(handles.modelLayout(), layouts, "Model", 1024, content, handles.modelSpace());
    Bounds sheet = new Bounds(0, 0, 420, 297);
    layout(handles.paperLayout(), layouts, "Layout1", 0, sheet, handles.paperSpace());
    tags.endSection();
  }

  private void dictionary(String handle, String owner) {
    tags.tag(0, "DICTIONARY").tag(5, handle).tag(330, owner);
    tags.tag(100, "AcDbDictionary").tag(281, 1);
  }

  private void entry(String name, String handle) {
    tags.tag(3, name).tag(350, handle);
  }

  /** One layout with an A3 page, plotted 1:1 in millimetres. */
  private void layout(
      String handle, String owner, String name, int flags, Bounds limits, String space) {
    tags.tag(0, "LAYOUT").tag(5, handle).tag(330, owner);
    tags.tag(100, "AcDbPlotSettings").tag(1, "").tag(2, "").tag(4, "A3").tag(6, "");
    for (int marginOrOrigin : new int[] {40, 41, 42, 43, 46, 47, 48, 49, 140, 141}) {
      tags.tag(marginOrOrigin, 0.0);
    }
    tags.tag(44, 420.0).tag(45, 297.0).tag(142, 1.0).tag(143, 1.0);
    tags.tag(70, flags).tag(72, 1).tag(73, 0).tag(74, 5).tag(7, "").tag(75, 16);
    tags.tag(147, 1.0).tag(148, 0.0).tag(149, 0.0);
    boolean model = flags != 0;
    tags.tag(100, "AcDbLayout").tag(1, name).tag(70, 1).tag(71, model ? 0 : 1);
    tags.point(10, limits.minX(), limits.minY()).point(11, limits.maxX(), limits.maxY());
    tags.spot(12, 0, 0).spot(14, limits.minX(), limits.minY());
    tags.spot(15, limits.maxX(), limits.maxY()).tag(146, 0.0);
    tags.spot(13, 0, 0).spot(16, 1, 0).spot(17, 0, 1).tag(76, 0).tag(330, space);
  }
}
