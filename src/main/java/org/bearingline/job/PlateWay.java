package org.bearingline.job;

import java.util.List;
import org.bearingline.routing.family.Family;
import org.bearingline.routing.family.FamilyMember;
import org.bearingline.routing.family.HalfTemplate;

/** Where the plate that shapes a part's outer edge comes from. */
sealed interface PlateWay {

  /** Each part has its own. */
  Own OWN = new Own();

  /** A whole plate of its own. */
  record Own() implements PlateWay {}

  /** Half a plate of its own, turned over on the centre line. */
  record Half(HalfTemplate half) implements PlateWay {}

  /**
   * The plate of another piece, turned over: the part is the other hand of a pair.
   *
   * @param hand left or right
   * @param of name of the piece that is drawn
   */
  record TurnedOver(String hand, String of) implements PlateWay {}

  /**
   * One plate for several parts of the job.
   *
   * @param name of its files
   * @param member how this part lies on it
   */
  record Shared(String name, Family family, FamilyMember member) implements PlateWay {}

  /**
   * Short templates, each with one curve of the edge.
   *
   * @param names of their files
   * @param sentences where they are laid on this part
   */
  record Short(List<String> names, List<String> sentences) implements PlateWay {
    public Short {
      names = List.copyOf(names);
      sentences = List.copyOf(sentences);
    }
  }
}
