package org.bearingline.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.bearingline.Seed;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Region;
import org.bearingline.outline.construct.ArcBy;
import org.bearingline.outline.construct.Side;
import org.bearingline.outline.offset.Morphology;
import org.bearingline.outline.offset.Overlay;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Mark;
import org.bearingline.part.Part;
import org.bearingline.problem.Problem;
import org.bearingline.wood.MoistureRange;
import org.bearingline.wood.SpeciesTable;

/** Laws that hold for every panel that is not refused. */
class PanelProperties {

  /** A frame and what its panel is made of. */
  record Case(FrameOpening opening, PanelSettings settings) {
    Optional<Panel> panel() {
      try {
        Optional<Panel> panel = Optional.of(Panel.fit("panel", opening, settings));
        Statistics.collect("fits");
        return panel;
      } catch (Problem refused) {
        Statistics.collect("refused");
        return Optional.empty();
      }
    }
  }

  @Provide
  Arbitrary<Case> cases() {
    Arbitrary<Double> share = Arbitraries.doubles().between(0, 1).ofScale(3);
    Arbitrary<String> wood =
        Arbitraries.of("white oak", "american beech", "black cherry", "teak", "plywood");
    return Combinators.combine(share, share, share, share, wood, share, share, share)
        .as(
            (width, height, top, bottom, name, moisture, depth, swing) -> {
              double w = 150 + 800 * width;
              double h = 150 + 400 * height;
              double driest = 6 + 3 * moisture;
              double dampest = driest + 1 + 4 * swing;
              PanelSettings settings =
                  PanelSettings.usual(
                      Frames.slot(44 + 8 * depth, 22),
                      SpeciesTable.named(name),
                      18,
                      driest + moisture * (dampest - driest),
                      new MoistureRange(driest, dampest),
                      Units.INCH);
              return new Case(
                  FrameOpening.of(w, h, rail(w, top), rail(w, bottom), Units.INCH), settings);
            });
  }

  /** An arch of up to half a half circle, tenons 30 mm; a small share gives a straight rail. */
  private static Optional<Part> rail(double width, double share) {
    double rise = share * width / 4;
    if (rise < 5) {
      return Optional.empty();
    }
    Point a = new Point(30, 0);
    Point b = new Point(30 + width, 0);
    List<Primitive> pieces = new ArrayList<>();
    pieces.add(new Line(new Point(0, 0), a));
    pieces.add(ArcBy.chordAndRise(a, b, rise, Side.LEFT));
    Point end = new Point(60 + width, 0);
    pieces.add(new Line(b, end));
    Point high = new Point(60 + width, rise + 60);
    Point first = new Point(0, rise + 60);
    pieces.add(new Line(end, high));
    pieces.add(new Line(high, first));
    pieces.add(new Line(first, new Point(0, 0)));
    List<EdgeKind> kinds = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      kinds.add(i < 3 ? EdgeKind.ROUTED : EdgeKind.SAWN);
    }
    List<Mark> marks =
        List.of(
            new Mark.ShoulderLine(a, new Point(30, 40), "shoulder"),
            new Mark.ShoulderLine(b, new Point(30 + width, 40), "shoulder"));
    return Optional.of(
        new Part("rail", "", new Contour(new Loop(pieces), kinds), List.of(), marks, List.of()));
  }

  private static Region grooved(Panel panel) {
    List<Primitive> pieces = new ArrayList<>();
    for (BoardSide side :
        List.of(BoardSide.BOTTOM, BoardSide.RIGHT, BoardSide.TOP, BoardSide.LEFT)) {
      pieces.addAll(panel.floors().get(side.ordinal()).primitives());
    }
    return Region.of(Outline.of(new Loop(pieces)));
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE, seed = Seed.FIXED)
  void panelAndItsLeastGapFitTheFloors(@ForAll("cases") Case given) {
    given
        .panel()
        .ifPresent(
            panel -> {
              double gap =
                  panel.seats().stream().mapToDouble(s -> s.assembled().gap()).min().orElseThrow();
              Region grown = Morphology.dilate(Region.of(panel.outline()), gap - 1e-5).region();
              assertTrue(Overlay.difference(grown, grooved(panel)).area() < 1e-3);
              Region more = Morphology.dilate(Region.of(panel.outline()), gap + 0.01).region();
              assertTrue(Overlay.difference(more, grooved(panel)).area() > 1e-3);
            });
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE, seed = Seed.FIXED)
  void itSitsDeeperTheDamperItIs(@ForAll("cases") Case given) {
    given
        .panel()
        .ifPresent(
            panel -> {
              for (PanelSeat seat : panel.seats()) {
                assertTrue(seat.driest().seat() <= seat.assembled().seat() + 1e-9, "" + seat);
                assertTrue(seat.assembled().seat() <= seat.dampest().seat() + 1e-9, "" + seat);
                assertTrue(seat.driest().gap() >= seat.assembled().gap() - 1e-9, "" + seat);
                assertTrue(seat.assembled().gap() >= seat.dampest().gap() - 1e-9, "" + seat);
                assertTrue(seat.dampest().gap() > 0, "" + seat);
                assertTrue(seat.driest().seat() >= given.settings().leastSeat() - 1e-6, "" + seat);
              }
            });
  }

  /** Seat and gap make up the depth between the stiles, whatever the moisture. */
  @Property(tries = 80, edgeCases = EdgeCasesMode.NONE, seed = Seed.FIXED)
  void seatAndGapMakeUpTheDepth(@ForAll("cases") Case given) {
    given
        .panel()
        .ifPresent(
            panel -> {
              double depth = given.settings().slot().depth();
              for (BoardSide side : List.of(BoardSide.LEFT, BoardSide.RIGHT)) {
                PanelSeat seat = panel.seat(side);
                assertEquals(depth, seat.driest().seat() + seat.driest().gap(), 1e-9);
                assertEquals(depth, seat.assembled().seat() + seat.assembled().gap(), 1e-9);
                assertEquals(depth, seat.dampest().seat() + seat.dampest().gap(), 1e-9);
              }
              // The stiles share the whole movement between them.
              double swing =
                  panel.width() * (panel.movement().growth() + panel.movement().shrink());
              PanelSeat left = panel.seat(BoardSide.LEFT);
              PanelSeat right = panel.seat(BoardSide.RIGHT);
              assertEquals(
                  swing,
                  left.dampest().seat()
                      - left.driest().seat()
                      + right.dampest().seat()
                      - right.driest().seat(),
                  1e-9);
            });
  }

  /** As it stands in the frame it is as wide and high as the piece to make, laid down. */
  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE, seed = Seed.FIXED)
  void thePieceToMakeIsThePanel(@ForAll("cases") Case given) {
    given
        .panel()
        .ifPresent(
            panel -> {
              Loop piece = panel.part().contour().loop();
              assertEquals(panel.outline().area(), piece.signedArea(), 1e-6);
              assertEquals(panel.height(), piece.bounds().width(), 1e-9);
              assertEquals(panel.width(), piece.bounds().height(), 1e-9);
            });
  }
}
