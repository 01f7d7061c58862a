package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Numbers that no drawing has: refused in one sentence with their place, and never computed with.
 */
class SvgExtremesTest {

  private static final String RECT = "<rect width='9' height='9'/>";

  private static Sketch read(String attributes, String inside) {
    String text =
        "<svg xmlns='http://www.w3.org/2000/svg' " + attributes + ">\n" + inside + "</svg>";
    return SvgReader.read("a.svg", text.getBytes(StandardCharsets.UTF_8), ReadingSettings.USUAL);
  }

  private static void refused(String says, int line, String attributes, String inside) {
    Problem problem = assertThrows(Problem.class, () -> read(attributes, inside));
    assertTrue(problem.getMessage().contains(says), problem.spoken());
    assertEquals(line, ((Place.Spot) problem.place()).line(), problem.spoken());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "width='1e999mm' height='5mm' | width of this svg reaches too far out",
        "width='5mm' height='-1e999in' | height of this svg reaches too far out",
        "width='1e38' height='1e38' | width of this svg reaches too far out",
        "width='1e999%' viewBox='0 0 5 5' | width of this svg reaches too far out",
        "viewBox='0 0 1e999 5' | viewBox reaches too far out",
        "viewBox='1e999 -1e999 5 5' | viewBox reaches too far out",
        "width='5mm' viewBox='0 1e10 5 5' | viewBox reaches too far out",
        "width='1e-40mm' viewBox='0 0 5 5' | does not go with its width and height",
        "width='5mm' viewBox='0 0 1 1e-40' height='5mm' preserveAspectRatio='none' | does not go with its width and height",
        "width='5mm' viewBox='0 0 1e-12 1e-12' | does not go with its width and height",
        "width='1e9in' viewBox='9e8 0 5 5' | does not go with its width and height",
        "width='1e9' height='1e9' viewBox='9e8 0 5 5' | too far out",
        "width='5mm' viewBox='0 0 0 0' | no area",
        "viewBox='0 0 5 0' | no area",
        "viewBox='0 0 5 1e-320' | no area",
      })
  void theDrawingsOwnSize(String attributes, String says) {
    refused(says, 1, attributes, RECT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<rect width='1e999' height='5'/> | width of this rect reaches too far out",
        "<circle r='1e999%'/> | r of this circle reaches too far out",
        "<rect x='1e8in' width='5' height='5'/> | too far out",
        "<svg x='1e999'><rect width='5' height='5'/></svg> | x of this svg reaches too far out",
        "<svg x='1e8in'><rect width='5' height='5'/></svg> | ends too far out",
        "<svg width='5' height='1e-40' viewBox='0 0 5 5'><rect/></svg> | does not go with",
        "<svg viewBox='0 0 1e-12 1e-12'><rect/></svg> | does not go with",
        "<svg viewBox='0 0 NaN 5'><rect/></svg> | viewBox",
        "<svg viewBox='0 0 1e999 5'><rect/></svg> | viewBox reaches too far out",
        "<use href='#p' x='-1e999'/><path id='p' d='M0 0h9'/> | x of this use reaches too far out",
        "<g transform='scale(1e999)'/> | too far out",
        "<g transform='skewX(90)'/> | too far out",
        "<path d='M0 0 h1e2147483648 v5'/> | no number",
        "<path d='M0 0 a1e999 5 0 0 1 5 5'/> | no number",
        "<path d='M0 0 a5 5 1e999 0 1 5 5'/> | no number",
      })
  void anElementsNumbers(String element, String says) {
    refused(says, 2, "width='100mm' height='100mm' viewBox='0 0 100 100'", element + RECT);
  }

  /** As the standard has it: what has no size does not show (SVG 1.1, section 7.7). */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<svg viewBox='0 0 0 5'>%</svg>",
        "<svg viewBox='0 0 5 0'>%</svg>",
        "<svg width='5' height='5' viewBox='0 0 0 0'>%</svg>",
        "<svg width='0'>%</svg>",
        "<symbol id='s' viewBox='0 0 0 5'>%</symbol><use href='#s' width='5' height='5'/>",
      })
  void aFrameWithoutAreaShowsNothing(String element) {
    Sketch sketch = read("width='100mm' height='100mm'", RECT + element.replace("%", RECT));
    assertEquals(1, sketch.figures().size());
    assertEquals(List.of("1 drawing in a frame without area"), sketch.ignored());
  }

  /** Numbers too small for a float are 0, and a shape without size shows nothing. */
  @Test
  void whatIsSmallerThanAnyNumberHasNoSize() {
    for (String small : List.of("1e-320", "-0", "0e99", "1e-2147483649")) {
      String shapes =
          "<rect width='"
              + small
              + "' height='5'/><g transform='scale("
              + small
              + ")'>"
              + RECT
              + "</g><circle r='"
              + small
              + "mm'/><path d='M5 5h"
              + small
              + "'/>";
      assertEquals(1, read("width='100mm' height='100mm'", shapes + RECT).figures().size(), small);
    }
  }
}
