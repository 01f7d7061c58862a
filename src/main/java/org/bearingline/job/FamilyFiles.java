package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.FileSink;
import org.bearingline.export.dxf.DxfWriter;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.export.pdf.SheetsPdf;
import org.bearingline.export.png.PngWriter;
import org.bearingline.export.svg.SvgWriter;
import org.bearingline.length.Units;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;

/** Writes the templates of a job's families. */
final class FamilyFiles {

  private final FamilyPlate plate;
  private final List<WorkedPart> members;
  private final Wishes wishes;

  private FamilyFiles(FamilyPlate plate, List<WorkedPart> members) {
    this.plate = plate;
    this.members = members;
    this.wishes = members.get(0).order().wishes();
  }

  private static List<FamilyFiles> of(WorkedJob work) {
    JobFamilies found = work.families();
    List<FamilyFiles> files = new ArrayList<>();
    for (int i = 0; found.made() && i < found.families().size(); i++) {
      Family family = found.families().get(i);
      List<WorkedPart> members =
          family.members().stream().map(member -> named(member, work.parts())).toList();
      Units units = Settings.units(members.get(0).order().wishes());
      files.add(new FamilyFiles(new FamilyPlate(JobFamilies.name(i), family, units), members));
    }
    return files;
  }

  private static WorkedPart named(FamilyMember member, List<WorkedPart> all) {
    return all.stream()
        .filter(worked -> worked.order().name().equals(member.part()))
        .findFirst()
        .orElseThrow();
  }

  /** Every file of every family whose template is made, family by family. */
  static List<List<PartFiles.PartFile>> all(WorkedJob work) {
    return of(work).stream().map(FamilyFiles::files).toList();
  }

  /** Writes them; returns their names, family by family. */
  static List<List<String>> writeAll(WorkedJob work, FileSink folder) {
    return all(work).stream().map(files -> PartFiles.write(files, folder)).toList();
  }

  /** The full-size sheets alone. */
  static List<List<String>> writeSheets(WorkedJob work, FileSink folder) {
    return of(work).stream().map(one -> PartFiles.write(List.of(one.sheets()), folder)).toList();
  }

  private List<PartFiles.PartFile> files() {
    Units units = plate.units();
    String name = plate.name();
    return List.of(
        new PartFiles.PartFile(name + ".svg", () -> SvgWriter.write(plate.fullSize(), units)),
        new PartFiles.PartFile(
            name + ".dxf", () -> DxfWriter.write(plate.forMachine(Settings.kerf(wishes)), units)),
        new PartFiles.PartFile(
            name + ".png", () -> PngWriter.write(plate.picture(), units, PartFiles.PREVIEW_WIDTH)),
        sheets(),
        new PartFiles.PartFile(
            name + "-card.pdf",
            () ->
                CardPdf.write(
                    FamilyCard.of(plate, members, Settings.paper(wishes).paper()), units)));
  }

  private PartFiles.PartFile sheets() {
    Units units = plate.units();
    return new PartFiles.PartFile(
        plate.name() + "-sheets.pdf",
        () -> {
          List<String> notes = new ArrayList<>();
          for (WorkedPart member : members) {
            notes.add(
                "For "
                    + member.order().name()
                    + ": "
                    + Words.tool(
                        member.result().settings().cutter(),
                        member.result().settings().follower(),
                        units)
                    + ".");
          }
          SheetPlan plan = SheetPlan.plan(plate.fullSize(), Settings.paper(wishes), notes);
          return SheetsPdf.write(plate.fullSize(), plan, units);
        });
  }
}
