package org.bearingline.export.svg;

import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.util.SVGConstants;
import org.bearingline.drawing.Drawing;
import org.bearingline.export.Figure;
import org.bearingline.export.LineStyle;
import org.bearingline.export.Plot;
import org.bearingline.export.font.Typeface;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Path;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The document tree of a drawing: one user unit is one millimetre, one group for each layer. Words
 * are drawn as the outlines of their letters, so that they look the same on every machine; a label
 * tells screen readers what they say.
 */
public final class SvgDocument {

  private static final String SVG = SVGConstants.SVG_NAMESPACE_URI;

  private final Bounds page;
  private final double leastWidth;
  private final Document document;

  private SvgDocument(DOMImplementation dom, Bounds page, double leastWidth) {
    this.page = page;
    this.leastWidth = leastWidth;
    this.document = dom.createDocument(SVG, "svg", null);
  }

  /** A drawing's figures, measured with the shipped font. */
  public static Plot plot(Drawing drawing, Units units) {
    return Plot.of(drawing, units, Typeface.REGULAR::width);
  }

  /** The tree to be written as a file. */
  static Document toWrite(Plot plot) {
    // The generic tree adds no attributes of its own, and spares loading the painting classes.
    return build(GenericDOMImplementation.getDOMImplementation(), plot, 0);
  }

  /**
   * The tree to be painted.
   *
   * @param plot what to draw
   * @param leastWidth mm; finer lines are drawn this wide
   */
  public static Document toPaint(Plot plot, double leastWidth) {
    return build(SVGDOMImplementation.getDOMImplementation(), plot, leastWidth);
  }

  private static Document build(DOMImplementation dom, Plot plot, double leastWidth) {
    SvgDocument building = new SvgDocument(dom, plot.page(), leastWidth);
    building.fill(plot);
    return building.document;
  }

  private void fill(Plot plot) {
    Element root = document.getDocumentElement();
    String width = SvgNumbers.fine(page.width());
    String height = SvgNumbers.fine(page.height());
    root.setAttributeNS(XMLConstants.XMLNS_ATTRIBUTE_NS_URI, "xmlns", SVG);
    root.setAttribute("version", "1.1");
    root.setAttribute("width", width + "mm");
    root.setAttribute("height", height + "mm");
    root.setAttribute("viewBox", "0 0 " + width + " " + height);
    root.setAttribute("fill", "none");
    root.setAttribute("stroke-linejoin", "round");
    title(root, plot.title());
    for (Plot.PlotLayer layer : plot.layers()) {
      Element group = child(root, "g");
      group.setAttribute("id", layer.layer().name().id());
      title(group, layer.layer().title());
      stroke(group, layer.style());
      for (Figure figure : layer.figures()) {
        add(group, figure, layer.style());
      }
    }
  }

  private void add(Element group, Figure figure, LineStyle groupStyle) {
    if (figure instanceof Figure.Trace trace) {
      Element line = trace(group, trace.path());
      if (!trace.style().equals(groupStyle)) {
        stroke(line, trace.style());
      }
    } else if (figure instanceof Figure.Area area) {
      PathData data = new PathData(page);
      area.outline().loops().forEach(loop -> data.add(Path.of(loop)));
      filled(group, area.ink().hex(), data.toString()).setAttribute("fill-rule", "evenodd");
    } else if (figure instanceof Figure.Head head) {
      PathData data = new PathData(page).triangle(head.tip(), head.left(), head.right());
      filled(group, head.ink().hex(), data.toString());
    } else if (figure instanceof Figure.Words words) {
      Element label = child(group, "g");
      label.setAttribute("role", "img");
      label.setAttribute("aria-label", printable(words.text()));
      filled(label, words.ink().hex(), LetterData.of(words, page));
    } else {
      throw new IllegalStateException("a figure of an unknown kind");
    }
  }

  private Element trace(Element group, Path path) {
    if (path.primitives().size() == 1
        && path.primitives().get(0) instanceof Arc arc
        && arc.isFullCircle()) {
      PathData at = new PathData(page);
      Element circle = child(group, "circle");
      circle.setAttribute("cx", SvgNumbers.fine(at.x(arc.center().x())));
      circle.setAttribute("cy", SvgNumbers.fine(at.y(arc.center().y())));
      circle.setAttribute("r", SvgNumbers.fine(arc.radius()));
      return circle;
    }
    Element line = child(group, "path");
    line.setAttribute("d", new PathData(page).add(path).toString());
    return line;
  }

  private Element filled(Element parent, String colour, String data) {
    Element path = child(parent, "path");
    path.setAttribute("fill", colour);
    path.setAttribute("stroke", "none");
    path.setAttribute("d", data);
    return path;
  }

  private void stroke(Element element, LineStyle style) {
    element.setAttribute("stroke", style.ink().hex());
    element.setAttribute("stroke-width", SvgNumbers.fine(Math.max(leastWidth, style.width())));
    element.setAttribute(
        "stroke-dasharray",
        style.isSolid()
            ? "none"
            : style.dashes().stream().map(SvgNumbers::fine).collect(Collectors.joining(" ")));
  }

  private void title(Element parent, String words) {
    child(parent, "title").setTextContent(printable(words));
  }

  private Element child(Element parent, String name) {
    parent.appendChild(document.createTextNode("\n"));
    Element element = document.createElementNS(SVG, name);
    parent.appendChild(element);
    return element;
  }

  /** XML 1.0 has no room for control characters, not even escaped. */
  private static String printable(String words) {
    return words
        .codePoints()
        .map(c -> isXml(c) ? c : 0xfffd)
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  private static boolean isXml(int c) {
    return !Character.isISOControl(c)
        && Character.getType(c) != Character.SURROGATE
        && (c & 0xfffe) != 0xfffe;
  }
}
