package org.bearingline.outside.unite;

import java.util.List;
import org.bearingline.outline.Point;
import org.bearingline.outline.Region;

/**
 * Shapes united.
 *
 * @param groups in the order of their first shapes
 * @param moved mm by which a circle was moved at most to run into straights
 */
public record United(List<Group> groups, double moved) {

  public United {
    groups = List.copyOf(groups);
  }

  /**
   * Shapes that became one.
   *
   * @param members their numbers, rising
   * @param isOpening whether they lie inside other shapes, and so are taken out
   * @param region what they cover together; of one shape that shape as it was
   * @param covered members of which no edge is left, for the others cover it
   * @param narrow places where two of them hold together by next to nothing
   */
  public record Group(
      List<Integer> members,
      boolean isOpening,
      Region region,
      List<Integer> covered,
      List<Point> narrow) {

    public Group {
      members = List.copyOf(members);
      covered = List.copyOf(covered);
      narrow = List.copyOf(narrow);
    }
  }

  /** Whether any two shapes became one. */
  public boolean isAny() {
    return groups.stream().anyMatch(group -> group.members().size() > 1);
  }
}
