package org.bearingline.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.StreamDataWriter;
import org.snakeyaml.engine.v2.api.lowlevel.Serialize;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.emitter.Emitter;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Writes lists, mappings and words as the text of a YAML file: a field a line, what is short on one
 * line. What is read back by {@link YamlFile} is the same again.
 */
public final class YamlText {

  /** A list or mapping of words up to this many letters stands on one line. */
  private static final int SHORT = 72;

  private YamlText() {}

  /**
   * The text, ending with a new line.
   *
   * @param tree a map, a list or a string of such; map keys are strings
   */
  public static String write(Object tree) {
    return write(node(tree), false);
  }

  /** The text of a node, with the comments at its nodes where these are wanted. */
  static String write(Node node, boolean comments) {
    DumpSettings settings =
        DumpSettings.builder()
            .setSchema(new FailsafeSchema())
            .setDefaultFlowStyle(FlowStyle.BLOCK)
            .setIndicatorIndent(2)
            .setIndent(2)
            .setIndentWithIndicator(true)
            .setWidth(100)
            .setDumpComments(comments)
            .build();
    Lines lines = new Lines();
    Emitter emitter = new Emitter(settings, lines);
    for (Event event : new Serialize(settings).serializeOne(node)) {
      emitter.emit(event);
    }
    return lines.text.toString();
  }

  /** The node of a map, a list or a string of such. */
  static Node node(Object tree) {
    if (tree instanceof Map<?, ?> map) {
      List<NodeTuple> fields = new ArrayList<>();
      map.forEach((name, value) -> fields.add(new NodeTuple(node(name), node(value))));
      return new MappingNode(Tag.MAP, fields, style(map.values(), tree));
    }
    if (tree instanceof List<?> list) {
      List<Node> items = list.stream().map(YamlText::node).toList();
      return new SequenceNode(Tag.SEQ, items, style(list, tree));
    }
    if (tree instanceof String word) {
      return new ScalarNode(Tag.STR, word, scalar(word));
    }
    throw new IllegalArgumentException("neither map, list nor string");
  }

  /** A word that a reader would take for nothing is quoted, and so is one of several lines. */
  private static ScalarStyle scalar(String word) {
    boolean plain = !word.isEmpty() && !word.equals("null") && word.indexOf('\n') < 0;
    return plain ? ScalarStyle.PLAIN : ScalarStyle.DOUBLE_QUOTED;
  }

  private static FlowStyle style(Iterable<?> values, Object tree) {
    for (Object value : values) {
      if (!(value instanceof String)) {
        return FlowStyle.BLOCK;
      }
    }
    return tree.toString().length() <= SHORT ? FlowStyle.FLOW : FlowStyle.BLOCK;
  }

  private static final class Lines implements StreamDataWriter {
    private final StringBuilder text = new StringBuilder();

    @Override
    public void write(String part) {
      text.append(part);
    }

    @Override
    public void write(String part, int from, int length) {
      text.append(part, from, from + length);
    }
  }
}
