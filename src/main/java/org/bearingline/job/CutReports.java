package org.bearingline.job;

import org.bearingline.cutlist.Blank;
import org.bearingline.cutlist.CutBoard;
import org.bearingline.cutlist.CutList;
import org.bearingline.cutlist.PackingResult;
import org.bearingline.cutlist.Placement;
import org.bearingline.cutlist.Purpose;
import org.bearingline.export.report.CutReport;

/** Puts the figures of a job's cut list into the report's records. */
final class CutReports {

  private CutReports() {}

  static CutReport of(JobCuts cuts) {
    CutList list = cuts.list();
    return new CutReport(
        list.all().stream().map(CutReports::blank).toList(),
        list.partAmount().area(),
        list.partAmount().volume(),
        list.templateAmount().area(),
        cuts.packing().map(CutReports::packing));
  }

  private static CutReport.Blank blank(Blank blank) {
    return new CutReport.Blank(
        blank.name(),
        blank.purpose() == Purpose.PART ? "part" : "template",
        blank.quantity(),
        blank.length(),
        blank.width(),
        blank.thickness(),
        blank.material(),
        blank.mayTurn() ? "free" : "along");
  }

  private static CutReport.Packing packing(PackingResult packing) {
    return new CutReport.Packing(
        packing.bound().boards(),
        packing.bound().leastBoards(),
        packing.bound().area(),
        packing.bound().leastArea(),
        packing.bound().proven(),
        packing.boards().stream().map(CutReports::board).toList());
  }

  private static CutReport.Board board(CutBoard cut) {
    return new CutReport.Board(
        cut.board().name(),
        cut.number(),
        cut.board().length(),
        cut.board().width(),
        cut.placements().stream().map(CutReports::piece).toList());
  }

  private static CutReport.Piece piece(Placement placement) {
    return new CutReport.Piece(
        placement.blank().name(), placement.number(), placement.at(), placement.turned());
  }
}
