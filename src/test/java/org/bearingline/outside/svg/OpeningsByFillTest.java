package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.clean.CleanedOutline;
import org.bearingline.outside.clean.Cleaning;
import org.bearingline.outside.clean.CleaningSettings;
import org.junit.jupiter.api.Test;

/**
 * Whether a closed line inside another is an opening. What is filled follows the fill rule as SVG 2
 * says it (13.4.2); where nothing is filled, every line that shows is one to cut to.
 */
class OpeningsByFillTest {

  /** A board, and a hole drawn the same way round. */
  private static final String SAME_WAY =
      "M20 20H190V90H20Z M160 45A10 10 0 0 1 140 45 10 10 0 0 1 160 45";

  private static final String OTHER_WAY =
      "M20 20H190V90H20Z M160 45A10 10 0 0 0 140 45 10 10 0 0 0 160 45";

  private static CleanedOutline cleaned(String style, String path) {
    String drawing =
        "<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='100mm'"
            + " viewBox='0 0 200 100'><path style='"
            + style
            + "' d='"
            + path
            + "'/></svg>";
    return Cleaning.clean(
        SvgReader.read(
            "board.svg", drawing.getBytes(StandardCharsets.UTF_8), ReadingSettings.USUAL),
        CleaningSettings.usual());
  }

  private static int openings(String style, String path) {
    CleanedOutline cleaned = cleaned(style, path);
    assertEquals(1, cleaned.outlines().size());
    return cleaned.outlines().get(0).openings().size();
  }

  @Test
  void whatIsFilledFollowsItsRule() {
    assertEquals(0, openings("fill:black", SAME_WAY));
    assertEquals(1, openings("fill:black", OTHER_WAY));
    assertEquals(1, openings("fill:black;fill-rule:evenodd", SAME_WAY));
    assertEquals(0, openings("fill:black;stroke:black", SAME_WAY));
  }

  @Test
  void aLineWithoutFillCounts() {
    assertEquals(1, openings("fill:none;stroke:black", SAME_WAY));
    assertEquals(1, openings("fill:none;stroke:black", OTHER_WAY));
    assertEquals(1, openings("fill:none;fill-rule:nonzero;stroke:black", SAME_WAY));
  }

  @Test
  void aLineThatTheFillCoversIsTold() {
    assertTrue(
        cleaned("fill:black", SAME_WAY)
            .report()
            .notes()
            .toString()
            .contains("a closed line inside path, line 1 was left out"),
        () -> cleaned("fill:black", SAME_WAY).report().toString());
  }
}
