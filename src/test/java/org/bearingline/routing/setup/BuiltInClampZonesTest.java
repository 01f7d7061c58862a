package org.bearingline.routing.setup;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.Kit;
import org.bearingline.length.Units;
import org.bearingline.outline.Loop;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Part;
import org.bearingline.routing.CutterRun;
import org.bearingline.routing.Routing;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.Template;
import org.bearingline.shape.ShapeLibrary;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** On every shape that comes with the program no zone lies where the base goes. */
class BuiltInClampZonesTest {

  static Stream<String> shapes() {
    return ShapeLibrary.builtIn().names().stream();
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void zonesKeepOffTheBaseAndOnThePlate(String shape) {
    Part part = ShapeLibrary.builtIn().find(shape).measured(Map.of(), Optional.empty()).part();
    Cutter cutter = new Cutter(6.35);
    RoutingResult routed =
        Routing.workOut(part, RoutingSettings.usual(cutter, Follower.flush(cutter)), Kit.usual());
    List<Path> paths = routed.cutterCentre().stream().map(CutterRun::path).toList();
    for (double base : new double[] {80, 152.4}) {
      ClampSettings settings = ClampSettings.usual().withBase(base);
      for (Template template : routed.templates()) {
        ClampZones zones = ClampZones.of(template.plate(), paths, settings, Units.MM);
        for (ClampZone zone : zones.zones()) {
          for (Loop loop : zone.outline().loops()) {
            loop.primitives().forEach(piece -> check(piece, template, paths, settings));
          }
        }
      }
    }
  }

  private static void check(
      Primitive edge, Template template, List<Path> paths, ClampSettings settings) {
    for (double share : new double[] {0, 0.3, 0.5, 0.8}) {
      Point p = edge.pointAt(share);
      boolean onPlate = template.plate().contains(p) || template.plate().distanceTo(p) < 1e-6;
      assertTrue(onPlate, "on the plate: " + p);
      for (Path path : paths) {
        for (Primitive run : path.primitives()) {
          double clear = run.distanceTo(p) - settings.baseDiameter() / 2;
          assertTrue(clear >= settings.clearance() - 1e-6, "clear of the base: " + p);
        }
      }
    }
  }
}
