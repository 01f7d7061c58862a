package org.bearingline.export.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Bounds;

/**
 * What a job is sawn out of: lengths in mm, areas in mm², volumes in mm³.
 *
 * @param blanks parts first, then templates
 * @param partArea of the parts' blanks
 * @param partVolume of them; empty where a thickness is not known
 * @param templateArea of the templates' plates
 * @param packing onto boards; empty where none are listed
 */
public record CutReport(
    List<Blank> blanks,
    double partArea,
    OptionalDouble partVolume,
    double templateArea,
    Optional<Packing> packing) {

  public CutReport {
    blanks = List.copyOf(blanks);
  }

  /** A rectangle to be sawn out; {@code grain} is along, or free where it may turn. */
  public record Blank(
      String name,
      String purpose,
      int quantity,
      double length,
      double width,
      OptionalDouble thickness,
      Optional<String> material,
      String grain) {}

  /**
   * Blanks on boards.
   *
   * @param boardCount how many boards are cut into
   * @param leastBoards no packing does with fewer
   * @param boardArea of the boards cut into
   * @param leastArea no packing cuts into less
   * @param proven whether every way of straight cuts was tried
   * @param boards each with its pieces
   */
  public record Packing(
      int boardCount,
      int leastBoards,
      double boardArea,
      double leastArea,
      boolean proven,
      List<Board> boards) {

    public Packing {
      boards = List.copyOf(boards);
    }
  }

  /** One board; {@code number} counts those of its name. */
  public record Board(String name, int number, double length, double width, List<Piece> pieces) {

    public Board {
      pieces = List.copyOf(pieces);
    }
  }

  /** A blank's place on its board. */
  public record Piece(String name, int number, Bounds at, boolean turned) {}
}
