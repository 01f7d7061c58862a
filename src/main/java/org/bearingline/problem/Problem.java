package org.bearingline.problem;

import java.util.Objects;

/**
 * The one exception for what a user can cause: a sentence that says what is wrong and what to do,
 * and the place it concerns. Every other exception that leaves the program is a defect.
 */
public final class Problem extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Place place;

  /**
   * @param place where it stands
   * @param sentence one clear sentence: what is wrong and what to do; no Java names
   */
  public Problem(Place place, String sentence) {
    super(Objects.requireNonNull(sentence));
    this.place = Objects.requireNonNull(place);
  }

  /** A problem with a cause kept for developers; the user sees only the sentence. */
  public Problem(Place place, String sentence, Throwable cause) {
    super(Objects.requireNonNull(sentence), cause);
    this.place = Objects.requireNonNull(place);
  }

  public Place place() {
    return place;
  }

  /** The same problem at another place: for callers who know where the words were written. */
  public Problem at(Place other) {
    return new Problem(other, getMessage(), this);
  }

  /** The sentence with its place in front, as shown on standard error. */
  public String spoken() {
    String at = place.words();
    return at.isEmpty() ? getMessage() : at + ": " + getMessage();
  }
}
