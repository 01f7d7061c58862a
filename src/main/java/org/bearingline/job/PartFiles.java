package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.StagingFolder;
import org.bearingline.export.dxf.DxfWriter;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.export.pdf.SheetsPdf;
import org.bearingline.export.png.PngWriter;
import org.bearingline.export.svg.SvgWriter;
import org.bearingline.length.Units;

/** Writes the files of one part. */
final class PartFiles {

  /** Wide enough for a screen and for the card's reader, quick to make. */
  private static final int PREVIEW_WIDTH = 1600;

  private PartFiles() {}

  /** Writes every file of the part; returns their names. */
  static List<String> writeAll(WorkedPart worked, StagingFolder folder) {
    Units units = Settings.units(worked.order().wishes());
    List<String> files = new ArrayList<>();
    for (Plate plate : Plate.of(worked)) {
      Drawing full = plate.fullSize(units);
      put(folder, files, plate.fileName(".svg"), SvgWriter.write(full, units));
      put(folder, files, plate.fileName(".dxf"), DxfWriter.write(plate.forMachine(units), units));
      put(
          folder,
          files,
          plate.fileName(".png"),
          PngWriter.write(plate.picture(units), units, PREVIEW_WIDTH));
      putSheets(worked, plate, folder, files);
    }
    put(
        folder,
        files,
        worked.order().name() + "-card.pdf",
        CardPdf.write(Cards.card(worked, units), units));
    return files;
  }

  /** Writes the full-size sheets alone; returns their names. */
  static List<String> writeSheets(WorkedPart worked, StagingFolder folder) {
    List<String> files = new ArrayList<>();
    for (Plate plate : Plate.of(worked)) {
      putSheets(worked, plate, folder, files);
    }
    return files;
  }

  private static void putSheets(
      WorkedPart worked, Plate plate, StagingFolder folder, List<String> files) {
    Units units = Settings.units(worked.order().wishes());
    List<String> notes = new ArrayList<>();
    if (plate.mirror().isPresent()) {
      notes.add("Printed mirrored: glue it to side B of the template, which lies up on face B.");
    }
    notes.addAll(Cards.sheetNotes(plate, units));
    Drawing sheets = plate.forPaper(units);
    SheetPlan plan = SheetPlan.plan(sheets, Settings.paper(worked.order().wishes()), notes);
    put(folder, files, plate.fileName("-sheets.pdf"), SheetsPdf.write(sheets, plan, units));
  }

  private static void put(StagingFolder folder, List<String> files, String name, byte[] content) {
    folder.write(name, content);
    files.add(name);
  }
}
