package org.bearingline.routing.operation;

/** The side of the work that lies up, under the router. */
public enum Face {
  /** The show face, from which the part is drawn. */
  A,
  /** The back. */
  B;

  public Face other() {
    return this == A ? B : A;
  }

  /** In a sentence: "face A". */
  public String words() {
    return "face " + this;
  }
}
