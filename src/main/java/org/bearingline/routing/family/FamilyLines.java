package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Primitive;
import org.bearingline.part.Contour;
import org.bearingline.part.EdgeKind;

/** The registration lines of a family's parts on their template. */
final class FamilyLines {

  private static final double NEAR = 1e-6;

  private final Course host;

  FamilyLines(Course host) {
    this.host = host;
  }

  /** Ends, centre and stops of one part in each of its settings, from the left. */
  List<Registration> of(FamilyBuilder.Guest guest, FamilyMember member, Outline plate) {
    List<Registration> lines = new ArrayList<>();
    for (int i = 0; i < member.settings().size(); i++) {
      Setting setting = member.settings().get(i);
      CurveMatch.Stretch stretch = guest.match().stretches().get(i);
      String name =
          member.settings().size() == 1 ? member.part() : member.part() + " " + setting.number();
      Bounds box =
          guest.result().part().contour().transformed(setting.intoTemplate()).loop().bounds();
      boolean startsHere = stretch.first() == 0;
      boolean endsHere = stretch.last() == host.size() - 1;
      boolean up = host.sense() > 0;
      if (up ? startsHere : endsHere) {
        add(lines, member, Registration.Kind.END, box.minX(), name + ": end", plate);
      }
      if (up ? endsHere : startsHere) {
        add(lines, member, Registration.Kind.END, box.maxX(), name + ": end", plate);
      }
      double centre = box.center().x();
      boolean stopsAtCentre = false;
      if (!startsHere) {
        double back = guest.match().course().straights()[stretch.first()] / 2;
        double x = host.start(stretch.first()).x() - host.sense() * back;
        boolean both = Math.abs(x - centre) <= Families.TOLERANCE;
        stopsAtCentre |= both;
        add(
            lines,
            member,
            Registration.Kind.STOP,
            x,
            name + (both ? ": centre and stop" : ": stop"),
            plate);
      }
      if (!endsHere) {
        double on = guest.match().course().straights()[stretch.last() + 1] / 2;
        double x = host.end(stretch.last()).x() + host.sense() * on;
        boolean both = Math.abs(x - centre) <= Families.TOLERANCE;
        stopsAtCentre |= both;
        add(
            lines,
            member,
            Registration.Kind.STOP,
            x,
            name + (both ? ": centre and stop" : ": stop"),
            plate);
      }
      if (!stopsAtCentre) {
        add(lines, member, Registration.Kind.CENTRE, centre, name + ": centre", plate);
      }
    }
    return lines;
  }

  private static void add(
      List<Registration> lines,
      FamilyMember member,
      Registration.Kind kind,
      double x,
      String label,
      Outline plate) {
    Crossing.atX(plate.outer(), x)
        .ifPresent(
            line ->
                lines.add(new Registration(member.part(), kind, line.start(), line.end(), label)));
  }

  /** One line for each place where sawn backs fall, named after the parts. */
  List<Registration> backs(
      List<FamilyBuilder.Guest> guests, List<FamilyMember> members, Outline plate) {
    Map<Long, List<String>> names = new TreeMap<>();
    Map<Long, Double> at = new TreeMap<>();
    for (int i = 0; i < guests.size(); i++) {
      Contour laid =
          guests
              .get(i)
              .result()
              .part()
              .contour()
              .transformed(members.get(i).settings().get(0).intoTemplate());
      Optional<Double> y = back(laid);
      if (y.isPresent()) {
        long key = Math.round(y.get() / Families.TOLERANCE);
        at.putIfAbsent(key, y.get());
        names.computeIfAbsent(key, k -> new ArrayList<>()).add(members.get(i).part());
      }
    }
    List<Registration> lines = new ArrayList<>();
    Bounds box = plate.bounds();
    for (Map.Entry<Long, Double> entry : at.entrySet()) {
      List<String> parts = names.get(entry.getKey());
      lines.add(
          new Registration(
              parts.get(0),
              Registration.Kind.BACK,
              new Point(box.minX(), entry.getValue()),
              new Point(box.maxX(), entry.getValue()),
              String.join(", ", parts) + ": back"));
    }
    return lines;
  }

  /** Where the part's back is sawn straight along x. */
  private Optional<Double> back(Contour laid) {
    Bounds box = laid.loop().bounds();
    double y = host.sense() > 0 ? box.maxY() : box.minY();
    for (int i = 0; i < laid.kinds().size(); i++) {
      Primitive piece = laid.loop().primitives().get(i);
      if (laid.kinds().get(i) == EdgeKind.SAWN
          && Math.abs(piece.start().y() - y) <= NEAR
          && Math.abs(piece.end().y() - y) <= NEAR) {
        return Optional.of(y);
      }
    }
    return Optional.empty();
  }
}
