package org.bearingline.problem;

/**
 * Thrown where work ends half way because nobody waits for it any more: its thread was interrupted.
 * Long work looks for that at each of its rounds; what it had made by then is lost.
 */
public final class CutOff extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private CutOff() {
    super("cut off");
  }

  /** Ends the work of a thread that was interrupted. */
  public static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CutOff();
    }
  }
}
