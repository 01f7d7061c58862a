package org.bearingline.export.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Widths and outlines against fontTools, another reader of the same files. */
class TypefaceTest {

  private static final String WORDS = "Ø 1-1/2 in × 38.1 mm ± 2°, template: work to this line ≈";

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Typeface.class)
  void widthAndHeightAreThoseOfTheFile(Typeface face) throws Exception {
    Path file = folder.resolve("font.ttf");
    try (InputStream in = face.open()) {
      Files.copy(in, file);
    }
    String code =
        """
        import sys
        from fontTools.ttLib import TTFont
        from fontTools.pens.boundsPen import BoundsPen
        f = TTFont(sys.argv[1])
        cmap, metrics, glyphs = f.getBestCmap(), f['hmtx'], f.getGlyphSet()
        em = f['head'].unitsPerEm
        print(sum(metrics[cmap[ord(c)]][0] for c in sys.argv[2]) / em)
        print(f['OS/2'].sCapHeight / em)
        pen = BoundsPen(glyphs)
        glyphs[cmap[ord('R')]].draw(pen)
        print(*(v / em for v in pen.bounds))
        """;
    String[] found =
        ExternalProgram.pythonWith("fontTools.ttLib", "fontTools.pens")
            .run("-c", code, file, WORDS)
            .strip()
            .split("\\s+");
    assertEquals(Double.parseDouble(found[0]), face.width(WORDS, 1), 1e-9);
    assertEquals(Double.parseDouble(found[0]) * 7, face.width(WORDS, 7), 1e-9);
    assertEquals(Double.parseDouble(found[1]), face.capHeight(1), 1e-9);
    Extent letter = new Extent();
    face.draw("R", 1, Point.ORIGIN, 0, letter);
    for (int i = 0; i < 4; i++) {
      // Extremes of the letter R lie on end points, so the pen meets them.
      assertEquals(Double.parseDouble(found[2 + i]), letter.box[i], 1e-9);
    }
  }

  @ParameterizedTest
  @EnumSource(Typeface.class)
  void hasTheSignsOfTheTradeAndNoArrows(Typeface face) {
    "Ø°×″′±½¼¾≈≤≥—éü"
        .codePoints()
        .forEach(c -> assertTrue(face.has(c), () -> Character.toString(c)));
    assertFalse(face.has('\u2192'));
  }

  @Test
  void turnedWordsRunUpwards() {
    Extent upright = new Extent();
    Typeface.REGULAR.draw("HH", 10, new Point(100, 200), 90, upright);
    // Upright on their left side: the capitals reach to the left of the base line, the words up.
    assertEquals(100 - Typeface.REGULAR.capHeight(10), upright.box[0], 1e-9);
    assertEquals(100, upright.box[2], 1e-9);
    assertTrue(upright.box[1] > 200);
    assertTrue(upright.box[3] < 200 + Typeface.REGULAR.width("HH", 10));
    assertTrue(upright.box[3] > 200 + Typeface.REGULAR.width("H", 10));
  }

  /** The box of all points that a letter ends a stroke on. */
  private static final class Extent implements Pen {
    final double[] box = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };

    @Override
    public void moveTo(double x, double y) {
      box[0] = Math.min(box[0], x);
      box[1] = Math.min(box[1], y);
      box[2] = Math.max(box[2], x);
      box[3] = Math.max(box[3], y);
    }

    @Override
    public void lineTo(double x, double y) {
      moveTo(x, y);
    }

    @Override
    public void quadTo(double cx, double cy, double x, double y) {
      moveTo(x, y);
    }

    @Override
    public void close() {}
  }
}
