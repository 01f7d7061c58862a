package org.bearingline.yaml;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bearingline.problem.Place;

/**
 * Which field of a file stands where: leads from the place of a mistake to the field's path,
 * written as a JSON pointer (RFC 6901) such as {@code /parts/0/measures/rise}.
 */
public final class FieldPaths {

  private final TreeMap<Long, String> paths = new TreeMap<>();

  private FieldPaths() {}

  /** The fields below a node, which is the top of its file. */
  public static FieldPaths of(YamlNode top) {
    FieldPaths found = new FieldPaths();
    found.add(top, "");
    return found;
  }

  private void add(YamlNode node, String path) {
    put(node.place(), path);
    if (node.isMapping()) {
      for (Map.Entry<String, YamlNode> field : node.fields().entrySet()) {
        String below = path + "/" + escaped(field.getKey());
        put(node.placeOfName(field.getKey()), below);
        add(field.getValue(), below);
      }
    } else if (node.isList()) {
      List<YamlNode> items = node.items();
      for (int i = 0; i < items.size(); i++) {
        add(items.get(i), path + "/" + i);
      }
    }
  }

  /** A block and its first field begin at one place: there the block is meant. */
  private void put(Place place, String path) {
    if (place instanceof Place.Spot spot) {
      paths.putIfAbsent(key(spot), path);
    }
  }

  /** The field that a spot of the file lies in; empty before the first. */
  public Optional<String> at(Place.Spot spot) {
    return Optional.ofNullable(paths.floorEntry(key(spot))).map(Map.Entry::getValue);
  }

  private static long key(Place.Spot spot) {
    return ((long) spot.line() << Integer.SIZE) + spot.column();
  }

  private static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }
}
