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

/** Left and right pieces, and half templates, from the job file to files read back. */
class HandsJobTest {

  private static final Path SHELF = Path.of("output-samples/wall-shelf/job.yaml");

  private static final String JOB =
      """
      job: Trial
      stock: {thickness: 3/4in}
      bit: 1/2in
      parts:
        - name: piece
          shape: SHAPE
          FIELDS
      """;

  @TempDir Path folder;

  private CommandRun layoutOf(Path job) {
    return CommandRun.of("layout", job.toString(), "--into", folder.resolve("out").toString());
  }

  private CommandRun layout(String shape, String fields) throws IOException {
    String job = JOB.replace("SHAPE", shape).replace("FIELDS", fields);
    return layoutOf(Files.writeString(folder.resolve("job.yaml"), job));
  }

  /**
   * Part, drill marks, saw line and path of the bit are mirror images within 1e-6 mm, read by
   * ezdxf: every corner of one has its image among those of the other.
   */
  @Test
  void theOtherHandIsTheMirrorImage() {
    CommandRun run = layoutOf(SHELF);
    assertEquals(0, run.status(), run.err());
    String script =
        """
        import sys, json, math, ezdxf
        out = sys.argv[1]
        report = json.load(open(f'{out}/report.json'))['parts'][0]['otherPiece']
        (px, py), (qx, qy) = report['mirrorLine']
        n = math.hypot(qx-px, qy-py)
        ux, uy = (qx-px)/n, (qy-py)/n
        def mirror(x, y):
            d = (x-px)*ux + (y-py)*uy
            return 2*(px+d*ux) - x, 2*(py+d*uy) - y
        docs = [ezdxf.readfile(f'{out}/{n}.dxf') for n in ('bracket', 'bracket-right')]
        for d in docs: assert not d.audit().errors
        def corners(doc, layer):
            found = []
            for e in doc.modelspace().query(f'LWPOLYLINE[layer=="{layer}"]'):
                pts = list(e.get_points('xyb'))
                for i, (x, y, b) in enumerate(pts):
                    x2, y2, _ = pts[(i+1) % len(pts)]
                    found.append((x, y, x2, y2, abs(b)))
            for e in doc.modelspace().query(f'CIRCLE[layer=="{layer}"]'):
                found.append((e.dxf.center.x, e.dxf.center.y, e.dxf.radius, 0, 0))
            return found
        worst, count = 0, 0
        for layer in ('PART', 'RECESS', 'ROUGH_LINE', 'CUTTER_CENTRE', 'MARKS'):
            left, right = corners(docs[0], layer), corners(docs[1], layer)
            assert len(left) == len(right) > 0, (layer, len(left), len(right))
            for x, y, x2, y2, b in left:
                mx, my = mirror(x, y)
                best = min(min(abs(mx-a)+abs(my-c), abs(mx-a2)+abs(my-c2))
                           for a, c, a2, c2, _ in right)
                worst = max(worst, best)
                count += 1
        assert not docs[1].modelspace().query('*[layer=="TEMPLATE"]')
        assert docs[0].modelspace().query('*[layer=="TEMPLATE"]')
        print(count, worst, report['templateSideUp'])
        """;
    String[] said =
        ExternalProgram.pythonWith("ezdxf")
            .run("-c", script, folder.resolve("out"))
            .strip()
            .split("\\s+");
    assertTrue(Integer.parseInt(said[0]) >= 40, said[0]);
    assertEquals(0, Double.parseDouble(said[1]), 1e-6);
    assertEquals("B", said[2]);
  }

  /**
   * The rule of the hands is not mirrored: on either piece a step to the left of an arrow along the
   * outer edge leads into the wood, one to the right out of it (design: wood on the left of a
   * router in the hands). The right piece is begun with face B up, or all of its curve would tear;
   * in the picture, seen from face A through the wood, left and right change places.
   */
  @ParameterizedTest
  @CsvSource({"bracket,1", "bracket-right,-1"})
  void theFeedOfBothHandsHasTheWoodOnItsLeft(String name, int sense) {
    assertEquals(0, layoutOf(SHELF).status());
    String script =
        """
        import sys, ezdxf, ezdxf.path, math
        m = ezdxf.readfile(sys.argv[1]).modelspace()
        part = [(p.x, p.y) for p in
                ezdxf.path.make_path(m.query('LWPOLYLINE[layer=="PART"]')[0]).flattening(0.001)]
        def inside(x, y):
            odd = False
            for (ax, ay), (bx, by) in zip(part, part[1:] + part[:1]):
                if (ay > y) != (by > y) and x < (bx-ax)*(y-ay)/(by-ay)+ax: odd = not odd
            return odd
        items = list(m.query('*[layer=="FEED"]'))
        arrows = 0
        for shaft, head in zip(items, items[1:]):
            if shaft.dxftype() != 'LINE' or head.dxftype() != 'SOLID': continue
            a, b = shaft.dxf.start, shaft.dxf.end
            x, y, n = (a.x+b.x)/2, (a.y+b.y)/2, math.hypot(b.x-a.x, b.y-a.y)
            sense = int(sys.argv[2])
            lx, ly = -sense*(b.y-a.y)/n, sense*(b.x-a.x)/n
            if inside(x, y): continue          # along the slot there is wood on both sides
            assert inside(x + 9*lx, y + 9*ly), (x, y)
            assert not inside(x - 9*lx, y - 9*ly), (x, y)
            arrows += 1
        print(arrows)
        """;
    String arrows =
        ExternalProgram.pythonWith("ezdxf")
            .run("-c", script, folder.resolve("out/" + name + ".dxf"), sense)
            .strip();
    assertTrue(Integer.parseInt(arrows) >= 2, arrows);
  }

  @Test
  void theCardsSayWhichSideIsUpAndTheSheetsComeOnce() {
    CommandRun run = layoutOf(SHELF);
    assertEquals(0, run.status(), run.err());
    assertTrue(Files.exists(folder.resolve("out/bracket-sheets.pdf")));
    assertFalse(Files.exists(folder.resolve("out/bracket-right-sheets.pdf")));
    assertTrue(words("bracket-card.pdf").contains("lies on face A with its side A up"));
    String right = words("bracket-right-card.pdf");
    assertTrue(right.contains("on face A it lies with its side B up"), right);
    assertTrue(right.startsWith("bracket, right piece"), right);
  }

  private String words(String pdf) {
    return ExternalProgram.named("pdftotext")
        .run(folder.resolve("out").resolve(pdf), "-")
        .replaceAll("\\s+", " ");
  }

  @Test
  void aPieceThatIsItsOwnMirrorImageHasNoOther() throws IOException {
    CommandRun run = layout("cloud-lift-rail", "pair: left-right");
    assertEquals(0, run.status(), run.err());
    assertFalse(Files.exists(folder.resolve("out/piece-right.svg")));
  }

  /**
   * Twice the half plate as far as the centre line is the whole plate, by the shoelace formula over
   * what ezdxf reads; past it the half goes on by the lap.
   */
  @Test
  void halfATemplateTurnedOverMakesTheWhole() throws IOException {
    assertEquals(0, layout("arched-rail", "template: whole").status());
    Files.move(folder.resolve("out"), folder.resolve("whole"));
    assertEquals(0, layout("arched-rail", "template: half").status());
    String script =
        """
        import sys, json, ezdxf, ezdxf.path
        def plate(folder):
            m = ezdxf.readfile(f'{folder}/piece.dxf').modelspace()
            return [(p.x, p.y) for p in ezdxf.path.make_path(
                m.query('LWPOLYLINE[layer=="TEMPLATE"]')[0]).flattening(0.0002)]
        def clipped(pts, x0):                   # what lies at x >= x0
            out = []
            for (ax, ay), (bx, by) in zip(pts, pts[1:] + pts[:1]):
                if ax >= x0: out.append((ax, ay))
                if (ax >= x0) != (bx >= x0):
                    t = (x0 - ax) / (bx - ax)
                    out.append((x0, ay + t * (by - ay)))
            return out
        def area(pts):
            return abs(sum(ax*by - bx*ay for (ax, ay), (bx, by) in zip(pts, pts[1:] + pts[:1]))) / 2
        half, whole = plate(sys.argv[1]), plate(sys.argv[2])
        tell = json.load(open(f'{sys.argv[1]}/report.json'))['parts'][0]['edgeTemplate']
        c, lap = tell['centreLine'][0][0], tell['pastCentre']
        print(2 * area(half) - 2 * area(clipped(half, c)) - area(whole))
        xs = [x for x, y in whole]
        print(max(x for x, y in half) - c - lap, (c - min(xs)) - (max(xs) - c))
        print(area(whole))
        """;
    String[] said =
        ExternalProgram.pythonWith("ezdxf")
            .run("-c", script, folder.resolve("out"), folder.resolve("whole"))
            .strip()
            .split("\\s+");
    assertEquals(0, Double.parseDouble(said[0]), 1e-4 * Double.parseDouble(said[3]));
    assertEquals(0, Double.parseDouble(said[1]), 1e-3);
    assertEquals(0, Double.parseDouble(said[2]), 1e-3);
  }

  @Test
  void theSheetsOfHalfATemplateAreFewer() throws IOException {
    assertEquals(0, layout("cloud-lift-rail", "template: half").status());
    int half = pages();
    assertEquals(0, layout("cloud-lift-rail", "template: whole").status());
    assertTrue(half < pages(), half + " pages");
  }

  private int pages() {
    String info = ExternalProgram.named("pdfinfo").run(folder.resolve("out/piece-sheets.pdf"));
    return Integer.parseInt(info.replaceAll("(?s).*Pages:\\s+(\\d+).*", "$1"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '$',
      value = {
        "bracket-foot | template: half | job.yaml:7:15: this part has no centre line: its halves"
            + " differ by",
        "drop-in-plate | template: half | job.yaml:7:15: ",
        "cloud-lift-rail | template: third | job.yaml:7:15: “third” is no kind of template",
        "cloud-lift-rail | pair: left | job.yaml:7:11: “left” is no pair",
        "cloud-lift-rail | {template: half, operations: [{edge: o, face: B}]} "
            + "| o is worked from face B",
        "cloud-lift-rail | {template: half, operations: [{edge: o}, {drill: d, at: [9in, 2in], "
            + "diameter: 1/4in}]} | the template marks d",
        "cloud-lift-rail | {template: half, operations: [{edge: o}, {recess: r, circle: "
            + "{centre: [15in, 2in], diameter: 1in}, depth: 1/4in}], width: 6in} | makes r",
      })
  void whatCannotBeIsRefusedInOneSentence(String shape, String fields, String says)
      throws IOException {
    String block =
        fields.startsWith("{")
            ? fields
                .substring(1, fields.length() - 1)
                .replace(", operations:", "\n    operations:")
                .replace(", width: 6in", "\n    measures: {width: 6in}")
            : fields;
    CommandRun run = layout(shape, block);
    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains(says), run.err());
    assertEquals(1, run.err().strip().lines().count(), run.err());
    assertFalse(Files.exists(folder.resolve("out/report.json")));
  }

  @Test
  void aPartMayNotBearTheNameOfTheOtherPiece() throws IOException {
    CommandRun run =
        layout(
            "bracket-foot", "pair: left-right\n  - name: piece-right\n    shape: cloud-lift-rail");
    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains("job.yaml:7:11: piece-right names the files"), run.err());
  }
}
