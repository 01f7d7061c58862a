package org.bearingline.export.report;

import java.util.List;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Point;

/**
 * Parts of a job that share a curve; lengths and positions in mm, positions of a family in its
 * host's own coordinates.
 *
 * @param families parts that one template could serve
 * @param curves single curves that stand in parts of no common family
 * @param apart why parts of one curve have a template each
 */
public record FamilyReport(List<Family> families, List<Curve> curves, List<String> apart) {

  public FamilyReport {
    families = List.copyOf(families);
    curves = List.copyOf(curves);
    apart = List.copyOf(apart);
  }

  /**
   * One family.
   *
   * @param name of its files
   * @param made whether its template was written
   * @param host the part whose coordinates the template is drawn in
   * @param members the host first
   * @param sharedLength of edge in the shared curves
   * @param plate box round the template
   * @param lines what stands where on it
   * @param files written for it
   */
  public record Family(
      String name,
      boolean made,
      String host,
      List<Member> members,
      double sharedLength,
      Bounds plate,
      List<Line> lines,
      List<String> files) {

    public Family {
      members = List.copyOf(members);
      lines = List.copyOf(lines);
      files = List.copyOf(files);
    }
  }

  /**
   * One of its parts.
   *
   * @param deviation by which its edge and the template's differ at most
   */
  public record Member(String part, double deviation, List<Setting> settings) {

    public Member {
      settings = List.copyOf(settings);
    }
  }

  /**
   * One position of a part on the template.
   *
   * @param lay how it lies, in words
   * @param origin where the part's own origin comes to lie
   * @param along where a step of 1 mm along the part's x leads from there
   */
  public record Setting(int number, String lay, Point origin, Point along) {}

  /**
   * A line on the template.
   *
   * @param kind end, centre, back or stop
   */
  public record Line(String part, String kind, String label, Point from, Point to) {}

  /**
   * A curve with all its places.
   *
   * @param name of the short template's files
   * @param plate box round it
   * @param lines what stands where on it, in the host's coordinates
   * @param files written for it; none where it is not asked for
   */
  public record Curve(
      String name,
      String host,
      List<Place> places,
      Bounds plate,
      List<Line> lines,
      List<String> files) {

    public Curve {
      lines = List.copyOf(lines);
      files = List.copyOf(files);
      places = List.copyOf(places);
    }
  }

  /**
   * Where a curve begins.
   *
   * @param fromEnd from the part's left end, as it lies
   * @param fromBack from its back
   */
  public record Place(String part, String lay, double fromEnd, double fromBack) {}
}
