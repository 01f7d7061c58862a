package org.bearingline.routing.family;

import java.util.ArrayList;
import java.util.List;
import org.bearingline.length.Units;
import org.bearingline.outline.Bounds;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Point;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Contour;
import org.bearingline.routing.RoutingResult;
import org.bearingline.routing.Template;

/** Puts a family together: the host's plate with room for all, and every part's lines on it. */
final class FamilyBuilder {

  private final RoutingResult host;
  private final List<Guest> guests;
  private final Course course;
  private final FamilyWords words;
  private final FamilyLines lines;
  private final List<FamilyMember> members = new ArrayList<>();
  private Bounds wanted;

  /** A part that matches the host. */
  record Guest(RoutingResult result, CurveMatch match) {}

  FamilyBuilder(RoutingResult host, List<Guest> guests, Units units) {
    this.host = host;
    this.guests = List.copyOf(guests);
    this.course = Families.course(host).orElseThrow();
    this.words = new FamilyWords(host, units);
    this.lines = new FamilyLines(course);
    this.wanted = Families.template(host).orElseThrow().plate().bounds();
  }

  Family build() {
    Template template = Families.template(host).orElseThrow();
    CurveMatch own = CurveMatch.of(course, host.part().contour(), Families.TOLERANCE).orElseThrow();
    List<Guest> all = new ArrayList<>();
    all.add(new Guest(host, own));
    all.addAll(guests);
    for (Guest guest : all) {
      member(guest);
    }
    Outline plate =
        PlateRoom.reaching(template.plate(), wanted, course.sense() > 0, template.offset());
    List<Registration> registration = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    sentences.addAll(words.shared(template, plate, all));
    for (int i = 0; i < all.size(); i++) {
      registration.addAll(lines.of(all.get(i), members.get(i), plate));
      sentences.add(members.get(i).sentence());
    }
    registration.addAll(lines.backs(all, members, plate));
    sentences.addAll(words.cautions(all));
    return new Family(
        host.part().name(),
        members,
        plate,
        course.curves().stream().mapToDouble(curve -> curve.length()).sum(),
        template.offset(),
        registration,
        Families.TOLERANCE,
        sentences);
  }

  private void member(Guest guest) {
    List<Setting> settings = new ArrayList<>();
    List<CurveMatch.Stretch> stretches = guest.match().stretches();
    Point first = stretches.get(0).move();
    for (CurveMatch.Stretch stretch : stretches) {
      Point move = stretch.move();
      Similarity into = guest.match().turn().then(Similarity.translation(move.x(), move.y()));
      settings.add(
          new Setting(settings.size() + 1, into, guest.match().lay(), move.x() - first.x()));
      want(guest, stretch, into);
    }
    members.add(
        new FamilyMember(
            guest.result().part().name(),
            settings,
            guest.match().deviation(),
            words.of(guest, settings)));
  }

  /** The plate must pass each end that is routed in this position by the host's run-out. */
  private void want(Guest guest, CurveMatch.Stretch stretch, Similarity into) {
    Contour laid = guest.result().part().contour().transformed(into);
    Bounds box = laid.loop().bounds();
    double runOut = host.settings().runOut();
    double margin = host.settings().margin();
    boolean up = course.sense() > 0;
    boolean startsHere = stretch.first() == 0;
    boolean endsHere = stretch.last() == course.size() - 1;
    boolean lowEnd = up ? startsHere : endsHere;
    boolean highEnd = up ? endsHere : startsHere;
    wanted =
        new Bounds(
            lowEnd ? Math.min(wanted.minX(), box.minX() - runOut) : wanted.minX(),
            up ? wanted.minY() : Math.min(wanted.minY(), box.minY() - margin),
            highEnd ? Math.max(wanted.maxX(), box.maxX() + runOut) : wanted.maxX(),
            up ? Math.max(wanted.maxY(), box.maxY() + margin) : wanted.maxY());
  }
}
