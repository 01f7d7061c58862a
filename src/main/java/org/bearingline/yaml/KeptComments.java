package org.bearingline.yaml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.problem.Problem;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.comments.CommentType;
import org.snakeyaml.engine.v2.events.CommentEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Writes fields over an older text of theirs: what stayed the same keeps its way of writing, and
 * all that stays keeps its comments. A comment goes with the field or the item that it stands at.
 * What was written is read again before it is handed on: where it would not say the same fields, or
 * a comment would be lost, there is no such text.
 */
public final class KeptComments {

  /** By this field an item of a list is known again where the list changed. */
  private static final String NAME = "name";

  private KeptComments() {}

  /**
   * The fields as a text with the comments of an older one; empty where that cannot be done.
   *
   * @param tree a map, a list or a string of such
   * @param before a text that {@link YamlFile} reads
   */
  public static Optional<String> write(Object tree, String before) {
    try {
      Node old = new Compose(settings()).composeString(before).orElse(null);
      if (old == null) {
        return Optional.empty();
      }
      Node merged = merged(old, tree);
      String text = YamlText.write(merged, true);
      boolean isSame =
          YamlFile.read("written", text).tree().equals(tree)
              && comments(text).containsAll(kept(merged))
              && (!YamlFile.read("before", before).tree().equals(tree)
                  || comments(text).equals(comments(before)));
      return isSame ? Optional.of(text) : Optional.empty();
    } catch (YamlEngineException | Problem unread) {
      return Optional.empty();
    }
  }

  private static LoadSettings settings() {
    return LoadSettings.builder()
        .setSchema(new FailsafeSchema())
        .setMaxAliasesForCollections(0)
        .setParseComments(true)
        .build();
  }

  private static Node merged(Node old, Object value) {
    Node next = YamlText.node(value);
    if (old instanceof MappingNode mapping && value instanceof Map<?, ?> map) {
      next = new MappingNode(Tag.MAP, fields(mapping, map), mapping.getFlowStyle());
    } else if (old instanceof SequenceNode list && value instanceof List<?> items) {
      next = new SequenceNode(Tag.SEQ, items(list, items), list.getFlowStyle());
    } else if (old instanceof ScalarNode scalar && scalar.getValue().equals(value)) {
      return old;
    }
    next.setBlockComments(old.getBlockComments());
    next.setInLineComments(old.getInLineComments());
    next.setEndComments(old.getEndComments());
    return next;
  }

  private static List<NodeTuple> fields(MappingNode old, Map<?, ?> map) {
    List<NodeTuple> fields = new ArrayList<>();
    map.forEach(
        (name, value) -> {
          Optional<NodeTuple> known =
              old.getValue().stream()
                  .filter(one -> text(one.getKeyNode()).equals(Optional.of(name)))
                  .findFirst();
          fields.add(
              known
                  .map(one -> new NodeTuple(one.getKeyNode(), merged(one.getValueNode(), value)))
                  .orElseGet(() -> new NodeTuple(YamlText.node(name), YamlText.node(value))));
        });
    return fields;
  }

  private static List<Node> items(SequenceNode old, List<?> items) {
    List<Node> left = new ArrayList<>(old.getValue());
    List<Node> merged = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      Object item = items.get(i);
      Optional<Node> known = left.stream().filter(one -> isSame(one, item)).findFirst();
      if (known.isEmpty() && items.size() == old.getValue().size()) {
        // Nothing came or went: what stands in this place was changed, perhaps its name.
        known = Optional.of(old.getValue().get(i)).filter(left::contains);
      }
      known.ifPresent(left::remove);
      merged.add(known.map(one -> merged(one, item)).orElseGet(() -> YamlText.node(item)));
    }
    return merged;
  }

  private static boolean isSame(Node old, Object item) {
    if (old instanceof MappingNode mapping && item instanceof Map<?, ?> map) {
      return map.get(NAME) instanceof String name
          && mapping.getValue().stream()
              .anyMatch(
                  one ->
                      text(one.getKeyNode()).equals(Optional.of(NAME))
                          && text(one.getValueNode()).equals(Optional.of(name)));
    }
    return text(old).equals(Optional.of(item));
  }

  private static Optional<Object> text(Node node) {
    return node instanceof ScalarNode scalar ? Optional.of(scalar.getValue()) : Optional.empty();
  }

  /** Every comment of a text, in its order. */
  private static List<String> comments(String text) {
    List<String> comments = new ArrayList<>();
    for (Event event : new Parse(settings()).parseString(text)) {
      if (event instanceof CommentEvent comment
          && comment.getCommentType() != CommentType.BLANK_LINE) {
        comments.add(comment.getValue().strip());
      }
    }
    return comments;
  }

  /** Every comment of what is to be written. */
  private static Set<String> kept(Node node) {
    Set<String> kept = new HashSet<>();
    for (var lines :
        List.of(
            Optional.ofNullable(node.getBlockComments()).orElse(List.of()),
            Optional.ofNullable(node.getInLineComments()).orElse(List.of()),
            Optional.ofNullable(node.getEndComments()).orElse(List.of()))) {
      lines.stream()
          .filter(line -> line.getCommentType() != CommentType.BLANK_LINE)
          .forEach(line -> kept.add(line.getValue().strip()));
    }
    if (node instanceof MappingNode mapping) {
      for (NodeTuple field : mapping.getValue()) {
        kept.addAll(kept(field.getKeyNode()));
        kept.addAll(kept(field.getValueNode()));
      }
    } else if (node instanceof SequenceNode list) {
      list.getValue().forEach(item -> kept.addAll(kept(item)));
    }
    return kept;
  }
}
