package org.bearingline.shape;

import java.util.Optional;
import java.util.Set;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;

/**
 * A shape file as written: its blocks are there, and nothing in them is understood yet.
 *
 * @param name fit for a file name
 * @param about one line for a person
 * @param units the units of bare numbers
 * @param measures what the maker sets
 * @param derived values by arithmetic
 * @param conditions what must hold
 * @param outline the steps of the outer edge
 * @param openings what is taken out inside it
 * @param marks centre lines, shoulder lines and drill centres
 * @param notes sentences for the card
 */
record WrittenShape(
    YamlNode name,
    YamlNode about,
    Optional<YamlNode> units,
    Optional<YamlNode> measures,
    Optional<YamlNode> derived,
    Optional<YamlNode> conditions,
    YamlNode outline,
    Optional<YamlNode> openings,
    Optional<YamlNode> marks,
    Optional<YamlNode> notes) {

  static WrittenShape read(String fileName, String text) {
    YamlNode top = YamlFile.read(fileName, text);
    top.allowOnly(
        Set.of(
            "name",
            "about",
            "units",
            "measures",
            "derived",
            "conditions",
            "outline",
            "openings",
            "marks",
            "notes"));
    return new WrittenShape(
        top.field("name"),
        top.field("about"),
        top.optional("units"),
        top.optional("measures"),
        top.optional("derived"),
        top.optional("conditions"),
        top.field("outline"),
        top.optional("openings"),
        top.optional("marks"),
        top.optional("notes"));
  }
}
