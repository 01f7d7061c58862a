package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.FileSink;
import org.bearingline.export.dxf.DxfWriter;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.export.pdf.SheetsPdf;
import org.bearingline.export.png.PngWriter;
import org.bearingline.export.svg.SvgWriter;
import org.bearingline.length.Units;

/** Writes the files of one part. */
final class PartFiles {

  /** Wide enough for a screen and for the card's reader, quick to make. */
  static final int PREVIEW_WIDTH = 1600;

  private PartFiles() {}

  /**
   * One file to make. Making it knows nothing of the others, so that two cores can share the work.
   *
   * @param name of the file
   * @param content makes its bytes
   */
  record PartFile(String name, Supplier<byte[]> content) {}

  /** Writes every file of the part; returns their names. */
  static List<String> writeAll(WorkedPart worked, FileSink folder) {
    return write(all(worked), folder);
  }

  /** The names of every file of the part. */
  static List<String> names(WorkedPart worked) {
    return all(worked).stream().map(PartFile::name).toList();
  }

  /** Every file of the part, to be made. */
  static List<PartFile> all(WorkedPart worked) {
    Units units = Settings.units(worked.order().wishes());
    List<PartFile> files = new ArrayList<>();
    List<Plate> plates = Plate.of(worked);
    for (Plate plate : plates) {
      files.add(
          new PartFile(
              plate.fileName(".svg"), () -> SvgWriter.write(plate.fullSize(units), units)));
      files.add(
          new PartFile(
              plate.fileName(".dxf"), () -> DxfWriter.write(plate.forMachine(units), units)));
      files.add(
          new PartFile(
              plate.fileName(".png"),
              () -> PngWriter.write(plate.picture(units), units, PREVIEW_WIDTH)));
      if (plate.isMadeHere()) {
        files.add(sheets(worked, plate));
      }
    }
    files.add(
        new PartFile(
            worked.order().name() + "-card.pdf",
            () -> CardPdf.write(Cards.card(worked, plates, units), units)));
    return files;
  }

  /** Writes the full-size sheets alone; returns their names. */
  static List<String> writeSheets(WorkedPart worked, FileSink folder) {
    List<PartFile> files = new ArrayList<>();
    for (Plate plate : Plate.of(worked)) {
      if (plate.isMadeHere()) {
        files.add(sheets(worked, plate));
      }
    }
    return write(files, folder);
  }

  private static PartFile sheets(WorkedPart worked, Plate plate) {
    Units units = Settings.units(worked.order().wishes());
    return new PartFile(
        plate.fileName("-sheets.pdf"),
        () -> {
          Drawing sheets = plate.forPaper(units);
          return SheetsPdf.write(sheets, plan(worked, plate, sheets), units);
        });
  }

  /** How the plate's drawing for paper falls on pages. */
  static SheetPlan plan(WorkedPart worked, Plate plate, Drawing sheets) {
    List<String> notes = new ArrayList<>();
    if (plate.mirror().isPresent()) {
      notes.add("Printed mirrored: glue it to side B of the template, which lies up on face B.");
    }
    notes.addAll(Cards.sheetNotes(plate, Settings.units(worked.order().wishes())));
    return SheetPlan.plan(sheets, Settings.paper(worked.order().wishes()), notes);
  }

  /** Makes the files side by side and writes them in their order. */
  static List<String> write(List<PartFile> files, FileSink folder) {
    List<byte[]> contents =
        files.parallelStream().map(file -> file.content().get()).collect(Collectors.toList());
    List<String> names = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      folder.write(files.get(i).name(), contents.get(i));
      names.add(files.get(i).name());
    }
    return names;
  }
}
