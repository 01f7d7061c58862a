package org.bearingline.routing.family;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;
import org.bearingline.part.Part;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FamiliesTest {

  private static List<Family> families(RoutingResult... parts) {
    return Families.of(List.of(parts), Units.MM);
  }

  /**
   * Walks every routed edge of the family: laid as told, each of its points must lie on the
   * template's edge, by the template's offset, in a position whose stop lines let it be reached.
   */
  private static void everyRoutedPointIsReached(Family family, RoutingResult... parts) {
    for (RoutingResult part : parts) {
      FamilyMember member =
          family.members().stream()
              .filter(m -> m.part().equals(part.part().name()))
              .findFirst()
              .orElseThrow();
      Contour contour = part.part().contour();
      for (int i = 0; i < contour.kinds().size(); i++) {
        if (contour.kinds().get(i) == EdgeKind.ROUTED) {
          Primitive piece = contour.loop().primitives().get(i);
          for (int j = 0; j <= 40; j++) {
            Point p = piece.pointAt(j / 40.0);
            assertTrue(isReached(family, member, p), member.part() + " at " + p);
          }
        }
      }
    }
  }

  private static boolean isReached(Family family, FamilyMember member, Point p) {
    for (Setting setting : member.settings()) {
      Point laid = setting.intoTemplate().apply(p);
      double off = family.plate().outer().distanceTo(laid);
      if (Math.abs(off - Math.abs(family.templateOffset())) <= Families.TOLERANCE
          && isThisSideOfTheStops(family, member, setting, laid)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isThisSideOfTheStops(
      Family family, FamilyMember member, Setting setting, Point laid) {
    String name = member.part() + " " + setting.number() + ":";
    double end = Double.NaN;
    double stop = Double.NaN;
    for (Registration line : family.registration()) {
      if (line.label().startsWith(name)) {
        end = line.kind() == Registration.Kind.END ? line.from().x() : end;
        stop = line.kind() == Registration.Kind.STOP ? line.from().x() : stop;
      }
    }
    return Double.isNaN(stop)
        || laid.x() >= Math.min(end, stop) - 1e-6 && laid.x() <= Math.max(end, stop) + 1e-6;
  }

  @ParameterizedTest
  @ValueSource(doubles = {12.7, 9.525, 19.05})
  void threeRailsOfOneLiftShareTheLongestOnesTemplate(double bearing) {
    RoutingResult shorter = Rails.routed(Rails.lift("short", 280, 150, 50), bearing);
    RoutingResult longest = Rails.routed(Rails.lift("long", 978, 70, 100), bearing);
    RoutingResult middle = Rails.routed(Rails.lift("middle", 500, 80, 170), bearing);
    List<Family> found = families(shorter, longest, middle);
    assertEquals(1, found.size());
    Family family = found.get(0);
    assertEquals("long", family.host());
    assertEquals(
        List.of("long", "short", "middle"),
        family.members().stream().map(FamilyMember::part).toList());
    everyRoutedPointIsReached(family, shorter, longest, middle);
    // The straights in the middle are 280 − 100 − 2 run and 978 − 200 − 2 run long.
    assertEquals(
        (978 - 200) - (280 - 100), family.members().get(1).settings().get(1).slide(), 1e-6);
  }

  @Test
  void thePlateHasRunOutAndBackForEveryPart() {
    RoutingResult wide = Rails.routed(Rails.lift("wide", 500, 150, 170));
    RoutingResult host = Rails.routed(Rails.lift("host", 978, 70, 100));
    Family family = families(wide, host).get(0);
    Bounds plate = family.plate().bounds();
    double runOut = host.settings().runOut();
    // The wide part's end lies 70 mm before the host's, at each side.
    assertEquals(-70 - runOut, plate.minX(), 1e-6);
    assertEquals(978 + 70 + runOut, plate.maxX(), 1e-6);
    assertEquals(150 + host.settings().margin(), plate.maxY(), 1e-6);
    everyRoutedPointIsReached(family, wide, host);
  }

  @Test
  void endsAloneThatDifferNeedOneSetting() {
    RoutingResult a = Rails.routed(Rails.lift("a", 600, 80, 100));
    RoutingResult b = Rails.routed(Rails.lift("b", 560, 80, 80));
    Family family = families(a, b).get(0);
    assertEquals(1, family.members().get(1).settings().size());
    List<Double> ends =
        family.registration().stream()
            .filter(r -> r.part().equals("b") && r.kind() == Registration.Kind.END)
            .map(r -> r.from().x())
            .toList();
    assertEquals(20, ends.get(0), 1e-6);
    assertEquals(580, ends.get(1), 1e-6);
    everyRoutedPointIsReached(family, a, b);
  }

  @ParameterizedTest
  @CsvSource({"TURNED_END_FOR_END", "TURNED_HALF_ROUND", "TURNED_EDGE_FOR_EDGE"})
  void aPartTheOtherWayRoundIsLaidTheOtherWayRound(Setting.Lay lay) {
    Part foot = Rails.part("foot", "bracket-foot");
    RoutingResult right = Rails.routed(foot);
    Part other = Rails.moved(foot, lay.turn().then(Similarity.translation(31, -17))).named("left");
    RoutingResult left = Rails.routed(other);
    List<Family> found = families(right, left);
    assertEquals(1, found.size());
    FamilyMember member = found.get(0).members().get(1);
    assertEquals(lay, member.settings().get(0).lay());
    everyRoutedPointIsReached(found.get(0), right, left);
    assertTrue(found.get(0).sentences().stream().anyMatch(s -> s.contains(lay.words())));
  }

  @Test
  void anotherRadiusIsAnotherCurve() {
    RoutingResult a = Rails.routed(Rails.lift("a", 600, 80, 100));
    String[] measures = {
      "length",
      "600mm",
      "width",
      "80mm",
      "end",
      "100mm",
      "rise",
      "16mm",
      "radius",
      "16.2mm",
      "outer_radius",
      "16mm"
    };
    RoutingResult b = Rails.routed(Rails.part("b", "cloud-lift-rail", measures));
    assertTrue(families(a, b).isEmpty());
    measures[9] = "16.001mm";
    RoutingResult c = Rails.routed(Rails.part("c", "cloud-lift-rail", measures));
    assertEquals(1, families(a, c).size());
  }

  @Test
  void archesOfOtherSpansAreNoFamilyAndPartsWithoutACurveNeither() {
    RoutingResult a = Rails.routed(Rails.part("a", "arched-rail", "length", "600mm"));
    RoutingResult b = Rails.routed(Rails.part("b", "arched-rail", "length", "700mm"));
    RoutingResult plate = Rails.routed(Rails.part("p", "drop-in-plate"));
    assertTrue(families(a, b, plate, plate).isEmpty());
  }

  @Test
  void twoFamiliesInOneJobAreKeptApart() {
    List<RoutingResult> parts = new ArrayList<>();
    parts.add(Rails.routed(Rails.lift("a", 600, 80, 100)));
    parts.add(Rails.routed(Rails.part("x", "bracket-foot")));
    parts.add(Rails.routed(Rails.lift("b", 500, 80, 100)));
    parts.add(Rails.routed(Rails.part("y", "bracket-foot")));
    List<Family> found = Families.of(parts, Units.INCH);
    assertEquals(List.of("a", "x"), found.stream().map(Family::host).toList());
  }

  /** R − r decides: 3/4 in on 1/2 in lies 3.175 mm inside the line, 1/2 in on 1/2 in on it. */
  @Test
  void anotherDistanceOfTheEdgeKeepsPartsApartAndTellsTheFollowerThatWouldNot() {
    RoutingResult a = Rails.routed(Rails.lift("a", 600, 80, 100), 19.05);
    RoutingResult b = Rails.routed(Rails.lift("b", 500, 80, 100), 12.7);
    RoutingResult c = Rails.routed(Rails.lift("c", 400, 80, 100), 12.7);
    assertEquals(
        List.of("b", "c"),
        families(a, b, c).get(0).members().stream().map(FamilyMember::part).toList());
    List<String> apart = Families.apart(List.of(a, b, c), Units.MM);
    assertEquals(1, apart.size(), "c is with b");
    assertTrue(apart.get(0).startsWith("b has the curve of a"), apart.get(0));
    assertTrue(
        apart.get(0).contains("19.05 mm bearing wants the edge 3.175 mm inside the line"),
        apart.get(0));
    // r − R of a with the radius of b's own bit: a follower of 19.05 mm.
    assertTrue(apart.get(0).contains("With a follower of 19.05 mm for b"), apart.get(0));
    assertTrue(Families.apart(List.of(b, c), Units.MM).isEmpty());
  }

  /** Two flush bits of other sizes want the same edge. */
  @Test
  void partsOfOneFamilyKeepTheirOwnBits() {
    RoutingResult a = Rails.routed(Rails.lift("a", 600, 80, 100));
    RoutingResult b =
        Routing.workOut(
            Rails.lift("b", 500, 80, 100),
            RoutingSettings.usual(new Cutter(19.05), new Follower.Bearing(19.05)),
            Kit.usual());
    Family family = families(a, b).get(0);
    everyRoutedPointIsReached(family, a, b);
    // Four arcs of 16 mm: the lift turns by acos(1 − 16 / 32) each way.
    assertEquals(4 * 16 * Math.acos(0.5), family.sharedLength(), 1e-6);
  }
}
