package org.bearingline.outside.scan;

import java.util.List;
import java.util.Objects;
import org.bearingline.outside.Sketch;

/**
 * A template traced from a picture.
 *
 * @param sketch its edge as chords in mm, outside first, then its openings
 * @param pixel how large a pixel is on the template, mm
 * @param notes what was done, one short sentence each
 * @param warnings what the maker should mind, one short sentence each
 */
public record Scan(Sketch sketch, double pixel, List<String> notes, List<String> warnings) {

  public Scan {
    Objects.requireNonNull(sketch);
    notes = List.copyOf(notes);
    warnings = List.copyOf(warnings);
  }
}
