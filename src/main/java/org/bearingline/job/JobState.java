package org.bearingline.job;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.KeptComments;
import org.bearingline.yaml.YamlText;

/**
 * A job as fields, with the files it names, as a page holds it: maps, lists and strings that stand
 * for a job file field by field.
 *
 * @param job the job file's fields
 * @param files what it names, by plain file name: a text, or fields that stand for one
 * @param opened the job file's text as it was opened, for its comments; null where there was none
 */
public record JobState(Map<String, Object> job, Map<String, Object> files, String opened) {

  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*\\.(yaml|svg|dxf)");

  private static final int MOST_FILES = 100;

  public JobState {
    if (files.size() > MOST_FILES) {
      throw new Problem(Place.nowhere(), "a job names no more than " + MOST_FILES + " files");
    }
    for (String name : files.keySet()) {
      if (!NAME.matcher(name).matches() || name.equals(JobInHand.FILE)) {
        throw new Problem(
            Place.nowhere(),
            "“"
                + name
                + "” cannot name a file of the job; write it in small letters, digits and hyphens"
                + " with .yaml, .svg or .dxf at its end");
      }
    }
  }

  /** A job that was not opened from a file. */
  public JobState(Map<String, Object> job, Map<String, Object> files) {
    this(job, files, null);
  }

  /** The texts of all its files by name, the job's own as {@link JobInHand#FILE}. */
  public Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(JobInHand.FILE, text());
    files.forEach((name, file) -> texts.put(name, text(file)));
    return texts;
  }

  /** The text of the job file. */
  public String text() {
    return YamlText.write(job);
  }

  /** Whether the file that was opened has comments that cannot be kept. */
  public boolean losesComments() {
    return opened != null && KeptComments.write(job, opened).isEmpty();
  }

  /** The text of the job file to be kept: with the comments of the file that was opened. */
  public String savedText() {
    return Optional.ofNullable(opened)
        .flatMap(before -> KeptComments.write(job, before))
        .orElseGet(this::text);
  }

  private static String text(Object file) {
    return file instanceof String text ? text : YamlText.write(file);
  }

  /** A name for the job file, from the job's own. */
  public String fileName() {
    String words = job.get("job") instanceof String name ? name : "";
    String plain =
        words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String name = plain.isEmpty() ? "job" : plain.substring(0, Math.min(60, plain.length()));
    return files.containsKey(name + ".yaml") ? name + "-job.yaml" : name + ".yaml";
  }

  /** The job file and what it names, as bytes by name. */
  public Map<String, byte[]> saved() {
    Map<String, byte[]> saved = new LinkedHashMap<>();
    saved.put(fileName(), savedText().getBytes(StandardCharsets.UTF_8));
    files.forEach((name, file) -> saved.put(name, text(file).getBytes(StandardCharsets.UTF_8)));
    return saved;
  }

  /** The names of files that the job names and that are not with it. */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    for (String name : OpenedFile.named(job)) {
      if (!files.containsKey(name) && !missing.contains(name)) {
        missing.add(name);
      }
    }
    return missing;
  }

  /** The text of bytes; fails with a Problem where they are no UTF-8. */
  static String text(String name, byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException notText) {
      throw new Problem(
          Place.file(name), "the file is not text in UTF-8; save it as UTF-8", notText);
    }
  }
}
