package org.bearingline.export.dxf;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.export.LineStyle;
import org.bearingline.export.Plot;
import org.bearingline.export.Style;
import org.bearingline.outline.Bounds;

/** The symbol tables, in the order the DXF Reference gives. */
final class DxfTables {

  private static final String NONE = "0";

  private final DxfTags tags;
  private final DxfHandles handles;

  DxfTables(DxfTags tags, DxfHandles handles) {
    this.tags = tags;
    this.handles = handles;
  }

  void write(Plot plot) {
    tags.section("TABLES");
    viewports(plot.content());
    lineTypes(plot.layers());
    layers(plot.layers());
    styles();
    for (String empty : List.of("VIEW", "UCS")) {
      begin(empty, 0);
      end();
    }
    String appId = begin("APPID", 1);
    record("APPID", appId, "AcDbRegAppTableRecord").tag(2, "ACAD").tag(70, 0);
    end();
    dimensionStyles();
    blockRecords();
    tags.endSection();
  }

  private String begin(String name, int entries) {
    String handle = tags.handle();
    tags.tag(0, "TABLE").tag(2, name).tag(5, handle).tag(330, NONE);
    tags.tag(100, "AcDbSymbolTable").tag(70, entries);
    return handle;
  }

  private void end() {
    tags.tag(0, "ENDTAB");
  }

  private DxfTags record(String kind, String table, String subclass) {
    return record(kind, table, subclass, 5, tags.handle());
  }

  private DxfTags record(String kind, String table, String subclass, int code, String handle) {
    tags.tag(0, kind).tag(code, handle).tag(330, table);
    return tags.tag(100, "AcDbSymbolTableRecord").tag(100, subclass);
  }

  /** The window opens on the whole drawing. */
  private void viewports(Bounds box) {
    double height = Math.max(1, box.height() * 1.1);
    double width = Math.max(1, box.width() * 1.1);
    String table = begin("VPORT", 1);
    record("VPORT", table, "AcDbViewportTableRecord").tag(2, "*ACTIVE").tag(70, 0);
    tags.point(10, 0, 0).point(11, 1, 1).point(12, box.center().x(), box.center().y());
    tags.point(13, 0, 0).point(14, 10, 10).point(15, 10, 10);
    // Seen square from above, straight at the plane.
    tags.point(16, 0, 0).tag(36, 1.0).spot(17, 0, 0);
    tags.tag(40, height).tag(41, width / height).tag(42, 50.0);
    end();
  }

  private void lineTypes(List<Plot.PlotLayer> layers) {
    List<Plot.PlotLayer> dashed =
        layers.stream().filter(layer -> !layer.style().isSolid()).toList();
    String table = begin("LTYPE", 3 + dashed.size());
    for (String name : List.of("ByBlock", "ByLayer", "Continuous")) {
      lineType(table, name, "", List.of());
    }
    for (Plot.PlotLayer layer : dashed) {
      LineStyle style = layer.style();
      String words =
          style.dashes().stream()
              .map(d -> String.format(Locale.ROOT, "%.2f", d))
              .collect(Collectors.joining(" "));
      lineType(table, lineType(layer.layer()), words, style.dashes());
    }
    end();
  }

  private void lineType(String table, String name, String words, List<Double> dashes) {
    record("LTYPE", table, "AcDbLinetypeTableRecord").tag(2, name).tag(70, 0).words(3, words);
    tags.tag(72, 65).tag(73, dashes.size());
    tags.tag(40, dashes.stream().mapToDouble(Double::doubleValue).sum());
    for (int i = 0; i < dashes.size(); i++) {
      // A gap is a negative length.
      tags.tag(49, i % 2 == 0 ? dashes.get(i) : -dashes.get(i)).tag(74, 0);
    }
  }

  private static String lineType(Layer layer) {
    return layer.name().dxf() + "_DASHES";
  }

  private void layers(List<Plot.PlotLayer> layers) {
    String table = begin("LAYER", layers.size() + 1);
    layer(table, "0", 7, "Continuous", -3);
    for (Plot.PlotLayer plotted : layers) {
      Layer layer = plotted.layer();
      int hundredths = (int) Math.round(Style.of(layer).width() * 100);
      String dashes = plotted.style().isSolid() ? "Continuous" : lineType(layer);
      layer(table, layer.name().dxf(), colour(layer.name()), dashes, hundredths);
    }
    end();
  }

  private void layer(String table, String name, int colour, String lineType, int weight) {
    record("LAYER", table, "AcDbLayerTableRecord").tag(2, name).tag(70, 0).tag(62, colour);
    tags.tag(6, lineType).tag(370, weight).tag(390, handles.plotStyle());
  }

  /** The AutoCAD colour index nearest in spirit to the layer's ink; 7 is black on white. */
  private static int colour(LayerName name) {
    return switch (name) {
      case STOCK, MARKS, LABELS -> 8;
      case HOLDING -> 72;
      case LEFTOVER -> 240;
      case GROOVE -> 132;
      case PANEL -> 122;
      case RECESS -> 6;
      case PART -> 150;
      case ROUGH_LINE -> 30;
      case CUTTER_CENTRE -> 5;
      case TEMPLATE -> 7;
      case FEED -> 170;
    };
  }

  private void styles() {
    String table = begin("STYLE", 1);
    record("STYLE", table, "AcDbTextStyleTableRecord", 5, handles.textStyle());
    tags.tag(2, "Standard").tag(70, 0).tag(40, 0.0).tag(41, 1.0).tag(50, 0.0).tag(71, 0);
    tags.tag(42, 2.5).tag(3, "arial.ttf").tag(4, "");
    end();
  }

  private void dimensionStyles() {
    String table = begin("DIMSTYLE", 1);
    tags.tag(100, "AcDbDimStyleTable").tag(71, 0);
    record("DIMSTYLE", table, "AcDbDimStyleTableRecord", 105, tags.handle());
    tags.tag(2, "Standard").tag(70, 0).tag(340, handles.textStyle());
    end();
  }

  private void blockRecords() {
    String table = begin("BLOCK_RECORD", 2);
    record("BLOCK_RECORD", table, "AcDbBlockTableRecord", 5, handles.modelSpace());
    tags.tag(2, "*Model_Space").tag(340, handles.modelLayout());
    record("BLOCK_RECORD", table, "AcDbBlockTableRecord", 5, handles.paperSpace());
    tags.tag(2, "*Paper_Space").tag(340, handles.paperLayout());
    end();
  }
}
