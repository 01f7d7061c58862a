package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bearingline.external.ExternalProgram;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parts of a job that share a curve, from the job file to files read back. */
class FamilyJobTest {

  private static final String LIFT = "rise: 5/8in, radius: 5/8in, outer_radius: 5/8in, width: 3in";

  private static final String JOB =
      """
      job: Trial
      families: yes
      stock: {thickness: 3/4in, species: white oak}
      bit: 1/2in
      parts:
        - name: long-rail
          shape: cloud-lift-rail
          measures: {length: 40in, end: 5in, LIFT}
        - name: short-rail
          shape: cloud-lift-rail
          quantity: 2
          measures: {length: 18in, end: 3in, LIFT}
      """
          .replace("LIFT", LIFT);

  /** The lines of a layer as ezdxf reads them, and the report. */
  private static final String READ =
      """
      import sys, json, ezdxf, ezdxf.path, math
      out = sys.argv[1]
      def lines(name, layer):
          doc = ezdxf.readfile(f'{out}/{name}.dxf')
          assert not doc.audit().errors
          return [[(p.x, p.y) for p in ezdxf.path.make_path(e).flattening(0.0005)]
                  for e in doc.modelspace().query(f'*[layer=="{layer}"]')]
      report = json.load(open(f'{out}/report.json'))
      """;

  /** How far a point lies from the edge of the plate. */
  private static final String OFF =
      """
      edges = list(zip(plate, plate[1:]))
      def off(p):
          best = 1e9
          for (ax, ay), (bx, by) in edges:
              dx, dy = bx - ax, by - ay
              n = dx * dx + dy * dy
              t = 0 if n == 0 else max(0, min(1, ((p[0]-ax)*dx + (p[1]-ay)*dy) / n))
              best = min(best, math.hypot(p[0]-ax-t*dx, p[1]-ay-t*dy))
          return best
      """;

  @TempDir Path folder;

  private CommandRun layout(String job) throws IOException {
    Path file = Files.writeString(folder.resolve("job.yaml"), job);
    return CommandRun.of("layout", file.toString(), "--into", folder.resolve("out").toString());
  }

  private boolean isThere(String name) {
    return Files.exists(folder.resolve("out").resolve(name));
  }

  /**
   * Every point of a short rail's lower edge, laid as report.json says, lies on the plate's edge as
   * ezdxf reads it, in one of its two settings.
   */
  @Test
  void theSharedPlateMakesTheShortRailInItsSettings() throws IOException {
    CommandRun run = layout(JOB);
    assertEquals(0, run.status(), run.err());
    String script =
        READ
            + """
        family = report['families'][0]
        assert family['made'] and family['host'] == 'long-rail'
        plate = lines('family-1', 'TEMPLATE')[0]
        """
            + OFF
            + """
        part = lines('short-rail', 'PART')[0]
        points = [p for a, b in zip(part, part[1:]) for p in
                  [(a[0]+(b[0]-a[0])*i/20, a[1]+(b[1]-a[1])*i/20) for i in range(21)]]
        low = [p for p in points if p[1] < 0.7 * 25.4 and 0.001 < p[0] < 18*25.4-0.001]
        settings = next(m for m in family['members'] if m['part'] == 'short-rail')['settings']
        assert len(settings) == 2
        worst = 0
        for p in low:
            best = 1e9
            for s in settings:
                (ox, oy), (ux, uy) = s['origin'], s['along']
                best = min(best, off((ox + ux*p[0] - uy*p[1], oy + uy*p[0] + ux*p[1])))
            worst = max(worst, best)
        print(len(low), worst, settings[1]['origin'][0] - settings[0]['origin'][0])
        print(max(x for x, y in plate) - min(x for x, y in plate))
        """;
    String[] said =
        ExternalProgram.pythonWith("ezdxf")
            .run("-c", script, folder.resolve("out"))
            .strip()
            .split("\\s+");
    assertTrue(Integer.parseInt(said[0]) > 100);
    // Families.TOLERANCE and the flattening of 0.0005 mm.
    assertEquals(0, Double.parseDouble(said[1]), 0.026);
    // The straights between the lifts: 40 − 10 − 2 run and 18 − 6 − 2 run, so 18 in apart.
    assertEquals(18 * 25.4, Double.parseDouble(said[2]), 1e-6);
    // The long rail, and past each sawn end 1-1/2 in, between the usual 1 and 2 in.
    assertEquals((40 + 2 * 1.5) * 25.4, Double.parseDouble(said[3]), 0.001);
  }

  @Test
  void thePlateStandsForTheMembersOwnInFilesAndCutList() throws IOException {
    CommandRun run = layout(JOB);
    assertTrue(run.out().contains("its edge comes from family-1"), run.out());
    for (String name :
        new String[] {
          "family-1.svg", "family-1.dxf", "family-1.png", "family-1-sheets.pdf", "family-1-card.pdf"
        }) {
      assertTrue(isThere(name), name);
    }
    assertFalse(isThere("short-rail-sheets.pdf"));
    assertFalse(isThere("long-rail-sheets.pdf"));
    assertFalse(Files.readString(folder.resolve("out/short-rail.dxf")).contains("\nTEMPLATE\n"));
    String words =
        ExternalProgram.named("pdftotext").run("-layout", folder.resolve("out/job-card.pdf"), "-");
    assertTrue(words.contains("family-1"), words);
    assertFalse(words.contains("rail, template"), words);
    String card =
        ExternalProgram.named("pdftotext").run(folder.resolve("out/short-rail-card.pdf"), "-");
    String flat = card.replaceAll("\\s+", " ");
    assertTrue(flat.contains("The edge comes from family-1"), flat);
    assertTrue(flat.contains("slide it 18 in to the right"), flat);
  }

  @Test
  void withoutTheWordItIsOffered() throws IOException {
    CommandRun run = layout(JOB.replace("families: yes\n", ""));
    assertTrue(run.out().contains("write “families: yes”"), run.out());
    assertFalse(isThere("family-1.svg"));
    assertTrue(isThere("short-rail-sheets.pdf"));
    assertTrue(Files.readString(folder.resolve("out/report.json")).contains("\"made\" : false"));
  }

  /** R − r decides, by the design's T = P ⊖ D(R − r). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '$',
      value = {
        "bearing: 3/4in | wants the edge 1/8 in inside the line",
        "template: half | half a template was asked for",
        "pair: left-right | nothing",
        "operations: [{edge: o}, {drill: d, at: [9in, 2in], diameter: 1/4in}] "
            + "| it makes the marks for d too",
        "operations: [{edge: o, face: B}] | its edge is worked from face B",
      })
  void whatKeepsItsOwnTemplateSaysWhy(String field, String says) throws IOException {
    CommandRun run =
        layout(JOB.replace("    quantity: 2\n", "    quantity: 2\n    " + field + "\n"));
    if (says.equals("nothing")) {
      // A rail is its own mirror image: its pieces are alike and share.
      assertEquals(0, run.status(), run.err());
      assertTrue(run.out().contains("makes them all"), run.out());
      return;
    }
    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains("job.yaml:2:11: there is no template to share: "), run.err());
    assertTrue(run.err().contains(says), run.err());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    assertFalse(isThere("report.json"));
    CommandRun offered =
        layout(
            JOB.replace("families: yes\n", "")
                .replace("    quantity: 2\n", "    quantity: 2\n    " + field + "\n"));
    assertEquals(0, offered.status(), offered.err());
    assertTrue(offered.out().contains(says), offered.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '$',
      value = {
        "families: yes | families: perhaps | job.yaml:2:11: “perhaps” is no answer here",
        "name: short-rail | name: family-1 | job.yaml:9:11: family-1 names the files of a shared",
        "radius: 5/8in, outer_radius: 5/8in, width: 3in}\\n  - name: short "
            + "| radius: 3/4in, outer_radius: 3/4in, width: 3in}\\n  - name: short "
            + "| job.yaml:2:11: no two parts of this job have the same curves",
      })
  void aMistakeIsToldAtItsPlace(String from, String to, String says) throws IOException {
    String a = from.replace("\\n", "\n");
    assertTrue(JOB.contains(a), a);
    CommandRun run = layout(JOB.replace(a, to.replace("\\n", "\n")));
    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains(says), run.err());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    assertFalse(isThere("report.json"));
  }

  /**
   * Every point of both rails' lower edges between the stops of a place, laid as report.json says,
   * lies on the short plate's edge as ezdxf reads it.
   */
  @Test
  void aShortTemplateMakesTheLiftAtEveryPlace() throws IOException {
    CommandRun run = layout(JOB.replace("families: yes", "families: short"));
    assertEquals(0, run.status(), run.err());
    String script =
        READ
            + """
        curve, = report['sharedCurves']
        plate = lines('curve-1', 'TEMPLATE')[0]
        """
            + OFF
            + """
        begins, = [l['from'][0] for l in curve['lines'] if l['label'] == 'curve begins']
        ends, = [l['from'][0] for l in curve['lines'] if l['label'] == 'curve ends']
        count, worst = 0, 0
        for place in curve['places']:
            part = lines(place['part'], 'PART')[0]
            width = max(x for x, y in part)
            back = max(y for x, y in part)
            laid = part if place['lay'] == 'as drawn' else [(width - x, y) for x, y in part]
            start = place['fromEnd']
            # The curve begins fromEnd from the left end and fromBack below the back.
            top = [l for l in curve['lines'] if l['label'] == 'curve begins'][0]
            y0 = min(top['from'][1], top['to'][1])
            for x, y in laid:
                if start - 0.001 <= x <= start + ends - begins + 0.001 and y < back / 2:
                    worst = max(worst, off((x - start + begins, y - (back - place['fromBack']) + y0)))
                    count += 1
        print(len(curve['places']), count, worst)
        """;
    String[] said =
        ExternalProgram.pythonWith("ezdxf")
            .run("-c", script, folder.resolve("out"))
            .strip()
            .split("\\s+");
    assertEquals("4", said[0]);
    assertTrue(Integer.parseInt(said[1]) > 40, said[1]);
    // Families.TOLERANCE and the flattening of 0.0005 mm.
    assertEquals(0, Double.parseDouble(said[2]), 0.026);
    assertTrue(run.out().contains("come from curve-1"), run.out());
    assertTrue(isThere("curve-1-sheets.pdf") && isThere("curve-1-card.pdf"));
    assertFalse(isThere("short-rail-sheets.pdf"));
    String words =
        ExternalProgram.named("pdftotext").run("-layout", folder.resolve("out/job-card.pdf"), "-");
    assertTrue(words.contains("curve-1") && !words.contains("rail, template"), words);
  }

  /**
   * 1080 mm and 80 of margins by 76.2 and its margins, in place of two: by the report's own boxes.
   */
  @Test
  void whatASharedTemplateSavesIsTold() throws IOException {
    CommandRun run = layout(JOB);
    assertTrue(
        run.out().matches("(?s).*makes them all in place of 2 plates, and saves [0-9.]+ square.*"),
        run.out());
    // A deep short rail makes the long plate deeper for all its length.
    CommandRun deep =
        layout(
            JOB.replace(
                "measures: {length: 18in, end: 3in, " + LIFT + "}",
                "measures: {length: 18in, end: 3in, "
                    + LIFT.replace("width: 3in", "width: 12in")
                    + "}"));
    assertTrue(deep.out().contains("though it takes"), deep.out());
  }
}
