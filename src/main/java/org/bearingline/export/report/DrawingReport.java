package org.bearingline.export.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What became of a drawing; lengths in mm.
 *
 * @param file as the user named it
 * @param tolerance that cleaning kept to
 * @param largestMove largest distance between drawn and clean line
 * @param gaps how many were closed
 * @param largestGap 0 where there was none
 * @param lines of the clean outline
 * @param arcs of the clean outline, whole circles not counted
 * @param circles of the clean outline
 * @param drilled circles that are holes to drill
 * @param jointsMadeTangent joints of lines, arcs and curves that turned a little and run on now
 * @param largestJointTurn the largest turn so removed, in degrees
 * @param symmetryMove largest move made for the sake of symmetry; empty where none was asked
 * @param united what became of shapes over each other; empty where they were not to be united
 * @param leftOut what was in the file and is no line
 * @param notes sentences for the maker
 */
public record DrawingReport(
    String file,
    double tolerance,
    double largestMove,
    int gaps,
    double largestGap,
    int lines,
    int arcs,
    int circles,
    int drilled,
    int jointsMadeTangent,
    double largestJointTurn,
    OptionalDouble symmetryMove,
    Optional<United> united,
    List<String> leftOut,
    List<String> notes) {

  public DrawingReport {
    Objects.requireNonNull(file);
    Objects.requireNonNull(symmetryMove);
    Objects.requireNonNull(united);
    leftOut = List.copyOf(leftOut);
    notes = List.copyOf(notes);
  }

  /**
   * Shapes united; areas in mm².
   *
   * @param shapes how many lay over or against others
   * @param outlines that came of them
   * @param openings how many of those inside did
   * @param openingsLeft that came of these
   * @param drawnArea of the shapes, each by itself, together
   * @param area of what came of them
   */
  public record United(
      int shapes, int outlines, int openings, int openingsLeft, double drawnArea, double area) {}
}
