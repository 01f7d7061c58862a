package org.bearingline.outside;

import java.util.regex.Pattern;

/** Words of a drawing as they may stand in a sentence: short, and without what cannot be shown. */
public final class Quoted {

  private static final int LONGEST = 30;

  private static final Pattern UNSHOWN =
      Pattern.compile("[\\p{Cntrl}\\p{Cs}\\u2028\\u2029\\ufffd]");

  private Quoted() {}

  public static String of(String text) {
    String brief = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    return UNSHOWN.matcher(brief).replaceAll("?");
  }
}
