package org.bearingline.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.PageFrame;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.drawing.sheet.PaperChoice;
import org.bearingline.drawing.sheet.PrintCorrection;
import org.bearingline.drawing.sheet.Sheet;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.external.ExternalProgram;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetsPdfTest {

  private static final List<String> NOTES = List.of("Bit 1/2 in on a bearing of 1/2 in.");

  @TempDir Path folder;

  private static SheetPlan plan(Drawing drawing, String paper, PrintCorrection correction) {
    return SheetPlan.plan(drawing, PaperChoice.of(Paper.parse(paper), correction), NOTES);
  }

  private Path written(Drawing drawing, String paper) throws IOException {
    SheetPlan plan = plan(drawing, paper, PrintCorrection.NONE);
    return Files.write(folder.resolve("sheets.pdf"), SheetsPdf.write(drawing, plan, Units.MM));
  }

  /** ISO 32000-1:2008, 8.3.2.3: the default unit of a page is 1/72 inch. */
  @ParameterizedTest
  @CsvSource({
    "A4, 210, 297",
    "Letter, 215.9, 279.4",
    "A3, 297, 420",
    "A0, 841, 1189",
    "ANSI E, 863.6, 1117.6"
  })
  void pagesHaveTheSizeOfThePaper(String paper, double width, double height) throws IOException {
    Path file = written(SampleDrawings.rail(60, 40), paper);
    String info = ExternalProgram.named("pdfinfo").run(file);
    Matcher size = Pattern.compile("Page size: +([\\d.]+) x ([\\d.]+) pts").matcher(info);
    assertTrue(size.find(), info);
    double one = Double.parseDouble(size.group(1)) * 25.4 / 72;
    double other = Double.parseDouble(size.group(2)) * 25.4 / 72;
    assertEquals(width, Math.min(one, other), 0.01);
    assertEquals(height, Math.max(one, other), 0.01);
  }

  @Test
  void everyPageCanBeFoundByItsWords() throws IOException {
    Path file = written(SampleDrawings.rail(700, 150), "A4");
    String words =
        ExternalProgram.named("pdftotext").run("-layout", file, "-").replaceAll("\\s+", " ");
    for (String part :
        List.of(
            "A1",
            "B1",
            "page 1 of 4",
            "page 4 of 4",
            "Arched rail, 700 × 150 mm",
            "must measure exactly 100 mm and 4 in",
            "Work to the fine unbroken black line",
            "The waste lies on its side that is marked ×",
            "cut here, lay on B1",
            "template edge: work to this line",
            "rough line: band-saw to it",
            "finished part",
            "Bit 1/2 in on a bearing of 1/2 in.",
            "the tool's manual and local rules come first",
            "face A",
            "150 mm",
            "--printed X,Y")) {
      assertTrue(words.contains(part), part + " is not in: " + words);
    }
  }

  @Test
  void theFontIsEmbeddedAndOnlyTheLettersUsed() throws IOException {
    Path file = written(SampleDrawings.rail(60, 40), "A4");
    String fonts = ExternalProgram.named("pdffonts").run(file);
    List<String> lines = fonts.lines().skip(2).toList();
    assertEquals(2, lines.size(), fonts);
    for (String line : lines) {
      assertTrue(line.matches("[A-Z]{6}\\+OpenSans\\S* +CID TrueType .* yes yes yes .*"), line);
    }
  }

  @Test
  void theSameDrawingGivesTheSameBytesAnywhere() {
    Drawing drawing = SampleDrawings.rail(700, 150);
    SheetPlan plan = plan(drawing, "A4", new PrintCorrection(99.4, 99.8));
    byte[] once = SheetsPdf.write(drawing, plan, Units.INCH);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      SheetPlan again = plan(drawing, "A4", new PrintCorrection(99.4, 99.8));
      assertArrayEquals(once, SheetsPdf.write(drawing, again, Units.INCH));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertFalse(new String(once, StandardCharsets.ISO_8859_1).contains("CreationDate"));
  }

  @ParameterizedTest
  @CsvSource({"A4, 60", "Letter, 60", "A3, 60", "A4, 170", "roll:610mm, 60"})
  void theBarsMeasureTrue(String paper, double length) {
    Drawing drawing = SampleDrawings.rail(length, 40);
    SheetPlan plan = plan(drawing, paper, PrintCorrection.NONE);
    assertBars(SheetsPdf.write(drawing, plan, Units.MM), plan, 1, 1);
  }

  /** A printer that makes x mm of 100 must print a bar that the file draws 100 · 100 / x long. */
  @ParameterizedTest
  @CsvSource({"60", "170"})
  void theBarsAreCorrectedForThePrinter(double length) {
    Drawing drawing = SampleDrawings.rail(length, 40);
    SheetPlan plan = plan(drawing, "A4", new PrintCorrection(98, 101));
    double across = 100.0 / 98;
    double along = 100.0 / 101;
    boolean turned = plan.frame().turned();
    assertEquals(length > 100, turned);
    assertBars(
        SheetsPdf.write(drawing, plan, Units.MM),
        plan,
        turned ? along : across,
        turned ? across : along);
  }

  /** Scans just beside each bar's line, where only the long ticks at its ends reach. */
  private static void assertBars(byte[] pdf, SheetPlan plan, double scaleX, double scaleY) {
    Raster page = Raster.of(pdf, 1, 600);
    PageFrame frame = plan.frame();
    double zeroX = frame.bar().minX() + 5.5;
    double lineY = frame.bar().minY() + 4;
    double mmY = (lineY + 2.1) * scaleY;
    double start = page.firstAlongX(mmY, (zeroX - 1) * scaleX, (zeroX + 20) * scaleX);
    double hundred = page.firstAlongX(mmY, (zeroX + 104) * scaleX, (zeroX + 99) * scaleX);
    assertEquals(100 * scaleX, hundred - start, 0.05);
    double inchY = (lineY - 2.1) * scaleY;
    double four = page.firstAlongX(inchY, (zeroX + 104) * scaleX, (zeroX + 101) * scaleX);
    assertEquals(4 * 25.4 * scaleX, four - start, 0.05);

    double zeroY = frame.side().minY() + 5;
    double lineX = frame.side().minX() + 3.5;
    double mmX = (lineX - 2.1) * scaleX;
    double low = page.firstAlongY(mmX, (zeroY - 1) * scaleY, (zeroY + 20) * scaleY);
    double high = page.firstAlongY(mmX, (zeroY + 104) * scaleY, (zeroY + 99) * scaleY);
    assertEquals(100 * scaleY, high - low, 0.05);
  }

  @Test
  void aKnownLineMeasuresTrueAndIsFine() {
    Drawing drawing =
        SampleDrawings.of(
            new Line(new Point(0, 0), new Point(0, 50)),
            new Line(new Point(100, 0), new Point(100, 50)));
    SheetPlan plan = plan(drawing, "A4", PrintCorrection.NONE);
    Raster page = Raster.of(SheetsPdf.write(drawing, plan, Units.MM), 1, 600);
    Sheet sheet = plan.sheets().get(0);
    Point left = plan.frame().onPage(sheet, plan.placement().apply(new Point(0, 25)));
    Point right = plan.frame().onPage(sheet, plan.placement().apply(new Point(100, 25)));
    double x1 = page.firstAlongX(left.y(), left.x() - 1, left.x() + 5);
    double x2 = page.firstAlongX(right.y(), right.x() - 5, right.x() + 5);
    assertEquals(100, x2 - x1, 0.05);
    assertEquals(left.x(), x1, 0.05);
    double ink = 0;
    for (int dot = page.dot(x1) - 20; dot <= page.dot(x1) + 20; dot++) {
      ink += page.darkness(dot, page.dot(left.y()));
    }
    assertTrue(page.mm(ink) <= 0.26, "the line is " + page.mm(ink) + " mm wide");
  }
}
