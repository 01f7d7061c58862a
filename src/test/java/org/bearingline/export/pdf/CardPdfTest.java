package org.bearingline.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.external.ExternalProgram;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CardPdfTest {

  private static final String LONG_WORD = "Stock".repeat(30);

  @TempDir Path folder;

  private static Card card(String paper, int tables) {
    Drawing drawing = SampleDrawings.rail(700, 150);
    double enlargement = CardPdf.enlargementFor(drawing.bounds());
    List<Card.Section> sections = new ArrayList<>();
    sections.add(
        Card.Section.of(
            "Bit and follower",
            List.of("Straight bit 1/2 in on a bearing: the template is the part's own line.")));
    sections.add(
        new Card.Section(
            "Reach",
            List.of("Pare these by hand:"),
            List.of(
                List.of("no.", "where", "depth", "inside radius"),
                List.of("1", "corner", "2.63 mm", "sharp"),
                List.of("2", "a neck between the two lifts on the left", "0.41 mm", "4 mm"))));
    for (int i = 0; i < tables; i++) {
      sections.add(
          Card.Section.table(
              "Measures number" + i,
              List.of(List.of("measure", "value"), List.of("length" + i, (700 + i) + " mm"))));
    }
    sections.add(Card.Section.of("Odd", List.of(LONG_WORD, "", "no letter: \u4e00 \n end")));
    return new Card(
        "Arched rail",
        "700 × 150 mm, white oak",
        SampleDrawings.enlarged(drawing, enlargement),
        sections,
        List.of("Wear eye and ear protection.", "Hold small pieces in a carrier."),
        Paper.parse(paper));
  }

  private Path written(Card card) throws IOException {
    return Files.write(folder.resolve("card.pdf"), CardPdf.write(card, Units.MM));
  }

  @ParameterizedTest
  @CsvSource({"A3, 595.276, 841.89", "roll:36in, 612, 792", "Letter, 612, 792"})
  void theCardIsOnePageOfOfficePaper(String paper, String width, String height) throws IOException {
    String info = ExternalProgram.named("pdfinfo").run(written(card(paper, 1)));
    assertTrue(info.contains("Page size:       " + width + " x " + height + " pts"), info);
    assertTrue(info.matches("(?s).*Pages: +1\n.*"), info);
  }

  @Test
  void itSaysEverything() throws IOException {
    String text =
        ExternalProgram.named("pdftotext")
            .run(written(card("A4", 30)), "-")
            .replaceAll("\\s+", " ");
    for (String part :
        List.of(
            "Arched rail",
            "700 × 150 mm, white oak",
            "Bit and follower",
            "inside radius",
            "2.63 mm",
            "Take care",
            "Wear eye and ear protection.",
            "Measures number29",
            "729 mm",
            "page 2 of ",
            "no letter: ?",
            "face A")) {
      assertTrue(text.contains(part), part + " is not in: " + text);
    }
    assertFalse(text.contains("page 1 of 1"));
  }

  /** What the first page has no room for stands on the next: a picture under its own heading. */
  @Test
  void furtherPicturesComeWithTheirHeadingsAndCautionsStayOnTheFirstPage() throws IOException {
    Card one = card("A4", 40);
    List<Card.Picture> others = new ArrayList<>();
    for (int i = 2; i < 7; i++) {
      others.add(new Card.Picture("Plate number" + i, SampleDrawings.rail(700, 150)));
    }
    Path file =
        written(
            new Card(
                one.title(),
                one.subtitle(),
                one.picture(),
                one.across(),
                one.sections(),
                one.cautions(),
                others,
                one.paper()));
    String first = ExternalProgram.named("pdftotext").run("-l", "1", file, "-");
    assertTrue(first.contains("Take care"), first);
    assertFalse(first.contains("Plate number"), first);
    String rest = ExternalProgram.named("pdftotext").run("-f", "2", file, "-");
    for (int i = 2; i < 7; i++) {
      assertTrue(rest.contains("Plate number" + i), rest);
    }
    assertTrue(rest.contains("Measures number39"), rest);
    // The picture has words of its own, once in each.
    assertEquals(6, (first + rest).split("face A", -1).length - 1);
  }

  /** Two columns, and no paragraph leaves a single line behind or sends one on. */
  @Test
  void noLineStandsAloneAtAColumnsEdge() throws IOException {
    List<Card.Section> sections = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      sections.add(
          Card.Section.of(
              "Part " + i,
              List.of(("begin" + i + " ") + "word ".repeat(55 + 3 * i) + ("end" + i))));
    }
    Card one = card("A4", 0);
    Path file =
        written(new Card(one.title(), "x", one.picture(), sections, List.of("Mind."), one.paper()));
    String boxes = ExternalProgram.named("pdftotext").run("-bbox", file, "-");
    for (int i = 0; i < 9; i++) {
      for (String edge : List.of("begin" + i, "end" + i)) {
        Matcher m =
            Pattern.compile("xMin=\"([\\d.]+)\" yMin=\"([\\d.]+)\"[^>]*>" + edge + "<")
                .matcher(boxes);
        assertTrue(m.find(), edge);
        assertTrue(hasNeighbour(boxes, number(m, 1) < 290, number(m, 2)), edge);
      }
    }
  }

  /** Whether a line of plain words stands right above or below in the same column. */
  private static boolean hasNeighbour(String boxes, boolean left, double y) {
    Matcher m = Pattern.compile("xMin=\"([\\d.]+)\" yMin=\"([\\d.]+)\"[^>]*>word<").matcher(boxes);
    while (m.find()) {
      double away = Math.abs(number(m, 2) - y);
      if (number(m, 1) < 290 == left && away > 5 && away < 16) {
        return true;
      }
    }
    return false;
  }

  /** No word leaves the page or lies on another, on one page or on many. */
  @ParameterizedTest
  @CsvSource({"A4, 0", "A4, 5", "Letter, 12", "Letter, 60"})
  void wordsKeepApart(String paper, int tables) throws IOException {
    String boxes =
        ExternalProgram.named("pdftotext").run("-bbox", written(card(paper, tables)), "-");
    Pattern word =
        Pattern.compile(
            "<word xMin=\"([\\d.-]+)\" yMin=\"([\\d.-]+)\" xMax=\"([\\d.-]+)\" yMax=\"([\\d.-]+)\">");
    Matcher size = Pattern.compile("<page width=\"([\\d.]+)\" height=\"([\\d.]+)\">").matcher("");
    int words = 0;
    for (String page : boxes.split("</page>")) {
      if (!size.reset(page).find()) {
        continue;
      }
      Bounds sheet = new Bounds(0, 0, number(size, 1), number(size, 2));
      List<Bounds> seen = new ArrayList<>();
      for (Matcher m = word.matcher(page); m.find(); ) {
        double tall = number(m, 4) - number(m, 2);
        // A font's box is higher than its letters; a quarter off at both ends leaves the letters.
        Bounds box =
            new Bounds(
                number(m, 1) + 0.1,
                number(m, 2) + tall / 4,
                number(m, 3) - 0.1,
                number(m, 4) - tall / 4);
        assertEquals(sheet.union(box), sheet, m.group());
        assertTrue(seen.stream().noneMatch(box::intersects), m.group() + " lies on a word");
        seen.add(box);
        words++;
      }
    }
    assertTrue(words > 50, "only " + words + " words were looked at");
  }

  /**
   * Words that go on to another page leave no hole on the first: what stays free above the frame of
   * cautions is less than a heading with a row of a table, 25 mm.
   */
  @ParameterizedTest
  @CsvSource({"Letter, 8, 200", "Letter, 14, 700", "A4, 30, 150", "Letter, 20, 420"})
  void aFurtherPageLeavesNoHole(String paper, int tables, double tall) throws IOException {
    Card plain = card(paper, tables);
    Drawing drawing = SampleDrawings.rail(500, tall);
    Card card =
        new Card(
            plain.title(),
            plain.subtitle(),
            SampleDrawings.enlarged(drawing, CardPdf.enlargementFor(drawing.bounds())),
            Optional.of(
                Card.Section.table(
                    "Order of work",
                    List.of(
                        List.of("no.", "what", "depth of each pass"),
                        List.of("1", "edge", "1/8 in, 1/4 in, 3/8 in"),
                        List.of("2", "groove", "1/8 in")))),
            plain.sections(),
            List.of("Wear eye and ear protection. ".repeat(12)),
            plain.paper());
    String boxes = ExternalProgram.named("pdftotext").run("-bbox", written(card), "-");
    String[] pages = boxes.split("</page>");
    assertTrue(pages.length > 2 || tables < 10, "one page only");
    if (pages.length <= 2) {
      return;
    }
    List<Double> tops = new ArrayList<>();
    double care = 0;
    Matcher m =
        Pattern.compile("yMin=\"([\\d.-]+)\" xMax=\"[\\d.-]+\" yMax=\"([\\d.-]+)\">(.*?)</word>")
            .matcher(pages[0]);
    while (m.find()) {
      if (m.group(3).equals("Take")) {
        care = number(m, 1);
      }
      tops.add(number(m, 2));
    }
    double frame = care;
    double lowest = tops.stream().filter(y -> y < frame).mapToDouble(y -> y).max().orElseThrow();
    assertTrue((frame - lowest) * 25.4 / 72 < 25, (frame - lowest) * 25.4 / 72 + " mm are empty");
  }

  /** Eleven points are legible at arm's length; the picture's lettering may have ten. */
  @Test
  void nothingIsSmallerThanItShouldBe() throws IOException {
    Path xml = folder.resolve("card.xml");
    ExternalProgram.named("pdftohtml")
        .run("-xml", "-zoom", "1", "-i", written(card("A4", 40)), xml);
    Matcher sizes =
        Pattern.compile("<fontspec id=\"\\d+\" size=\"(\\d+)\"").matcher(Files.readString(xml));
    int found = 0;
    while (sizes.find()) {
      assertTrue(Integer.parseInt(sizes.group(1)) >= 9, sizes.group());
      found++;
    }
    assertTrue(found >= 3);
  }

  @Test
  void theSameCardGivesTheSameBytes() {
    assertArrayEquals(
        CardPdf.write(card("A4", 3), Units.INCH), CardPdf.write(card("A4", 3), Units.INCH));
  }

  private static double number(Matcher matcher, int group) {
    return Double.parseDouble(matcher.group(group));
  }

  /**
   * Words stand as large as the fewest pages allow, and never under 9.5 points. Open Sans is 1.362
   * em from its highest to its lowest, which is what poppler tells of a word's box.
   */
  @Test
  void aFewLinesTooManyMakeTheWordsSmallerAndNoFurtherPage() throws IOException {
    double before = Double.POSITIVE_INFINITY;
    boolean shrank = false;
    for (int tables = 1; tables < 16; tables++) {
      Path file = written(card("A4", tables));
      String info = ExternalProgram.named("pdfinfo").run(file);
      String xml = ExternalProgram.named("pdftotext").run("-bbox", file, "-");
      Matcher word =
          Pattern.compile("yMin=\"([0-9.]+)\"[^>]*yMax=\"([0-9.]+)\">length0<").matcher(xml);
      assertTrue(word.find(), xml);
      double size = (Double.parseDouble(word.group(2)) - Double.parseDouble(word.group(1))) / 1.362;
      assertTrue(size > 9.45 && size < 11.05, tables + ": " + size);
      if (info.matches("(?s).*Pages: +1\n.*")) {
        assertTrue(size <= before + 0.01, "no larger for more words");
        shrank |= size < 10.95;
        before = size;
      }
    }
    assertTrue(shrank, "some card is one page by smaller words");
  }
}
