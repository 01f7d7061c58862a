package org.bearingline.routing.family;

import java.util.List;
import org.bearingline.outline.Outline;

/**
 * Parts whose routed edges hold the same curves in the same order, up to a rigid motion or mirror,
 * with straights along the part's length of any length between them: one template serves them all.
 *
 * @param host the longest part, whose template it is
 * @param members the host first, then the others in the job's order
 * @param plate the template's outline, in the host's coordinates
 * @param sharedLength mm of edge in the shared curves, the straights between them left out
 * @param templateOffset mm from the part's edge to the template's, positive to the waste side
 * @param registration lines to draw on it
 * @param tolerance mm within which curves count as the same
 * @param sentences for the maker
 */
public record Family(
    String host,
    List<FamilyMember> members,
    Outline plate,
    double sharedLength,
    double templateOffset,
    List<Registration> registration,
    double tolerance,
    List<String> sentences) {

  public Family {
    members = List.copyOf(members);
    registration = List.copyOf(registration);
    sentences = List.copyOf(sentences);
  }
}
