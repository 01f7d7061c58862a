package org.bearingline.export.dxf;

import org.bearingline.drawing.Drawing;
import org.bearingline.export.Plot;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;

/**
 * Writes a drawing as DXF in text form, of AutoCAD 2000 (AC1015), after Autodesk's DXF Reference:
 * the oldest version with LWPOLYLINE and line weights, and so the one the most programs read.
 * Always in millimetres; closed paths are LWPOLYLINEs with bulges, single arcs ARC, full circles
 * CIRCLE. Dimensions are drawn out as lines and words.
 */
public final class DxfWriter {

  /**
   * Width of a letter as a share of the em, on the wide side: the font is that of the program which
   * reads the file.
   */
  private static final double LETTER = 0.62;

  private static final String VERSION = "AC1015";

  private DxfWriter() {}

  /**
   * The file's bytes.
   *
   * @param drawing with at least one item
   * @param units in which dimensions are written; they change nothing else
   */
  public static byte[] write(Drawing drawing, Units units) {
    Plot plot = Plot.of(drawing, units, (text, height) -> text.length() * height * LETTER);
    DxfTags body = new DxfTags();
    DxfHandles handles = DxfHandles.from(body);
    DxfObjects objects = new DxfObjects(body, handles);
    body.section("CLASSES").endSection();
    new DxfTables(body, handles).write(plot);
    objects.blocks();
    body.section("ENTITIES");
    DxfEntities entities = new DxfEntities(body, handles.modelSpace());
    plot.layers().forEach(entities::add);
    body.endSection();
    objects.objects(plot.content());
    body.tag(0, "EOF");
    return header(plot.content(), body.nextHandle()).append(body).bytes();
  }

  private static DxfTags header(Bounds box, String nextHandle) {
    DxfTags head = new DxfTags().section("HEADER");
    head.tag(9, "$ACADVER").tag(1, VERSION);
    head.tag(9, "$DWGCODEPAGE").tag(3, "ANSI_1252");
    head.tag(9, "$EXTMIN").spot(10, box.minX(), box.minY());
    head.tag(9, "$EXTMAX").spot(10, box.maxX(), box.maxY());
    head.tag(9, "$LTSCALE").tag(40, 1.0);
    head.tag(9, "$LUNITS").tag(70, 2);
    head.tag(9, "$HANDSEED").tag(5, nextHandle);
    // 4: millimetres; 1: metric line types.
    head.tag(9, "$INSUNITS").tag(70, 4);
    head.tag(9, "$MEASUREMENT").tag(70, 1);
    return head.endSection();
  }
}
