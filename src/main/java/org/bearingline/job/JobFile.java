package org.bearingline.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.bearingline.length.Units;
import org.bearingline.yaml.YamlNode;

/**
 * A job as written: a piece of furniture and its parts. Shapes are named, not yet read.
 *
 * @param name of the piece
 * @param general what holds for every part that does not say otherwise
 * @param parts in the file's order
 * @param top the whole file, for what belongs to the job as one: panels and offcuts
 * @param units of a bare length; empty to refuse one
 */
record JobFile(
    String name, Wishes general, List<Entry> parts, YamlNode top, Optional<Units> units) {

  private static final Set<String> TOP =
      Set.of(
          "job",
          "about",
          "units",
          "stock",
          "kit",
          "paper",
          "margin",
          "printed",
          "bit",
          "bearing",
          "collar",
          "allowance",
          "saw-blade",
          "run-out",
          "deepest-pass",
          "router",
          "router-base",
          "kerf",
          "template-thickness",
          "parts",
          "panels",
          "families",
          "offcuts",
          "sawing");

  private static final Set<String> PART =
      Set.of(
          "name",
          "shape",
          "drawing",
          "width",
          "height",
          "drawn-in",
          "tolerance",
          "gap",
          "drill-up-to",
          "layer",
          "outline",
          "symmetric",
          "unite",
          "sawn-edges",
          "measures",
          "quantity",
          "thickness",
          "species",
          "bit",
          "bearing",
          "collar",
          "allowance",
          "saw-blade",
          "run-out",
          "deepest-pass",
          "router",
          "router-base",
          "kerf",
          "paper",
          "margin",
          "printed",
          "operations",
          "pair",
          "register",
          "template",
          "grain",
          "template-thickness");

  /** No template is thicker, mm: two plates glued up. */
  private static final double THICKEST_TEMPLATE = 50.8;

  static final Pattern FILE_NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  /**
   * One part as written.
   *
   * @param name for its files
   * @param source a shape's name, a shape file or a drawing, as written
   * @param quantity how many
   * @param wishes what the part says for itself
   * @param operations what the part says of operations, faces and hands
   * @param stock its wood and the stuff of its templates
   * @param node where it stands
   * @param places where it says what
   */
  record Entry(
      String name,
      String source,
      int quantity,
      Wishes wishes,
      OperationFile operations,
      StockWishes stock,
      YamlNode node,
      WrittenPlaces places) {

    /** Whether it is drawn in a file of its own. */
    boolean isDrawn() {
      return node.optional("drawing").isPresent();
    }
  }

  /** Whether the file's top says that it is a job and not a shape. */
  static boolean isOne(YamlNode top) {
    return top.isMapping()
        && (top.optional("parts").isPresent() || top.optional("job").isPresent());
  }

  static JobFile read(YamlNode top, WrittenFile file) {
    top.allowOnly(TOP);
    Optional<Units> units = top.optional("units").map(JobFile::units);
    Optional<WrittenFile> kit = top.optional("kit").map(node -> file.beside(node.text()));
    OptionalDouble thickness = OptionalDouble.empty();
    Optional<YamlNode> stock = top.optional("stock");
    StockWishes usual =
        new StockWishes(Grain.ALONG, templateThickness(top, units), Optional.empty());
    if (stock.isPresent()) {
      stock.get().allowOnly(Set.of("thickness", "species", "grain"));
      thickness = WishFields.length(stock.get(), "thickness", units);
      usual = stock(stock.get(), usual, units);
    }
    Wishes general = WishFields.of(top, Map.of(), kit, thickness, units, DrawnWishes.NONE);
    List<Entry> parts = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (YamlNode item : top.field("parts").items()) {
      Entry entry = entry(top, item, usual, units);
      if (entry.name().equals("job")) {
        throw item.field("name")
            .problem("job-card.pdf is the card of the whole job; give the part another name");
      }
      if (entry.name().matches("(family|curve)-[0-9]+")) {
        throw item.field("name")
            .problem(
                entry.name() + " names the files of a shared template; give the part another name");
      }
      if (!names.add(entry.name())) {
        throw item.field("name")
            .problem("a part “" + entry.name() + "” stands above; give each its own name");
      }
      parts.add(entry);
    }
    for (Entry entry : parts) {
      Optional<String> other =
          entry.operations().faces().pair().map(pair -> OtherPiece.name(entry.name(), pair));
      if (other.isPresent() && names.contains(other.get())) {
        throw entry
            .node()
            .field("pair")
            .problem(
                other.get()
                    + " names the files of the pair's other piece, and a part has that name; give"
                    + " the part another name");
      }
    }
    if (parts.isEmpty()) {
      throw top.field("parts").problem("the job has no parts; list at least one");
    }
    return new JobFile(
        top.optional("job").map(YamlNode::text).orElse("job"), general, parts, top, units);
  }

  /** Where one template for parts that share a curve is asked for. */
  Optional<YamlNode> sharedTemplates() {
    return top.optional("families").filter(node -> answer(node).equals("yes"));
  }

  /** Where a short template is asked for each curve that stands in several parts. */
  Optional<YamlNode> shortTemplates() {
    return top.optional("families").filter(node -> answer(node).equals("short"));
  }

  private static String answer(YamlNode node) {
    return switch (node.text()) {
      case "yes", "true" -> "yes";
      case "no", "false" -> "no";
      case "short" -> "short";
      default ->
          throw node.problem(
              "“"
                  + node.text()
                  + "” is no answer here; write yes for one template where parts share a curve,"
                  + " short for a short one of each single curve, or no");
    };
  }

  private static StockWishes stock(YamlNode node, StockWishes usual, Optional<Units> units) {
    OptionalDouble template = templateThickness(node, units);
    return new StockWishes(
        node.optional("grain").map(Grain::read).orElse(usual.grain()),
        template.isPresent() ? template : usual.templateThickness(),
        node.optional("species").map(YamlNode::text).or(usual::species));
  }

  private static OptionalDouble templateThickness(YamlNode node, Optional<Units> units) {
    OptionalDouble template = WishFields.length(node, "template-thickness", units);
    if (template.isPresent()
        && !(template.getAsDouble() > 0 && template.getAsDouble() <= THICKEST_TEMPLATE)) {
      throw node.field("template-thickness")
          .problem(
              "a template is thicker than 0 and no thicker than "
                  + Words.both(THICKEST_TEMPLATE)
                  + "; check the unit");
    }
    return template;
  }

  private static Entry entry(
      YamlNode top, YamlNode node, StockWishes usual, Optional<Units> units) {
    node.allowOnly(PART);
    YamlNode name = node.field("name");
    if (!FILE_NAME.matcher(name.text()).matches()) {
      throw name.problem(
          "“" + name.text() + "” names files, so write it in small letters, digits and hyphens");
    }
    Map<String, String> measures = new LinkedHashMap<>();
    Optional<YamlNode> given = node.optional("measures");
    if (given.isPresent()) {
      given.get().fields().forEach((key, value) -> measures.put(key, value.text()));
    }
    Wishes wishes =
        WishFields.of(
            node,
            measures,
            Optional.empty(),
            WishFields.length(node, "thickness", units),
            units,
            DrawnFields.of(node, units));
    OperationFile operations = OperationFile.in(node, units);
    return new Entry(
        name.text(),
        DrawnFields.source(node),
        quantity(node, operations),
        wishes,
        operations,
        stock(node, usual, units),
        node,
        WrittenPlaces.of(top, node));
  }

  private static int quantity(YamlNode node, OperationFile operations) {
    int least = operations.faces().pair().isPresent() ? 2 : 1;
    Optional<YamlNode> written = node.optional("quantity");
    if (written.isEmpty()) {
      return least;
    }
    int count = count(written.get());
    if (count % least != 0) {
      throw written.get().problem("left and right pieces come in pairs; give an even quantity");
    }
    return count;
  }

  /** How many, from 1 to 1000. */
  static int count(YamlNode written) {
    try {
      int count = Integer.parseInt(written.text());
      if (count >= 1 && count <= 1000) {
        return count;
      }
    } catch (NumberFormatException notWhole) {
      // Refused below, like a count out of range.
    }
    throw written.problem("“" + written.text() + "” is no count from 1 to 1000");
  }

  private static Units units(YamlNode node) {
    return switch (node.text()) {
      case "in" -> Units.INCH;
      case "mm" -> Units.MM;
      default -> throw node.problem("“" + node.text() + "” is no unit here; write in or mm");
    };
  }
}
