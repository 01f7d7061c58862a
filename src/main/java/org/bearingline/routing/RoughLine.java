package org.bearingline.routing;

import java.util.List;
import java.util.Optional;
import org.bearingline.kit.SawBlade;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;

/**
 * (P ⊕ D(allowance)) closed by D(ρ): the saw line outside the part, never nearer than the allowance
 * and never hollowed tighter than the blade's smallest radius ρ.
 *
 * @param allowance mm
 * @param blade the saw; empty where its turn was not asked for
 * @param paths one for each stretch the saw makes, part on the left; closed where it runs all round
 * @param openings lines inside through openings, for a bored hole and a jig or scroll saw
 * @param length of all lines, mm
 * @param wasteArea wood between line and part for the bit to take, mm²
 * @param bridged places the blade cannot follow and the line passes over, from the left
 * @param outsideTurns where the line turns too tightly outward for the blade, which leaves the wood
 *     there and comes in again
 * @param notes sentences for the maker
 */
public record RoughLine(
    double allowance,
    Optional<SawBlade> blade,
    List<Path> paths,
    List<Path> openings,
    double length,
    double wasteArea,
    List<Bridge> bridged,
    List<Point> outsideTurns,
    List<String> notes) {

  public RoughLine {
    paths = List.copyOf(paths);
    openings = List.copyOf(openings);
    bridged = List.copyOf(bridged);
    outsideTurns = List.copyOf(outsideTurns);
    notes = List.copyOf(notes);
  }

  /**
   * A hollow the line passes over.
   *
   * @param number from 1
   * @param at the deepest point of the hollow
   * @param extraDepth mm of wood left there beyond the allowance
   */
  public record Bridge(int number, Point at, double extraDepth) {}
}
