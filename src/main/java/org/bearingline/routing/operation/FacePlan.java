package org.bearingline.routing.operation;

import java.util.List;
import org.bearingline.outline.Similarity;
import org.bearingline.part.Mark;

/**
 * How templates lie on the two faces of the work and, for a pair, on its two hands.
 *
 * @param axis the centre line about which work and templates are turned over
 * @param symmetrical whether the part, with all that is done to it, is its own mirror image in the
 *     axis
 * @param registration what locates the templates on both faces
 * @param lies which side of a template lies up for each face and hand
 * @param sentences for the maker, warnings among them
 */
public record FacePlan(
    Mark.CentreLine axis,
    boolean symmetrical,
    Registration registration,
    List<Lie> lies,
    List<String> sentences) {

  public FacePlan {
    lies = List.copyOf(lies);
    sentences = List.copyOf(sentences);
  }

  /** Carries what is drawn as seen from face A to what is seen from face B. */
  public Similarity seenFromB() {
    return Similarity.mirror(axis.from(), axis.to());
  }

  /**
   * One way to lay a template down.
   *
   * @param hand "left", "right", or empty for a part that is not one of a pair
   * @param work the face of the work that lies up
   * @param up the side of the template that lies up; A is the one its drawing shows
   */
  public record Lie(String hand, Face work, Face up) {}
}
