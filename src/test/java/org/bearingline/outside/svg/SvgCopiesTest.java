package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Copies of copies: what takes time counts, whether it draws a line or not. */
class SvgCopiesTest {

  /** What does not end would go on for hours; a loaded machine may take its time. */
  private static final Duration LIMIT = Duration.ofMinutes(3);

  private static final String HEAD =
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm'>\n";

  private static final String RECT = "<rect width='9' height='9'/>";

  private static Sketch read(String text) {
    return assertTimeoutPreemptively(
        LIMIT,
        () ->
            SvgReader.read("a.svg", text.getBytes(StandardCharsets.UTF_8), ReadingSettings.USUAL));
  }

  /** Twenty copies of twenty copies and so on. */
  private static String copies(String inside, int levels) {
    StringBuilder text = new StringBuilder(HEAD).append("<defs><g id='g0'>" + inside + "</g>\n");
    for (int i = 1; i < levels; i++) {
      text.append("<g id='g").append(i).append("'>");
      text.append(("<use href='#g" + (i - 1) + "'/>").repeat(20)).append("</g>\n");
    }
    return text + "</defs><use href='#g" + (levels - 1) + "'/>" + RECT + "</svg>";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "<path d=' | M1 1 | '/> | repeats",
        "<polygon points=' | 1,1 | '/> | points",
        "<g transform=' | scale(1) | '/> | repeats",
        "<g style=' | a:b; | '/> | repeats",
        "<g style=' | fill:-; | '/> | repeats",
        "<g class=' | k | '/> | repeats",
        "<style> | g g g g g g g g rect{fill:none} | </style><g><g><rect/></g></g> | repeats",
        "<g> | <title/> | </g> | elements",
        "<switch> | <g requiredExtensions='x'/> | </switch> | elements",
      })
  void whatDrawsNoLineIsCounted(String before, String many, String after, String says) {
    String inside = before.strip() + (many + " ").repeat(900) + after.strip();
    Problem problem = assertThrows(Problem.class, () -> read(copies(inside, 6)));
    assertTrue(problem.getMessage().contains(says), problem.spoken());
    // Once, it is nothing to speak of.
    assertEquals(1, read(HEAD + inside + RECT + "</svg>").figures().size());
  }

  @Test
  void manyStyledCopiesAreRead() {
    String piece =
        "<rect class='st0 thin' width='9' height='4' transform='translate(3 4) rotate(20)'"
            + " style='fill:none;stroke:#000000;stroke-width:0.2;-own-word:Sans, Bold'/>";
    assertEquals(8_001, read(copies(piece, 4)).figures().size());
  }
}
