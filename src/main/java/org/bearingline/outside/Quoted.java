package org.bearingline.outside;

/** Words of a drawing as they may stand in a sentence: short, and without what cannot be shown. */
public final class Quoted {

  private static final int LONGEST = 30;

  private Quoted() {}

  public static String of(String text) {
    String brief = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    return brief.replaceAll("[\\p{Cntrl}\\p{Cs}\\u2028\\u2029\\ufffd]", "?");
  }
}
