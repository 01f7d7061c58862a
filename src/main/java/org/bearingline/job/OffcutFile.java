package org.bearingline.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bearingline.cutlist.Board;
import org.bearingline.cutlist.Purpose;
import org.bearingline.cutlist.SawRules;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/**
 * The boards and sheets that a maker has, and how they are sawn up.
 *
 * @param boards as listed; empty where the job lists none
 * @param rules of the saw
 */
record OffcutFile(List<Board> boards, SawRules rules) {

  static OffcutFile read(JobFile job) {
    List<Board> boards = new ArrayList<>();
    Optional<YamlNode> list = job.top().optional("offcuts");
    if (list.isPresent()) {
      for (YamlNode node : list.get().items()) {
        boards.add(board(node, job));
      }
      if (boards.isEmpty()) {
        throw list.get().problem("the list of offcuts is empty; leave “offcuts:” out");
      }
    }
    return new OffcutFile(boards, rules(job));
  }

  private static Board board(YamlNode node, JobFile job) {
    node.allowOnly(Set.of("name", "for", "length", "width", "thickness", "species", "quantity"));
    return new Board(
        node.field("name").text(),
        node.optional("for").map(OffcutFile::purpose).orElse(Purpose.PART),
        above0(node, node.field("length"), "length", job),
        above0(node, node.field("width"), "width", job),
        node.optional("thickness").isPresent()
            ? OptionalDouble.of(above0(node, node.field("thickness"), "thickness", job))
            : OptionalDouble.empty(),
        node.optional("species").map(YamlNode::text),
        node.optional("quantity").map(JobFile::count).orElse(1));
  }

  private static Purpose purpose(YamlNode node) {
    return switch (node.text()) {
      case "parts" -> Purpose.PART;
      case "templates" -> Purpose.TEMPLATE;
      default ->
          throw node.problem(
              "“" + node.text() + "” is nothing a board is for; write parts or templates");
    };
  }

  private static double above0(YamlNode node, YamlNode written, String field, JobFile job) {
    double mm = WishFields.length(node, field, job.units()).orElseThrow();
    if (!(mm > 0)) {
      throw written.problem("give a length above 0");
    }
    return mm;
  }

  private static SawRules rules(JobFile job) {
    SawRules usual = SawRules.usual();
    Optional<YamlNode> written = job.top().optional("sawing");
    if (written.isEmpty()) {
      return usual;
    }
    YamlNode node = written.get();
    node.allowOnly(Set.of("kerf", "trim", "planing"));
    try {
      return new SawRules(
          WishFields.length(node, "kerf", job.units()).orElse(usual.kerf()),
          WishFields.length(node, "trim", job.units()).orElse(usual.trim()),
          WishFields.length(node, "planing", job.units()).orElse(usual.planing()));
    } catch (Problem refused) {
      throw refused.place() instanceof Place.Field field
          ? refused.at(node.field(field.name()).place())
          : refused;
    }
  }
}
