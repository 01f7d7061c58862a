package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outside.Figure;
import org.bearingline.outside.FillRule;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Stroke;
import org.bearingline.outside.StrokePiece;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.Cleaning;
import org.bearingline.outside.clean.CleaningSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Filled shapes over each other painted by librsvg, and their union painted by librsvg as bare
 * polygons: one picture.
 */
class UnitedAgainstLibrsvgTest {

  private static final int PIXELS = 800;

  @TempDir Path folder;

  private static byte[] svg(String inside) {
    return ("<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='200mm'"
            + " viewBox='0 0 300 200'><defs><circle id='end' r='20'/>"
            + "<path id='rib' d='M-40 -6H30C45 -6 45 6 30 6H-40Z'/></defs>"
            + inside
            + "</svg>")
        .getBytes(StandardCharsets.UTF_8);
  }

  private CleanedOutline sameAsPainted(byte[] drawing) throws IOException {
    ExternalProgram librsvg = ExternalProgram.named("rsvg-convert");
    Sketch sketch = SvgReader.read("united.svg", drawing, ReadingSettings.USUAL);
    CleanedOutline cleaned = Cleaning.clean(sketch, CleaningSettings.usual().uniting());
    List<Stroke> strokes = new ArrayList<>();
    for (Outline outline : cleaned.outlines()) {
      for (Loop loop : outline.loops()) {
        List<StrokePiece> pieces = new ArrayList<>();
        loop.primitives().forEach(piece -> pieces.add(new StrokePiece.Plain(piece)));
        strokes.add(new Stroke(pieces, true));
      }
    }
    Sketch union =
        new Sketch(
            "union",
            List.of(new Figure(strokes, FillRule.EVEN_ODD, "union")),
            true,
            sketch.noise(),
            List.of());
    var pictures = new BarePolygons(librsvg, folder, BarePolygons.Paint.OWN, PIXELS);
    var difference = pictures.compare(drawing, union);
    assertTrue(difference.painted() > PIXELS, "librsvg painted nothing");
    assertTrue(difference.unlike() <= 3, new String(drawing) + difference);
    return cleaned;
  }

  /**
   * Copied, turned, mirrored and nested shapes; a ring by the even-odd rule and one by non-zero.
   */
  @Test
  void shapesOfEveryKindLookAsTheyDid() throws IOException {
    CleanedOutline cleaned =
        sameAsPainted(
            svg(
                "<rect x='20' y='80' width='240' height='40' rx='6'/>"
                    + "<use href='#end' x='60' y='70'/>"
                    + "<use href='#end' transform='translate(220 124) scale(1.4 0.9)'/>"
                    + "<g transform='translate(150 100) rotate(-50)'><use href='#rib'/>"
                    + "<use href='#rib' transform='scale(-1 1) rotate(35)'/></g>"
                    + "<path fill-rule='evenodd' d='M100 130a30 30 0 1 0 60 0a30 30 0 1 0 -60 0Z"
                    + "M110 130a20 20 0 1 0 40 0a20 20 0 1 0 -40 0Z'/>"
                    + "<path d='M170 30h40v40h-40Z M180 40v20h20v-20Z'/>"
                    + "<polygon points='185,60 195,60 200,90 180,90'/>"));
    assertEquals(List.of(), cleaned.report().faults());
    assertEquals(1, cleaned.outlines().size());
    assertEquals(8, cleaned.report().united().orElseThrow().shapes());
    // The window of the square, and what the ring's hole has left.
    assertTrue(cleaned.outlines().get(0).openings().size() >= 2);
  }

  @Test
  void randomShapesLookAsTheyDid() throws IOException {
    Random random = new Random(4711);
    int united = 0;
    for (int i = 0; i < 25; i++) {
      StringBuilder inside = new StringBuilder();
      for (int k = 0; k < 7; k++) {
        String turn =
            String.format(
                Locale.ROOT,
                "transform='translate(%d %d) rotate(%d) scale(%d 1)'",
                60 + random.nextInt(180),
                50 + random.nextInt(100),
                random.nextInt(360),
                random.nextBoolean() ? 1 : -1);
        int size = 15 + random.nextInt(35);
        inside.append(
            switch (random.nextInt(4)) {
              case 0 -> "<rect x='-30' y='-9' width='80' height='" + size + "' " + turn + "/>";
              case 1 -> "<ellipse rx='" + size + "' ry='14' " + turn + "/>";
              case 2 -> "<use href='#rib' " + turn + "/>";
              default -> "<polygon points='-10,-30 " + size + ",0 -20,40' " + turn + "/>";
            });
      }
      byte[] drawing = svg(inside.toString());
      Sketch sketch = SvgReader.read("random.svg", drawing, ReadingSettings.USUAL);
      // One inside another is an opening, which black on black does not show.
      if (isAnyInAnother(sketch)) {
        continue;
      }
      sameAsPainted(drawing);
      united++;
    }
    assertTrue(united >= 8, "drawings compared: " + united);
  }

  private static boolean isAnyInAnother(Sketch sketch) {
    List<Outline> alone = new ArrayList<>();
    for (Figure figure : sketch.figures()) {
      Sketch one = new Sketch("one", List.of(figure), true, sketch.noise(), List.of());
      alone.add(Cleaning.clean(one, CleaningSettings.usual()).outlines().get(0));
    }
    return alone.stream()
        .anyMatch(
            inner ->
                alone.stream()
                    .anyMatch(
                        outer ->
                            inner != outer
                                && inner.outer().primitives().stream()
                                    .flatMap(p -> Stream.of(p.start(), p.middle()))
                                    .allMatch(outer::contains)));
  }
}
