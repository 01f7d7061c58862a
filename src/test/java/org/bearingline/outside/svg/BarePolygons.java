package org.bearingline.outside.svg;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Point;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;

/**
 * A drawing painted by librsvg, and the sketch read from it painted by librsvg as bare polygons:
 * the two pictures should be alike.
 */
final class BarePolygons {

  /** How the shapes of a drawing are painted. */
  enum Paint {
    /** As the drawing says, which is to be full and without strokes. */
    OWN("text{display:none}", 1),

    /**
     * Every shape is filled with the same thin black, whatever the drawing says, so that a place
     * shows how many shapes cover it.
     */
    THIN(
        "path,rect,circle,ellipse,line,polyline,polygon{fill:black!important;"
            + "fill-opacity:0.3!important;stroke:none!important}"
            + "*{opacity:1!important;clip-path:none!important;mask:none!important;"
            + "filter:none!important;marker:none!important;marker-start:none!important;"
            + "marker-mid:none!important;marker-end:none!important}"
            + "svg,symbol{overflow:visible!important}"
            + "text,tspan,tref,image,foreignObject{display:none!important}",
        0.3);

    private final String sheet;
    private final double opacity;

    Paint(String sheet, double opacity) {
      this.sheet = sheet;
      this.opacity = opacity;
    }
  }

  private final ExternalProgram librsvg;
  private final Path folder;
  private final Paint paint;
  private final int width;

  /**
   * @param folder where pictures may be written
   * @param width pixels
   */
  BarePolygons(ExternalProgram librsvg, Path folder, Paint paint, int width) {
    this.librsvg = librsvg;
    this.folder = folder;
    this.paint = paint;
    this.width = width;
  }

  /**
   * How two pictures differ.
   *
   * @param painted pixels that librsvg covers
   * @param unlike pixels that the other covers otherwise
   */
  record Difference(int painted, int unlike) {}

  Difference compare(byte[] drawing, Sketch sketch) throws IOException {
    BufferedImage theirs = picture("theirs", drawing);
    byte[] bare = polygons(sketch, root(drawing)).getBytes(StandardCharsets.UTF_8);
    BufferedImage ours = picture("ours", bare);
    if (theirs.getWidth() != ours.getWidth() || theirs.getHeight() != ours.getHeight()) {
      throw new AssertionError("the pictures are not of one size");
    }
    int painted = 0;
    int unlike = 0;
    for (int y = 0; y < theirs.getHeight(); y++) {
      for (int x = 0; x < theirs.getWidth(); x++) {
        int a = theirs.getRGB(x, y) >>> 24;
        int b = ours.getRGB(x, y) >>> 24;
        painted += a > paint.opacity * 128 ? 1 : 0;
        // What an edge 0.4 pixels off would show; slanting ones are sampled by librsvg to about
        // 0.1.
        unlike += Math.abs(a - b) > paint.opacity * 102 ? 1 : 0;
      }
    }
    return new Difference(painted, unlike);
  }

  private BufferedImage picture(String name, byte[] svg) throws IOException {
    Path sheet = Files.writeString(folder.resolve("bare.css"), paint.sheet);
    Path file = Files.write(folder.resolve(name + ".svg"), svg);
    Path png = folder.resolve(name + ".png");
    librsvg.run("--stylesheet", sheet, "-w", width, "--keep-aspect-ratio", "-o", png, file);
    return ImageIO.read(png.toFile());
  }

  /** Attributes of the outermost element. */
  private static Map<String, String> root(byte[] drawing) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    Map<String, String> attributes = new HashMap<>();
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(drawing));
      while (reader.next() != XMLStreamConstants.START_ELEMENT) {
        // What stands before it does not matter.
      }
      for (int i = 0; i < reader.getAttributeCount(); i++) {
        attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
      }
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return attributes;
  }

  /** The figures in a frame that shows as much as the drawing's own, measured as the sketch is. */
  private String polygons(Sketch sketch, Map<String, String> root) {
    StringBuilder svg = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' ");
    String wide = root.getOrDefault("width", "100%");
    String high = root.getOrDefault("height", "100%");
    boolean isFramed = !wide.endsWith("%") && !high.endsWith("%");
    svg.append(
        isFramed
            ? String.format(
                Locale.ROOT,
                "width='%s' height='%s' viewBox='0 0 %f %f'",
                wide,
                high,
                length(wide),
                length(high))
            : "viewBox='" + root.get("viewBox") + "'");
    svg.append(">\n");
    for (Figure figure : sketch.figures()) {
      String rule = figure.rule() == FillRule.EVEN_ODD ? "evenodd" : "nonzero";
      svg.append("<path fill-opacity='").append(paint.opacity);
      svg.append("' fill-rule='").append(rule).append("' d='");
      for (Stroke stroke : figure.strokes()) {
        char command = 'M';
        for (StrokePiece piece : stroke.pieces()) {
          for (Point p : Sketches.sampled(piece, 512)) {
            svg.append(String.format(Locale.ROOT, "%c%.9f %.9f", command, p.x(), 0 - p.y()));
            command = 'L';
          }
        }
        svg.append('Z');
      }
      svg.append("'/>\n");
    }
    return svg.append("</svg>").toString();
  }

  /** In mm where the length has a real unit, else in px. */
  private static double length(String text) {
    String number = text.replaceAll("[a-z]+$", "");
    String unit = text.substring(number.length());
    return Double.parseDouble(number)
        * switch (unit) {
          case "", "px", "mm" -> 1;
          case "cm" -> 10;
          case "in" -> 25.4;
          case "pt" -> 25.4 / 72;
          default -> throw new IllegalArgumentException(text);
        };
  }
}
