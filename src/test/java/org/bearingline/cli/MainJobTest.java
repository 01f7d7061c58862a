package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bearingline.external.ExternalProgram;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a command to files on the disk, read back by other programs. */
class MainJobTest {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?");

  @TempDir Path folder;

  private Path layout(String... args) {
    Path into = folder.resolve("out" + String.join("", args).hashCode());
    List<String> all = new ArrayList<>(List.of("layout"));
    all.addAll(List.of(args));
    all.addAll(List.of("--into", into.toString()));
    CommandRun run = CommandRun.of(all.toArray(String[]::new));
    assertEquals(0, run.status(), run.err());
    return into;
  }

  private static List<String> names(Path into) throws IOException {
    try (Stream<Path> files = Files.list(into)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theDefaultsWriteEveryFile() throws IOException {
    assertEquals(
        List.of(
            "cloud-lift-rail-card.pdf",
            "cloud-lift-rail-sheets.pdf",
            "cloud-lift-rail.dxf",
            "cloud-lift-rail.png",
            "cloud-lift-rail.svg",
            "report.json"),
        names(layout("cloud-lift-rail", "--bit", "1/2in")));
  }

  /** Arcs of one DXF layer as ezdxf reads them: radius, or for a bulge its circle's radius. */
  private List<Double> radii(Path dxf, String layer) {
    String script =
        """
        import sys, ezdxf
        from ezdxf.math import bulge_radius
        doc = ezdxf.readfile(sys.argv[1])
        assert not doc.audit().errors
        for e in doc.modelspace().query('LWPOLYLINE[layer=="%s"]'):
            p = e.get_points("xyb")
            for i in range(len(p) if e.closed else len(p) - 1):
                if p[i][2]:
                    print(repr(float(bulge_radius(p[i][:2], p[(i + 1) %% len(p)][:2], p[i][2]))))
        """
            .formatted(layer);
    String said = ExternalProgram.pythonWith("ezdxf").run("-c", script, dxf);
    return said.lines().map(Double::valueOf).toList();
  }

  @Test
  void theTemplatesArcsComeBackFromTheDxfAsDesigned() {
    Path into = layout("cloud-lift-rail", "--bit", "1/2in", "--set", "steps=2");
    List<Double> radii = radii(into.resolve("cloud-lift-rail.dxf"), "TEMPLATE");
    // Two lifts a side, two arcs each, all of 5/8 in: a flush template is the part's own line.
    assertEquals(8, radii.size());
    radii.forEach(radius -> assertEquals(15.875, radius, 1e-6));
  }

  @Test
  void aCollarMakesTheOpeningLargerByTheDifferenceOfTheDiameters() throws IOException {
    Path into =
        layout(
            "drop-in-plate",
            "--set=plate_length=100mm",
            "--set=plate_width=60mm",
            "--set=radius=10mm",
            "--set=ledge=0mm",
            "--bit=3/8in",
            "--collar=5/8in");
    Path dxf = into.resolve("drop-in-plate.dxf");
    List<Double> radii = radii(dxf, "TEMPLATE");
    // Collar offset rule, common practice: opening = hole + (OD − d), so R 10 + 6.35 / 2.
    assertEquals(4, radii.size());
    radii.forEach(radius -> assertEquals(13.175, radius, 1e-6));
    String script =
        """
        import sys, ezdxf
        from ezdxf.math import BoundingBox2d
        doc = ezdxf.readfile(sys.argv[1])
        for e in doc.modelspace().query('LWPOLYLINE[layer=="TEMPLATE"]'):
            if any(b for x, y, b in e.get_points("xyb")):
                # The straight sides reach the box of a round-cornered rectangle.
                box = BoundingBox2d((x, y) for x, y, b in e.get_points("xyb"))
                print(box.size.x, box.size.y)
        """;
    String[] size = ExternalProgram.pythonWith("ezdxf").run("-c", script, dxf).strip().split(" ");
    assertEquals(106.35, Double.parseDouble(size[0]), 1e-6);
    assertEquals(66.35, Double.parseDouble(size[1]), 1e-6);
  }

  @Test
  void aBitTooFatForTheLiftIsToldWithFigures() {
    CommandRun run =
        CommandRun.of(
            "reach", "cloud-lift-rail", "--set", "radius=1/2in", "--bit", "1-1/4in", "--json");
    assertEquals(1, run.status(), run.err());
    List<Double> areas = all(run.out(), "\"area\" : ");
    List<Double> depths = all(run.out(), "\"depth\" : ");
    // The first area is the part's own.
    assertEquals(2, depths.size());
    double[] expected = leftover(12.7, 15.875, 19.05, 15.875);
    for (int i = 0; i < 2; i++) {
      assertEquals(expected[0], areas.get(i + 1), 1e-6);
      assertEquals(expected[1], depths.get(i), 1e-6);
    }
  }

  /**
   * Area and depth left in the inside arc of a lift by a disc too fat for it, in closed form. The
   * lift runs from a level line up through an outside arc of radius {@code outer} and the inside
   * arc of radius {@code inside} to a level line {@code rise} higher; the disc of radius {@code r}
   * touches the upper line and the outside arc.
   */
  private static double[] leftover(double inside, double outer, double rise, double r) {
    // Origin at the foot of the outside arc; its centre is (0, outer), the lower line y = 0. The
    // waste lies below the outline, so the disc's centre is r below the upper line.
    double turn = Math.acos((inside + outer - rise) / (inside + outer));
    double topX = (inside + outer) * Math.sin(turn); // where the inside arc meets the upper line
    double arcY = rise - inside; // the inside arc's centre is (topX, arcY)
    double discY = rise - r;
    // The disc touches the outside arc from outside: centres r + outer apart.
    double discX = Math.sqrt((r + outer) * (r + outer) - (outer - discY) * (outer - discY));
    // Walk the boundary: along the line from (topX, rise) to (discX, rise), back along the disc to
    // its touch with the outside arc, up the outside arc to its end, along the inside arc. Green's
    // formula on each: chord term plus segment.
    double touchX = discX * outer / (r + outer);
    double touchY = outer + (discY - outer) * outer / (r + outer);
    double joinX = outer * Math.sin(turn);
    double joinY = outer - outer * Math.cos(turn);
    double[][] corner = {{topX, rise}, {discX, rise}, {touchX, touchY}, {joinX, joinY}};
    double polygon = 0;
    for (int i = 0; i < 4; i++) {
      double[] a = corner[i];
      double[] b = corner[(i + 1) % 4];
      polygon += (a[0] * b[1] - a[1] * b[0]) / 2;
    }
    double discTurn = angle(corner[1], corner[2], discX, discY);
    double outerTurn = angle(corner[2], corner[3], 0, outer);
    double insideTurn = angle(corner[3], corner[0], topX, arcY);
    double area =
        Math.abs(
            polygon
                + segment(r, discTurn)
                + segment(outer, outerTurn)
                + segment(inside, insideTurn));
    // Deepest where the line of the two centres leaves the inside arc.
    double between = Math.hypot(discX - topX, discY - arcY);
    return new double[] {area, between + inside - r};
  }

  private static double angle(double[] from, double[] to, double x, double y) {
    double turn = Math.atan2(to[1] - y, to[0] - x) - Math.atan2(from[1] - y, from[0] - x);
    return Math.IEEEremainder(turn, 2 * Math.PI);
  }

  private static double segment(double radius, double turn) {
    return radius * radius * (turn - Math.sin(turn)) / 2;
  }

  private static List<Double> all(String json, String key) {
    List<Double> found = new ArrayList<>();
    for (int at = json.indexOf(key); at >= 0; at = json.indexOf(key, at + 1)) {
      Matcher number = NUMBER.matcher(json);
      assertTrue(number.find(at + key.length()));
      found.add(Double.valueOf(number.group()));
    }
    return found;
  }

  @Test
  void aThinnerBitReachesAll() {
    CommandRun run =
        CommandRun.of("reach", "cloud-lift-rail", "--set", "radius=1/2in", "--bit", "3/4in");
    assertEquals(0, run.status(), run.out());
  }

  /** A flush bit leaves nothing where its radius is at most the inside radius, here 1/2 in. */
  @Test
  void theBitsThatLeaveNothingAreToldOnceEach() throws IOException {
    Path kit =
        Files.writeString(
            folder.resolve("kit.yaml"),
            "bits: [1/4in, {diameter: 1in, cutting-length: 1in}, 1in, 1-1/8in]\n");
    String json =
        CommandRun.of(
                "reach",
                "cloud-lift-rail",
                "--set",
                "radius=1/2in",
                "--bit",
                "1-1/4in",
                "--json",
                "--kit",
                kit.toString())
            .out();
    String told = json.substring(json.indexOf("bitsThatLeaveNothing"), json.indexOf("roughLine"));
    assertEquals(List.of(6.35, 25.4), all(told, "\"diameter\""));
  }

  @Test
  void withoutABitTheKitIsTriedAndOneThatFitsIsEnough() {
    assertEquals(0, CommandRun.of("reach", "cloud-lift-rail").status());
    // The arch of a panel meets its shoulders in two sharp inside corners.
    assertEquals(1, CommandRun.of("reach", "arched-door-panel").status());
  }

  @Test
  void sameInputSameBytesUnderAnotherLocaleAndTimeZone() throws IOException {
    Path first = layout("drop-in-plate", "--bit", "3/8in", "--units", "mm");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    Path second;
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      second = layout("drop-in-plate", "--bit", "3/8in", "--units=mm");
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertEquals(names(first), names(second));
    for (String name : names(first)) {
      assertArrayEquals(
          Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
    }
  }

  @Test
  void theDemoJobWritesEveryPart() throws IOException {
    Path into = layout("output-samples/hall-console/job.yaml");
    for (String part : List.of("front-rail", "back-apron", "side-apron", "leg", "drawer-front")) {
      assertTrue(names(into).contains(part + "-card.pdf"), part);
    }
  }

  @Test
  void sheetsWritesTheSheetsAlone() throws IOException {
    Path into = folder.resolve("sheets");
    CommandRun run =
        CommandRun.of("sheets", "cloud-lift-rail", "--paper", "A3", "--into", into.toString());
    assertEquals(0, run.status(), run.err());
    assertEquals(List.of("cloud-lift-rail-sheets.pdf"), names(into));
  }

  @Test
  void aPartThatIsOnlySawnHasACardWithoutBitAndFeed() {
    Path card = layout("straight-rail").resolve("straight-rail-card.pdf");
    String words = ExternalProgram.named("pdftotext").run("-layout", card, "-");
    assertTrue(words.contains("No edge of this part follows"), words);
    assertFalse(words.contains("Feed and grain"), words);
    assertFalse(words.contains("flush bearing"), words);
  }
}
