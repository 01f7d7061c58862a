package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Point;
import org.bearingline.routing.FeedArrow;
import org.bearingline.routing.grain.FeedPlan;
import org.bearingline.routing.grain.GrainClass;
import org.bearingline.routing.grain.GrainStretch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Feed at the router table against the turn of the bit, which is worked out by itself: a bit turns
 * clockwise as seen from its router, so one that comes from below turns counter-clockwise as seen
 * from above. Where the teeth at the edge run with the bit's way past the work, they run against
 * the work's own motion, and that is the safe feed.
 */
class RouterTableTest {

  private static final String DISC =
      """
        - start: [100mm, 0mm]
        - arc: {to: [-100mm, 0mm], through: [0mm, 100mm]}
        - arc: {to: [100mm, 0mm], through: [0mm, -100mm]}
      """;

  @TempDir Path folder;

  private JobBench bench() throws IOException {
    return new JobBench(folder).withShape("disc", DISC);
  }

  private static String job(String router, String more) {
    return "stock: {thickness: 3/4in}\n"
        + (router.isEmpty() ? "" : "router: " + router + "\n")
        + "parts:\n  - name: disc\n    shape: disc.yaml\n    bit: 1/2in\n"
        + more;
  }

  /** Teeth's velocity at the contact times the bit's way, the bit turning at 1 rad/s. */
  private static double teethAlongTheWay(FeedArrow arrow, Point toWood, boolean fromBelow) {
    Point counterClockwise = new Point(-toWood.y(), toWood.x());
    Point teeth = fromBelow ? counterClockwise : counterClockwise.times(-1);
    return teeth.dot(Point.polar(1, arrow.degrees()));
  }

  private static void everyArrowGoesAgainst(List<FeedArrow> arrows, boolean fromBelow, int inward) {
    assertFalse(arrows.isEmpty());
    for (FeedArrow arrow : arrows) {
      // Round the origin: the wood lies inward of an outside edge, outward of an opening.
      Point toWood = arrow.at().unit().times(-inward);
      assertEquals(1, teethAlongTheWay(arrow, toWood, fromBelow), 0.05, arrow.toString());
    }
  }

  @Test
  void roundADiscAgainstTheTurnOfTheBit() throws IOException {
    everyArrowGoesAgainst(bench().worked(job("", "")).result().feed(), false, 1);
    everyArrowGoesAgainst(bench().worked(job("hand", "")).result().feed(), false, 1);
    everyArrowGoesAgainst(bench().worked(job("table", "")).result().feed(), true, 1);
  }

  /** Bits over 1 in belong in a table only: "12 tips for router table safety", Fine Woodworking. */
  @Test
  void aLargeBitGoesToTheTableUnasked() throws IOException {
    String large = job("", "").replace("bit: 1/2in", "bit: 1-1/4in");
    WorkedPart unasked = bench().worked(large);
    everyArrowGoesAgainst(unasked.result().feed(), true, 1);
    assertEquals(
        "1-1/4 in bit on a flush bearing at the router table",
        Words.tool(unasked.result().settings(), Units.INCH));
    assertTrue(
        unasked.result().cautions().stream().noneMatch(s -> s.startsWith("Router in the hand")));
    everyArrowGoesAgainst(
        bench().worked(job("", "").replace("bit: 1/2in", "bit: 1in")).result().feed(), false, 1);
    assertTrue(unasked.result().cautions().stream().anyMatch(s -> s.contains("router table only")));
    // Whoever insists on the hand is warned too.
    WorkedPart inHand = bench().worked(job("hand", "").replace("bit: 1/2in", "bit: 1-1/4in"));
    everyArrowGoesAgainst(inHand.result().feed(), false, 1);
    assertTrue(inHand.result().cautions().stream().anyMatch(s -> s.contains("router table only")));
    // A collar is fixed to the base of a router in the hand.
    everyArrowGoesAgainst(
        bench().worked(large + "    collar: 1-1/2in\n").result().feed(), false, 1);
  }

  @Test
  void anOperationsOwnWordGoesFirst() throws IOException {
    String through =
        "    operations:\n      - through: hole\n        circle: {centre: [0mm, 0mm], diameter: 80mm}\n";
    List<FeedArrow> table = feed(bench().worked(job("table", through)));
    everyArrowGoesAgainst(table, true, -1);
    List<FeedArrow> hand = feed(bench().worked(job("table", through + "        router: hand\n")));
    everyArrowGoesAgainst(hand, false, -1);
  }

  /** A blind cut needs its own face down: seen from that face the bit turns clockwise again. */
  @Test
  void aRecessIsCutWithItsFaceDown() throws IOException {
    String recess =
        "    operations:\n      - recess: dish\n"
            + "        circle: {centre: [0mm, 0mm], diameter: 80mm}\n        depth: 6mm\n";
    WorkedPart worked = bench().worked(job("table", recess));
    everyArrowGoesAgainst(feed(worked), false, -1);
    assertEquals("B", WorkReports.of(worked).operations().get(0).faceUp());
    WorkedPart back = bench().worked(job("table", recess + "        face: B\n"));
    // Seen from face A, a bit that works on face B comes from below.
    everyArrowGoesAgainst(feed(back), true, -1);
    assertTrue(
        worked.result().cautions().stream().anyMatch(s -> s.startsWith("A recess at the table")));
  }

  private static List<FeedArrow> feed(WorkedPart worked) {
    return Plate.of(worked).get(0).result().feed();
  }

  /** In the hand the upper right and lower left quadrants tear; at the table the other two. */
  @Test
  void theGoodQuadrantsOfADiscChangePlaces() throws IOException {
    assertEquals(List.of(-1, -1), cleanQuadrants("hand"));
    assertEquals(List.of(1, 1), cleanQuadrants("table"));
  }

  private List<Integer> cleanQuadrants(String router) throws IOException {
    FeedPlan plan = bench().worked(job(router, "")).grain().orElseThrow().plan().orElseThrow();
    return plan.first().stretches().stream()
        .filter(stretch -> stretch.grain() == GrainClass.CLEAN)
        .map(RouterTableTest::middle)
        .map(at -> (int) Math.signum(at.x() * at.y()))
        .toList();
  }

  private static Point middle(GrainStretch stretch) {
    double half = stretch.length() / 2;
    for (var piece : stretch.path().primitives()) {
      if (half <= piece.length()) {
        return piece.pointAt(half / piece.length());
      }
      half -= piece.length();
    }
    throw new AssertionError("a stretch has a middle");
  }

  /** A leg wide at the left, its tapered edge on top: by hand the bit would climb from narrow. */
  @Test
  void aTaperIsGoodFromTheWideEndAtTheTable() throws IOException {
    String leg =
        """
          - start: [0mm, -40mm]
          - line: {right: 400mm, edge: sawn}
          - line: {up: 20mm, edge: sawn}
          - line: {to: [0mm, 40mm]}
          - close: sawn
        """;
    JobBench bench = new JobBench(folder).withShape("disc", leg);
    FeedPlan hand = bench.worked(job("", "")).grain().orElseThrow().plan().orElseThrow();
    FeedPlan table = bench.worked(job("table", "")).grain().orElseThrow().plan().orElseThrow();
    assertTrue(hand.sentences().stream().anyMatch(s -> s.startsWith("Begin with face B up")));
    assertTrue(table.sentences().stream().noneMatch(s -> s.startsWith("Begin with")));
    GrainStretch taper = table.first().stretches().get(0);
    assertEquals(GrainClass.CLEAN, taper.grain());
    assertEquals(new Point(0, 40), taper.path().start(), "from the wide end");
  }

  @Test
  void wordsFollow() throws IOException {
    WorkedPart table = bench().worked(job("table", ""));
    List<String> cautions = table.result().cautions();
    assertTrue(cautions.stream().anyMatch(s -> s.contains("push the work from right to left")));
    assertTrue(cautions.stream().anyMatch(s -> s.contains("starting pin")));
    assertTrue(cautions.stream().noneMatch(s -> s.startsWith("Router in the hand")));
    var feed = Reports.part(table.result(), 1, List.of()).feed().orElseThrow();
    assertEquals("table", feed.router());
    assertEquals("clockwise round the outside edge", feed.direction());
    var inHand = Reports.part(bench().worked(job("", "")).result(), 1, List.of());
    assertEquals("hand", inHand.feed().orElseThrow().router());
    assertEquals(
        "counter-clockwise round the outside edge", inHand.feed().orElseThrow().direction());
  }

  @Test
  void anotherPlaceIsRefusedWhereItIsWritten() throws IOException {
    String refused = bench().refusal(job("tabel", ""));
    assertTrue(refused.contains("job.yaml:2:"), refused);
    assertTrue(refused.contains("did you mean table"), refused);
  }
}
