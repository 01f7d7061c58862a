package org.bearingline.drawing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.bearingline.Seed;
import org.bearingline.drawing.Drawing;
import org.bearingline.export.pdf.SampleDrawings;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Line;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;

class SheetPlanProperties {

  @Property(tries = 150, seed = Seed.FIXED)
  void everyLineStandsOnAPage(
      @ForAll("drawings") Drawing drawing,
      @ForAll("papers") String paper,
      @ForAll @DoubleRange(min = 5, max = 30) double overlap,
      @ForAll @DoubleRange(min = 94, max = 104) double printed) {
    PaperChoice choice =
        PaperChoice.of(Paper.parse(paper), new PrintCorrection(printed, 100)).withOverlap(overlap);
    SheetPlan plan = SheetPlan.plan(drawing, choice, List.of());
    for (Point p : Samples.of(drawing, plan.placement(), 1.3)) {
      // Half a millimetre inside the cell: there a line is printed in its full width.
      boolean shown =
          plan.sheets().stream().anyMatch(sheet -> sheet.cell().grown(-0.499).contains(p));
      assertTrue(shown, () -> p + " is on no page of " + paper);
    }
  }

  @Property(tries = 60, seed = Seed.FIXED)
  void namesAreOfOneKindAndNeighboursAgree(
      @ForAll("drawings") Drawing drawing, @ForAll("papers") String paper) {
    PaperChoice choice = PaperChoice.of(Paper.parse(paper), PrintCorrection.NONE);
    SheetPlan plan = SheetPlan.plan(drawing, choice, List.of());
    Set<String> names = new HashSet<>();
    int joints = 0;
    for (Sheet sheet : plan.sheets()) {
      assertTrue(names.add(sheet.name()));
      assertEquals(plan.at(sheet.row(), sheet.column() + 1).map(Sheet::name), sheet.right());
      assertEquals(plan.at(sheet.row() + 1, sheet.column()).map(Sheet::name), sheet.below());
      joints += (sheet.right().isPresent() ? 1 : 0) + (sheet.below().isPresent() ? 1 : 0);
    }
    assertEquals(joints, plan.joints().size());
  }

  @Provide
  Arbitrary<String> papers() {
    return Arbitraries.of("A4", "Letter", "Legal", "A3", "A1", "roll:24in", "180mmx300mm");
  }

  @Provide
  Arbitrary<Drawing> drawings() {
    return primitives()
        .list()
        .ofMinSize(1)
        .ofMaxSize(6)
        .map(list -> SampleDrawings.of(new ArrayList<>(list).toArray(Primitive[]::new)));
  }

  private static Arbitrary<Primitive> primitives() {
    Arbitrary<Double> place = Arbitraries.doubles().between(-700, 700).ofScale(1);
    Arbitrary<Double> size = Arbitraries.doubles().between(2, 600).ofScale(1);
    Arbitrary<Double> angle = Arbitraries.doubles().between(-180, 180).ofScale(0);
    Arbitrary<Double> sweep =
        Arbitraries.doubles().between(-360, 360).ofScale(0).filter(s -> Math.abs(s) > 1);
    Arbitrary<Primitive> lines =
        Combinators.combine(place, place, size, angle)
            .as(
                (x, y, length, turn) ->
                    new Line(new Point(x, y), new Point(x, y).plus(Point.polar(length, turn))));
    Arbitrary<Primitive> arcs =
        Combinators.combine(place, place, size, angle, sweep)
            .as((x, y, radius, from, turn) -> Arc.around(new Point(x, y), radius, from, turn));
    return Arbitraries.oneOf(lines, arcs);
  }
}
