package org.bearingline.outside.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.bearingline.outside.Quoted;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** One entity: its kind, layer and numbers, in the order of the file. */
final class DxfEntity {

  /** The entities whose numbers are read; of all others only kind and layer count. */
  private static final Set<String> READ =
      Set.of(
          "LINE",
          "ARC",
          "CIRCLE",
          "ELLIPSE",
          "LWPOLYLINE",
          "POLYLINE",
          "VERTEX",
          "SPLINE",
          "INSERT",
          "BLOCK",
          "LAYER");

  /** Of a usual coordinate. */
  private static final int LETTERS_A_NUMBER = 8;

  private final String kind;
  private final Place place;
  private String name = "";
  private String layer = "0";
  private String source;
  private int[] codes = new int[0];
  private double[] values = new double[0];
  private int count;
  private List<DxfEntity> vertices = List.of();
  private long letters = LETTERS_A_NUMBER;

  DxfEntity(DxfTag kind) {
    this.kind = kind.value();
    this.place = kind.place();
  }

  String kind() {
    return kind;
  }

  Place place() {
    return place;
  }

  /** Group 2: of an INSERT, a BLOCK and a LAYER. */
  String name() {
    return name;
  }

  String layer() {
    return layer;
  }

  /** Of a POLYLINE. */
  List<DxfEntity> vertices() {
    return vertices;
  }

  void add(DxfEntity vertex) {
    if (vertices.isEmpty()) {
      vertices = new ArrayList<>();
    }
    vertices.add(vertex);
    letters += vertex.letters;
  }

  /** Takes in one pair of the entity, where it matters. */
  void take(DxfTag tag) {
    switch (tag.code()) {
      case 2 -> name = spelt(tag);
      case 8 -> layer = spelt(tag);
      case 60, 67 -> keep(tag);
      default -> {
        if (isNumber(tag.code()) && READ.contains(kind)) {
          keep(tag);
        }
      }
    }
  }

  private String spelt(DxfTag tag) {
    letters += tag.value().length();
    return tag.value();
  }

  private void keep(DxfTag tag) {
    if (count == codes.length) {
      int room = Math.max(8, 2 * count);
      codes = Arrays.copyOf(codes, room);
      values = Arrays.copyOf(values, room);
    }
    codes[count] = tag.code();
    values[count] = tag.number();
    count++;
    letters += LETTERS_A_NUMBER;
  }

  private static boolean isNumber(int code) {
    return code >= 10 && code <= 79 || code == 210 || code == 220 || code == 230;
  }

  /** How many letters it has, its vertices too, by and large. */
  long letters() {
    return letters;
  }

  /** How many numbers it has. */
  int count() {
    return count;
  }

  /** The group code of number {@code i}. */
  int code(int i) {
    return codes[i];
  }

  double value(int i) {
    return values[i];
  }

  /** The first number with a group code, or what the reference says where it is missing. */
  double number(int code, double usual) {
    for (int i = 0; i < count; i++) {
      if (codes[i] == code) {
        return values[i];
      }
    }
    return usual;
  }

  /** The first number with a group code, which the entity must have. */
  double number(int code) {
    double found = number(code, Double.NaN);
    if (Double.isNaN(found)) {
      throw new Problem(
          place, "the " + kind + " has no group " + code + "; the file is damaged there");
    }
    return found;
  }

  /** The bits of a flag, 0 where it is missing. */
  int flags(int code) {
    return (int) number(code, 0);
  }

  /** What and where it is: {@code ARC on layer 0, line 120}. */
  String source() {
    // Copies of an entity share it.
    if (source == null) {
      source = described();
    }
    return source;
  }

  private String described() {
    String line = place instanceof Place.Spot spot ? ", line " + spot.line() : "";
    return kind + (layer.isEmpty() ? "" : " on layer " + Quoted.of(layer)) + line;
  }
}
