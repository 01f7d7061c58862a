package org.bearingline.part;

import java.util.List;
import java.util.Objects;
import org.bearingline.outline.Outline;
import org.bearingline.outline.Similarity;

/**
 * The finished piece: its edge, what is taken out of it, and what is marked on it, in millimetres,
 * seen from face A with the fibres along x unless its notes say otherwise.
 *
 * @param name short, fit for a file name
 * @param about one line for a person
 * @param contour its outer edge, counter-clockwise
 * @param cavities openings, recesses and ledges
 * @param marks centre lines, shoulders and drill centres
 * @param notes sentences for the card
 */
public record Part(
    String name,
    String about,
    Contour contour,
    List<Cavity> cavities,
    List<Mark> marks,
    List<String> notes) {

  public Part {
    Objects.requireNonNull(name);
    Objects.requireNonNull(about);
    contour = contour.counterClockwise();
    cavities = List.copyOf(cavities);
    marks = List.copyOf(marks);
    notes = List.copyOf(notes);
  }

  /** The region of wood seen from above: the outer edge less the through openings. */
  public Outline outline() {
    return new Outline(
        contour.loop(),
        cavities.stream()
            .filter(cavity -> cavity.kind() == Cavity.Kind.THROUGH)
            .map(cavity -> cavity.contour().loop())
            .toList());
  }

  /** The same turned, moved or mirrored; a mirrored part is the other hand. */
  public Part transformed(Similarity similarity) {
    return new Part(
        name,
        about,
        contour.transformed(similarity),
        cavities.stream().map(cavity -> cavity.transformed(similarity)).toList(),
        marks.stream().map(mark -> mark.transformed(similarity)).toList(),
        notes);
  }

  public Part named(String newName) {
    return new Part(newName, about, contour, cavities, marks, notes);
  }
}
