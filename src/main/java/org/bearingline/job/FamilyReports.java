package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bearingline.export.report.FamilyReport;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;
import org.bearingline.routing.family.Registration;
import org.bearingline.routing.family.Setting;
import org.bearingline.routing.family.SharedCurve;

/** Puts what parts share into the report's records. */
final class FamilyReports {

  private FamilyReports() {}

  /**
   * @param files of each family whose template was written, in the families' order
   */
  static FamilyReport of(JobFamilies found, List<List<String>> files) {
    List<FamilyReport.Family> families = new ArrayList<>();
    for (int i = 0; i < found.families().size(); i++) {
      Family family = found.families().get(i);
      families.add(
          new FamilyReport.Family(
              JobFamilies.name(i),
              found.made(),
              family.host(),
              family.members().stream().map(FamilyReports::member).toList(),
              family.sharedLength(),
              family.plate().bounds(),
              family.registration().stream().map(FamilyReports::line).toList(),
              found.made() ? files.get(i) : List.of()));
    }
    List<FamilyReport.Curve> curves = new ArrayList<>();
    for (int i = 0; i < found.curves().size(); i++) {
      curves.add(
          curve(
              JobFamilies.shortName(i),
              found.curves().get(i),
              found.shortMade() ? files.get(i) : List.of()));
    }
    return new FamilyReport(families, curves, found.apart());
  }

  private static FamilyReport.Member member(FamilyMember member) {
    return new FamilyReport.Member(
        member.part(),
        member.deviation(),
        member.settings().stream().map(FamilyReports::setting).toList());
  }

  private static FamilyReport.Setting setting(Setting setting) {
    Similarity into = setting.intoTemplate();
    Point origin = into.apply(Point.ORIGIN);
    return new FamilyReport.Setting(
        setting.number(), setting.lay().words(), origin, into.apply(new Point(1, 0)).minus(origin));
  }

  private static FamilyReport.Line line(Registration line) {
    return new FamilyReport.Line(
        line.part(),
        line.kind().name().toLowerCase(Locale.ROOT),
        line.label(),
        line.from(),
        line.to());
  }

  private static FamilyReport.Curve curve(String name, SharedCurve curve, List<String> files) {
    return new FamilyReport.Curve(
        name,
        curve.host(),
        curve.uses().stream().map(FamilyReports::place).toList(),
        curve.plate().bounds(),
        curve.registration().stream().map(FamilyReports::line).toList(),
        files);
  }

  private static FamilyReport.Place place(SharedCurve.Use use) {
    return new FamilyReport.Place(
        use.part(), use.setting().lay().words(), use.fromEnd(), use.fromBack());
  }
}
