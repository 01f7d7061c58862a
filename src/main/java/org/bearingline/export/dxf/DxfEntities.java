package org.bearingline.export.dxf;

import java.util.List;
import org.bearingline.drawing.Item.Text.Anchor;
import org.bearingline.export.Figure;
import org.bearingline.export.LineStyle;
import org.bearingline.export.Plot;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Degrees;
import org.bearingline.outline.Line;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

/** The entities of the model space. */
final class DxfEntities {

  /** Height of the capitals as a share of the em: DXF measures lettering by its capitals. */
  private static final double CAPITALS = 0.714;

  private final DxfTags tags;
  private final String owner;
  private String layer;
  private LineStyle layerStyle;

  /**
   * @param tags written to
   * @param owner handle of the model space's block record
   */
  DxfEntities(DxfTags tags, String owner) {
    this.tags = tags;
    this.owner = owner;
  }

  void add(Plot.PlotLayer plotLayer) {
    layer = plotLayer.layer().name().dxf();
    layerStyle = plotLayer.style();
    plotLayer.figures().forEach(this::add);
  }

  private void add(Figure figure) {
    if (figure instanceof Figure.Trace trace) {
      addTrace(trace);
    } else if (figure instanceof Figure.Head head) {
      begin("SOLID").tag(100, "AcDbTrace").spot(10, head.tip()).spot(11, head.left());
      tags.spot(12, head.right()).spot(13, head.right());
    } else if (figure instanceof Figure.Words words) {
      addWords(words);
    } else if (!(figure instanceof Figure.Area)) {
      // An area's edge is drawn as a trace; filled, a laser would engrave it.
      throw new IllegalStateException("a figure of an unknown kind");
    }
  }

  private DxfTags begin(String kind) {
    tags.tag(0, kind).tag(5, tags.handle()).tag(330, owner);
    return tags.tag(100, "AcDbEntity").tag(8, layer);
  }

  private DxfTags begin(String kind, LineStyle style) {
    begin(kind);
    if (style.isSolid() && !layerStyle.isSolid()) {
      tags.tag(6, "Continuous");
    }
    return tags;
  }

  private void addTrace(Figure.Trace trace) {
    List<Primitive> pieces = trace.path().primitives();
    if (pieces.size() > 1) {
      addPolyline(trace.path(), trace.style());
    } else if (pieces.get(0) instanceof Line line) {
      begin("LINE", trace.style()).tag(100, "AcDbLine");
      tags.spot(10, line.start()).spot(11, line.end());
    } else if (pieces.get(0) instanceof Arc arc) {
      begin(arc.isFullCircle() ? "CIRCLE" : "ARC", trace.style());
      tags.tag(100, "AcDbCircle").spot(10, arc.center()).tag(40, arc.radius());
      if (!arc.isFullCircle()) {
        // DXF arcs always run counter-clockwise.
        Point from = arc.isCounterClockwise() ? arc.start() : arc.end();
        Point to = arc.isCounterClockwise() ? arc.end() : arc.start();
        tags.tag(100, "AcDbArc");
        tags.tag(50, direction(arc, from)).tag(51, direction(arc, to));
      }
    }
  }

  private static double direction(Arc arc, Point p) {
    return Degrees.normalised(Degrees.of(p.minus(arc.center())));
  }

  private void addPolyline(Path path, LineStyle style) {
    List<Primitive> pieces = path.primitives();
    boolean closed = path.isClosed();
    begin("LWPOLYLINE", style).tag(100, "AcDbPolyline");
    tags.tag(90, closed ? pieces.size() : pieces.size() + 1).tag(70, closed ? 1 : 0);
    tags.tag(43, 0.0);
    for (Primitive piece : pieces) {
      tags.point(10, piece.start().x(), piece.start().y());
      if (piece instanceof Arc arc) {
        tags.tag(42, Bulges.of(arc));
      }
    }
    if (!closed) {
      tags.point(10, path.end().x(), path.end().y());
    }
  }

  private void addWords(Figure.Words words) {
    Point left = words.left();
    begin("TEXT").tag(100, "AcDbText").spot(10, left);
    tags.tag(40, words.height() * CAPITALS).words(1, words.text());
    tags.tag(50, Degrees.normalised(words.degrees())).tag(7, "Standard");
    tags.tag(72, horizontal(words.anchor())).spot(11, words.at());
    // 2: centred half way up.
    tags.tag(100, "AcDbText").tag(73, 2);
  }

  private static int horizontal(Anchor anchor) {
    return switch (anchor) {
      case START -> 0;
      case MIDDLE -> 1;
      case END -> 2;
    };
  }
}
