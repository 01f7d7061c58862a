package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bearingline.outline.Point;
import org.bearingline.problem.Problem;
import org.bearingline.routing.operation.HingeCups;
import org.bearingline.routing.operation.OperationPlan;
import org.bearingline.routing.operation.PlannedTemplate;
import org.bearingline.routing.operation.Routed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Operations as a maker writes them, and every mistake with its line and column. */
class OperationFileTest {

  private static final String BOARD =
      """
      name: board
      about: A plain board
      measures:
        length: {default: 24in, from: 4in, to: 96in, about: length}
        width: {default: 16in, from: 2in, to: 48in, about: width}
      outline:
        - start: [0, 0]
        - line: {right: length, edge: sawn}
        - line: {up: width, edge: sawn}
        - line: {left: length, edge: sawn}
        - close: sawn
      openings:
        - recess: pocket
          depth: 1/4in
          rectangle: {centre: [length / 2, width / 2], size: [4in, 2in], radius: 1/2in}
      marks:
        - centre_line: {from: [length / 2, 0], to: [length / 2, width], label: centre}
      """;

  /** The operations begin on line 7; two spaces are added to each line. */
  private static final String HEAD =
      """
      job: a board
      stock: {thickness: 3/4in}
      parts:
        - name: board
          shape: board.yaml
          operations:
      """;

  @TempDir Path folder;

  private WorkedPart worked(String job) throws IOException {
    Files.writeString(folder.resolve("board.yaml"), BOARD);
    Path file = Files.writeString(folder.resolve("job.yaml"), job);
    return WorkedPart.of(Source.orders(file.toString(), nothing()).get(0));
  }

  private static Wishes nothing() {
    return Wishes.NONE;
  }

  private OperationPlan plan(String operations) throws IOException {
    return worked(HEAD + operations.indent(6)).plan().orElseThrow();
  }

  private static Routed routed(OperationPlan plan, int index) {
    return (Routed) plan.operations().get(index).operation();
  }

  @Test
  void measuresOfTheShapeAndCentreLinesPlaceAnOperation() throws IOException {
    OperationPlan plan =
        plan(
            """
            - recess: by-measures
              rectangle: {centre: [length / 4, width - 3in], size: [3in, 2in], radius: 1/2in}
              depth: 1/4in
            - recess: from-centre
              origin: centre
              rectangle: {centre: [-6in, 5in], size: [3in, 2in], radius: 1/2in}
              depth: 1/4in
              face: B
            """);
    Point first = routed(plan, 0).edge().contour().loop().bounds().center();
    Point second = routed(plan, 1).edge().contour().loop().bounds().center();
    assertEquals(6 * 25.4, first.x(), 1e-9);
    assertEquals(13 * 25.4, first.y(), 1e-9);
    assertEquals(first.x(), second.x(), 1e-9);
    assertEquals(first.y(), second.y(), 1e-9);
  }

  @Test
  void aCavityBringsItsDepthAndTheKitItsBit() throws IOException {
    OperationPlan plan = plan("- recess: pocket\n");
    assertEquals(6.35, plan.operations().get(0).operation().depth().orElseThrow(), 1e-9);
    assertTrue(plan.operations().get(0).routing().orElseThrow().reach().isComplete());
  }

  @Test
  void sharesFindsTheCollar() throws IOException {
    OperationPlan plan =
        plan(
            """
            - ledge: rim
              cavity: pocket
              bit: 1/2in
            - through: opening
              inside: rim
              width: 1/8in
              bit: 1/2in
              shares: rim
            """);
    // R' = 1/4 + 0 + 1/8 in: a 3/4 in collar.
    assertEquals(19.05, routed(plan, 1).tool().follower().diameter(), 1e-9);
    assertEquals(1, plan.templates().size());
  }

  /**
   * 35 mm cups 5 mm from the edge: common practice; centres 22.5 mm from it, 100 mm from the ends.
   */
  @Test
  void hingeCupsSitWhereTheTradePutsThem() throws IOException {
    OperationPlan plan = plan("- hinge-cups: cups\n  side: left\n");
    HingeCups cups = (HingeCups) plan.operations().get(0).operation();
    assertEquals(
        List.of(new Point(22.5, 100), new Point(22.5, 16 * 25.4 - 100)),
        cups.cups().stream().map(hole -> hole.at()).toList());
    assertEquals(35, cups.cups().get(0).diameter());
    assertEquals(4, cups.screws().size());
    assertEquals(32, cups.screws().get(0).at().x(), 1e-9);
  }

  @Test
  void oneTemplateMakesOutlineGrooveAndPullOfADrawerFront() throws IOException {
    OperationPlan plan =
        worked(
                """
                job: drawer
                stock: {thickness: 3/4in}
                parts:
                  - name: front
                    shape: scooped-drawer-front
                    measures: {height: 6in}
                    register: pins
                    operations:
                      - edge: outline
                        bit: 1/2in
                      - recess: pull
                        rectangle: {centre: [width / 2, 2-3/4in], size: [4in, 1in], radius: 3/8in}
                        depth: 3/8in
                        bit: 1/2in
                        collar: 5/8in
                      - stopped-slot: bottom-groove
                        face: B
                        from: [3/4in, 7/8in]
                        to: [width - 3/4in, 7/8in]
                        width: 1/4in
                        depth: 1/4in
                        bit: 1/4in
                """)
            .plan()
            .orElseThrow();
    assertEquals(1, plan.templates().size());
    PlannedTemplate template = plan.templates().get(0);
    assertEquals(List.of("outside edge", "pull", "bottom-groove"), template.template().serves());
    assertTrue(template.eitherSideUp(), "the front is symmetrical");
    assertEquals("collar", routed(plan, 2).tool().follower().kind(), "a 1/4 in bit has none");
  }

  @Test
  void aPairNeedsAnEvenQuantityAndIsTwoWhenNotSaid() throws IOException {
    String part = "parts:\n  - name: board\n    shape: board.yaml\n    pair: left-right\n";
    assertEquals(2, worked(part).order().quantity());
    Problem odd = assertThrows(Problem.class, () -> worked(part + "    quantity: 3\n"));
    assertTrue(odd.spoken().contains("job.yaml:5:15: left and right pieces come in pairs"));
  }

  @Test
  void withoutOperationsThereIsNoPlan() throws IOException {
    WorkedPart plain = worked("parts:\n  - name: board\n    shape: board.yaml\n");
    assertTrue(plain.plan().isEmpty());
    assertEquals(1, plain.result().templates().size());
  }

  /** Each with line and column, counted in the whole file, and the beginning of its sentence. */
  static Stream<Arguments> mistakes() {
    return Stream.of(
        wrong("- reces: pocket", 7, 9, "“reces” is no operation; did you mean recess?"),
        wrong("- recess: pockt", 7, 9, "the part has no opening “pockt”; did you mean pocket?"),
        wrong(
            "- recess: a\n  cavity: pockte",
            8,
            17,
            "the part has no opening “pockte”; did you mean pocket?"),
        wrong(
            "- recess: pocket\n  dept: 3mm", 8, 9, "“dept” is not known here; did you mean depth?"),
        wrong(
            "- recess: pocket\n  face: C", 8, 15, "“C” is no face; write A for the show face or B"),
        wrong(
            "- recess: pocket\n  depth: 3/4in",
            7,
            9,
            "pocket: a recess 19.05 mm (3/4 in) deep goes through the stock of 19.05 mm (3/4 in)"),
        wrong("- recess: pocket\n  depth: 0in", 8, 16, "“depth” must be more than 0"),
        wrong(
            "- recess: pocket\n  bit: 1/2in\n  collar: 3/8in",
            9,
            17,
            "the 3/8 in (9.525 mm) collar is no wider than its 1/2 in (12.7 mm) bit"),
        wrong(
            "- recess: pocket\n  bit: 1/2in\n  collar: 1in\n  bearing: 1/2in",
            10,
            9,
            "a bit follows a bearing or a collar, not both"),
        wrong("- recess: pocket\n  bit: 3in", 7, 9, "pocket: the bit is wider than this opening"),
        wrong("- recess: pocket\n- recess: pocket", 8, 9, "an operation “pocket” stands above"),
        wrong("- edge: outline", 7, 9, "every outer edge of this part is sawn"),
        wrong(
            "- recess: off\n  circle: {centre: [0in, 5in], diameter: 2in}\n  depth: 1/4in",
            7,
            9,
            "off: the recess runs out over the edge of the part"),
        wrong(
            "- recess: bare\n  circle: {centre: [5, 5], diameter: 2in}\n  depth: 1/4in",
            8,
            27,
            "a length is wanted here"),
        wrong(
            "- stopped-slot: s\n  from: [3in, 3in]\n  to: [9in, 3in]\n  width: 1/4in\n  depth: 1/4in\n  bit: 3/8in",
            7,
            9,
            "s: a 9.525 mm (3/8 in) bit is wider than the slot of 6.35 mm (1/4 in)"),
        wrong(
            "- stopped-slot: s\n  from: [3in, 3in]\n  to: [3in, 3in]\n  width: 1/2in\n  depth: 1/4in",
            7,
            9,
            "s: both ends of this slot are the same point"),
        wrong(
            "- ledge: rim\n  around: pocket\n  width: 10in\n  depth: 1/4in",
            7,
            9,
            "rim: a ledge 254 mm (10 in) wide round pocket runs out of the part; it may be at most about 177.8 mm (7 in) wide"),
        wrong(
            "- through: hole\n  inside: pocket\n  width: 1in",
            7,
            9,
            "hole: a ledge 25.4 mm (1 in) wide leaves no opening inside pocket; it may be at most about"),
        wrong(
            "- hinge-cups: cups\n  side: left\n  depth: 3/4in",
            7,
            9,
            "cups: a cup 19.05 mm (3/4 in) deep goes through the other face of stock 19.05 mm (3/4 in) thick"),
        wrong("- hinge-cups: cups\n  side: middle", 8, 15, "“middle” is no side"),
        wrong(
            "- hinge-leaf: leaf\n  side: left\n  at: 1in\n  length: 3in\n  width: 1in\n  depth: 2mm",
            7,
            9,
            "leaf: the part has no straight edge on its left side from"),
        wrong(
            "- drill: knob\n  at: [40in, 2in]\n  diameter: 1/4in",
            7,
            9,
            "knob: the hole at x 1016 mm (40 in), y 51 mm (2 in) does not lie inside the part"),
        wrong(
            "- inlay: gem\n  bit: 1/4in\n  pocket-collar: 3/4in\n  plug-collar: 1/2in\n  depth: 3mm\n  circle: {centre: [5in, 5in], diameter: 3in}",
            7,
            9,
            "gem-plug: with the 19.05 mm (3/4 in) collar for the pocket and the 12.7 mm (1/2 in) collar for the plug, the plug comes out too small, 3.175 mm (1/8 in) of gap on every side"),
        wrong(
            "- through: o\n  circle: {centre: [5in, 5in], diameter: 3in}\n  bit: 1/2in\n  shares: pocket",
            10,
            17,
            "no operation “pocket” stands above"),
        wrong(
            "- groove: g\n  bit: 2in\n  bearing: 1in\n  width: 1/4in\n  from-face: 1/4in\n  into: 3/8in",
            12,
            15,
            "this cutter goes 1/2 in (12.7 mm) into the edge its bearing rides, not 3/8 in (9.525 mm)"));
  }

  private static Arguments wrong(String operations, int line, int column, String sentence) {
    return Arguments.of(operations, line, column, sentence);
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void everyMistakeHasItsPlace(String operations, int line, int column, String sentence) {
    Problem problem = assertThrows(Problem.class, () -> plan(operations));
    String place = folder.resolve("job.yaml") + ":" + line + ":" + column + ": ";
    assertEquals(
        place + sentence,
        problem
            .spoken()
            .substring(0, Math.min(problem.spoken().length(), (place + sentence).length())));
  }

  @Test
  void wordsOfAPartAreChecked() {
    String part = "parts:\n  - name: board\n    shape: board.yaml\n";
    for (String[] wrong :
        new String[][] {
          {"pair: left", ":4:11: “left” is no pair"},
          {"register: pegs", ":4:15: “pegs” registers nothing; did you mean pins?"},
          {"operations: []", ":4:17: the list of operations is empty"}
        }) {
      Problem problem = assertThrows(Problem.class, () -> worked(part + "    " + wrong[0] + "\n"));
      assertTrue(problem.spoken().contains(wrong[1]), problem::spoken);
    }
  }
}
