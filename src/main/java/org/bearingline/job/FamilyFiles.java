package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.drawing.sheet.SheetPlan;
import org.bearingline.export.FileSink;
import org.bearingline.export.dxf.DxfWriter;
import org.bearingline.export.pdf.Card;
import org.bearingline.export.pdf.CardPdf;
import org.bearingline.export.pdf.SheetsPdf;
import org.bearingline.export.png.PngWriter;
import org.bearingline.export.svg.SvgWriter;
import org.bearingline.length.Units;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;
import org.bearingline.routing.family.SharedCurve;

/** Writes the templates of a job's families. */
final class FamilyFiles {

  private final FamilyPlate plate;
  private final List<WorkedPart> members;
  private final Supplier<Card> card;
  private final Wishes wishes;

  private FamilyFiles(FamilyPlate plate, List<WorkedPart> members, Supplier<Card> card) {
    this.plate = plate;
    this.members = members;
    this.card = card;
    this.wishes = members.get(0).order().wishes();
  }

  private static List<FamilyFiles> of(WorkedJob work) {
    JobFamilies found = work.families();
    List<FamilyFiles> files = new ArrayList<>();
    for (int i = 0; found.made() && i < found.families().size(); i++) {
      files.add(of(found.families().get(i), JobFamilies.name(i), work));
    }
    for (int i = 0; found.shortMade() && i < found.curves().size(); i++) {
      files.add(of(found.curves().get(i), JobFamilies.shortName(i), work));
    }
    return files;
  }

  private static FamilyFiles of(Family family, String name, WorkedJob work) {
    List<String> names = family.members().stream().map(FamilyMember::part).toList();
    List<WorkedPart> members = named(names, work);
    FamilyPlate plate =
        new FamilyPlate(name, names, family.plate(), family.registration(), units(members));
    return new FamilyFiles(
        plate, members, () -> FamilyCard.of(plate, family, members, paper(members)));
  }

  private static FamilyFiles of(SharedCurve curve, String name, WorkedJob work) {
    List<String> names = curve.uses().stream().map(SharedCurve.Use::part).distinct().toList();
    List<WorkedPart> members = named(names, work);
    FamilyPlate plate =
        new FamilyPlate(name, names, curve.plate(), curve.registration(), units(members));
    return new FamilyFiles(
        plate, members, () -> ShortCard.of(plate, curve, members, paper(members)));
  }

  private static Units units(List<WorkedPart> members) {
    return Settings.units(members.get(0).order().wishes());
  }

  private static Paper paper(List<WorkedPart> members) {
    return Settings.paper(members.get(0).order().wishes()).paper();
  }

  private static List<WorkedPart> named(List<String> names, WorkedJob work) {
    return names.stream()
        .map(
            name ->
                work.parts().stream()
                    .filter(worked -> worked.order().name().equals(name))
                    .findFirst()
                    .orElseThrow())
        .toList();
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
        new PartFiles.PartFile(name + "-card.pdf", () -> CardPdf.write(card.get(), units)));
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
                    + Words.tool(member.result().settings(), units)
                    + ".");
          }
          SheetPlan plan = SheetPlan.plan(plate.fullSize(), Settings.paper(wishes), notes);
          return SheetsPdf.write(plate.fullSize(), plan, units);
        });
  }
}
