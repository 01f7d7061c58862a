package org.bearingline.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A scalar, list or mapping of a YAML file with its place. Scalars are handed on as written; what
 * they mean is decided by the reader of the file.
 */
public final class YamlNode {

  private final String fileName;
  private final Node node;

  YamlNode(String fileName, Node node) {
    this.fileName = fileName;
    this.node = node;
  }

  public Place place() {
    return node.getStartMark()
        .map(mark -> YamlFile.spot(fileName, mark))
        .orElseGet(() -> Place.file(fileName));
  }

  /** A problem at this node. */
  public Problem problem(String sentence) {
    return new Problem(place(), sentence);
  }

  public boolean isScalar() {
    return node instanceof ScalarNode;
  }

  public boolean isList() {
    return node instanceof SequenceNode;
  }

  public boolean isMapping() {
    return node instanceof MappingNode;
  }

  /** Whether nothing was written here, such as after {@code name:}. */
  public boolean isBlank() {
    return node instanceof ScalarNode scalar
        && scalar.getScalarStyle() == ScalarStyle.PLAIN
        && (scalar.getValue().isEmpty() || scalar.getValue().equals("null"));
  }

  /** The scalar as written; fails where this is a list, a mapping or blank. */
  public String text() {
    if (!(node instanceof ScalarNode scalar) || isBlank()) {
      throw problem("a single value is wanted here");
    }
    return scalar.getValue();
  }

  /** How many columns the opening quote takes: 1 in a quoted scalar, else 0. */
  public int quoteWidth() {
    return node instanceof ScalarNode scalar
            && (scalar.getScalarStyle() == ScalarStyle.SINGLE_QUOTED
                || scalar.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED)
        ? 1
        : 0;
  }

  /**
   * The place of one letter of a scalar, counted from 0; the scalar's own place where it spans
   * lines or holds escapes, so that letters cannot be counted.
   */
  public Place placeOf(int letter) {
    if (!(node instanceof ScalarNode scalar)
        || node.getStartMark().isEmpty()
        || node.getEndMark().isEmpty()) {
      return place();
    }
    Mark start = node.getStartMark().get();
    Mark end = node.getEndMark().get();
    boolean asWritten =
        start.getLine() == end.getLine()
            && end.getColumn() - start.getColumn()
                == scalar.getValue().codePointCount(0, scalar.getValue().length())
                    + 2 * quoteWidth();
    return asWritten
        ? Place.spot(fileName, start.getLine() + 1, start.getColumn() + 1 + quoteWidth() + letter)
        : place();
  }

  /** The items of a list; fails on anything else. */
  public List<YamlNode> items() {
    if (!(node instanceof SequenceNode sequence)) {
      throw problem("a list is wanted here, each item on a line that starts with “- ”");
    }
    List<YamlNode> items = new ArrayList<>();
    for (Node item : sequence.getValue()) {
      items.add(new YamlNode(fileName, item));
    }
    return items;
  }

  /** The fields of a mapping in the file's order; fails on anything else and on a name twice. */
  public Map<String, YamlNode> fields() {
    if (!(node instanceof MappingNode mapping)) {
      throw problem("fields are wanted here, each as “name: value”");
    }
    Map<String, YamlNode> fields = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      YamlNode key = new YamlNode(fileName, tuple.getKeyNode());
      if (fields.put(key.text(), new YamlNode(fileName, tuple.getValueNode())) != null) {
        throw key.problem("“" + key.text() + "” stands here a second time; keep one of them");
      }
    }
    return fields;
  }

  /** The whole as maps, lists and words; what is blank is an empty word. */
  public Object tree() {
    if (isMapping()) {
      Map<String, Object> fields = new LinkedHashMap<>();
      fields().forEach((name, field) -> fields.put(name, field.tree()));
      return fields;
    }
    if (isList()) {
      return items().stream().map(YamlNode::tree).toList();
    }
    return isBlank() ? "" : text();
  }

  /** The place of a field's name rather than of its value. */
  public Place placeOfName(String name) {
    return nameNode(name).place();
  }

  /** The node that a field's name is; this node itself where there is no such field. */
  public YamlNode nameNode(String name) {
    if (node instanceof MappingNode mapping) {
      for (NodeTuple tuple : mapping.getValue()) {
        YamlNode key = new YamlNode(fileName, tuple.getKeyNode());
        if (key.isScalar() && key.text().equals(name)) {
          return key;
        }
      }
    }
    return this;
  }

  /** A field that must be there. */
  public YamlNode field(String name) {
    return optional(name).orElseThrow(() -> problem("“" + name + ":” is missing here"));
  }

  /** A field that may be left out or left blank. */
  public Optional<YamlNode> optional(String name) {
    return Optional.ofNullable(fields().get(name)).filter(field -> !field.isBlank());
  }

  /** Fails at the first field whose name is not one of those given. */
  public void allowOnly(Set<String> names) {
    for (String name : fields().keySet()) {
      if (!names.contains(name)) {
        String hint =
            fields().get(name).isBlank()
                ? "; if it belongs to the text before the comma, put that text in quotes"
                : NearestName.hint(names, name);
        throw new Problem(placeOfName(name), "“" + name + "” is not known here" + hint);
      }
    }
  }

  void checkDepth(int deepest) {
    if (deepest == 0) {
      throw problem("the file nests too deep here; flatten it");
    }
    if (node instanceof SequenceNode) {
      for (YamlNode item : items()) {
        item.checkDepth(deepest - 1);
      }
    } else if (node instanceof MappingNode mapping) {
      for (NodeTuple tuple : mapping.getValue()) {
        new YamlNode(fileName, tuple.getKeyNode()).checkDepth(deepest - 1);
        new YamlNode(fileName, tuple.getValueNode()).checkDepth(deepest - 1);
      }
    }
  }
}
