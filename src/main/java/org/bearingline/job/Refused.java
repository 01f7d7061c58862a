package org.bearingline.job;

import org.bearingline.problem.Problem;

/** A request that cannot be carried out, with the field of the job that is at fault. */
public final class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient ProblemView view;

  Refused(ProblemView view, Problem cause) {
    super(cause.getMessage(), cause);
    this.view = view;
  }

  /** What is wrong and where. */
  public ProblemView view() {
    return view;
  }
}
