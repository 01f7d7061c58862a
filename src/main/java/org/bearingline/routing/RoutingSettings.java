package org.bearingline.routing;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SawBlade;
import org.bearingline.length.Length;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * What the maker chooses for one part; lengths in mm.
 *
 * @param cutter the bit's cutting cylinder
 * @param follower what rides the template
 * @param allowance wood left outside the line for the bit to take, 0 or more; the rough line
 *     refuses 0
 * @param blade the saw for the rough line; empty where the blade's turn does not matter
 * @param runOut how far the template goes on past the ends of the work, 0 or more
 * @param margin how far the template reaches behind sawn edges, 0 or more
 * @param minimumWidth narrowest bridge of template material that is still stiff
 * @param thickness of the stock, for the passes; empty where not known
 * @param units that sentences for the maker speak in
 * @param station where the router is
 */
public record RoutingSettings(
    Cutter cutter,
    Follower follower,
    double allowance,
    Optional<SawBlade> blade,
    double runOut,
    double margin,
    double minimumWidth,
    OptionalDouble thickness,
    Units units,
    Station station) {

  public RoutingSettings {
    Objects.requireNonNull(cutter);
    Objects.requireNonNull(follower);
    Objects.requireNonNull(blade);
    Objects.requireNonNull(thickness);
    Objects.requireNonNull(units);
    Objects.requireNonNull(station);
    check("allowance", allowance);
    check("run-out", runOut);
    check("margin", margin);
    check("minimum width", minimumWidth);
    check("thickness", thickness.orElse(0));
  }

  private static void check(String name, double mm) {
    if (!(mm >= 0 && mm <= Length.LARGEST)) {
      throw new Problem(
          Place.field(name), "a length from 0 to " + Length.LARGEST / 1000 + " m is wanted");
    }
  }

  /** The usual choices for a bit and what it follows, from the table of practice. */
  public static RoutingSettings usual(Cutter cutter, Follower follower) {
    Practice practice = Practice.shipped();
    return new RoutingSettings(
        cutter,
        follower,
        practice.mm("allowance"),
        Optional.empty(),
        practice.mm("run-out"),
        practice.mm("margin"),
        practice.mm("minimum-width"),
        OptionalDouble.empty(),
        Units.INCH,
        Station.HAND_HELD);
  }

  public RoutingSettings withFollower(Follower other) {
    return new RoutingSettings(
        cutter, other, allowance, blade, runOut, margin, minimumWidth, thickness, units, station);
  }

  public RoutingSettings withAllowance(double mm) {
    return new RoutingSettings(
        cutter, follower, mm, blade, runOut, margin, minimumWidth, thickness, units, station);
  }

  public RoutingSettings withBlade(SawBlade saw) {
    return new RoutingSettings(
        cutter,
        follower,
        allowance,
        Optional.of(saw),
        runOut,
        margin,
        minimumWidth,
        thickness,
        units,
        station);
  }

  public RoutingSettings withRunOut(double mm) {
    return new RoutingSettings(
        cutter, follower, allowance, blade, mm, margin, minimumWidth, thickness, units, station);
  }

  public RoutingSettings withMargin(double mm) {
    return new RoutingSettings(
        cutter, follower, allowance, blade, runOut, mm, minimumWidth, thickness, units, station);
  }

  public RoutingSettings withThickness(double mm) {
    return new RoutingSettings(
        cutter,
        follower,
        allowance,
        blade,
        runOut,
        margin,
        minimumWidth,
        OptionalDouble.of(mm),
        units,
        station);
  }

  public RoutingSettings withUnits(Units reader) {
    return new RoutingSettings(
        cutter,
        follower,
        allowance,
        blade,
        runOut,
        margin,
        minimumWidth,
        thickness,
        reader,
        station);
  }

  public RoutingSettings withStation(Station other) {
    return new RoutingSettings(
        cutter, follower, allowance, blade, runOut, margin, minimumWidth, thickness, units, other);
  }
}
