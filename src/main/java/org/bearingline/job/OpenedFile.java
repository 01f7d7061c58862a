package org.bearingline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.archive.Zip;
import org.bearingline.kit.Kit;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.shape.CheckedShape;
import org.bearingline.shape.ShapeReader;
import org.bearingline.yaml.YamlFile;
import org.bearingline.yaml.YamlNode;

/**
 * A file that a maker opened on a page: a job with what it names, a shape, or a kit.
 *
 * @param state a job; null for a kit
 * @param kit the fields of a kit file; null for a job
 * @param missing files that the job names and that did not come with it
 */
public record OpenedFile(JobState state, Map<String, Object> kit, List<String> missing) {

  private static final String YAML = ".yaml";

  private static final Set<String> OF_A_KIT = Set.of("bits", "bearings", "collars", "blades");

  private static final String SHAPE = "shape";

  private static final String DRAWING = "drawing";

  /**
   * Reads a job file, a shape file, a kit file, or an archive of a job with what it names.
   *
   * @param name of the file, for messages
   * @throws Problem where it is none of these
   */
  public static OpenedFile read(String name, byte[] bytes) {
    if (Zip.isOne(bytes)) {
      return packed(name, Zip.read(name, bytes));
    }
    String text = JobState.text(name, bytes);
    YamlNode top = YamlFile.read(name, text);
    if (JobFile.isOne(top)) {
      return job(top, text, Map.of());
    }
    if (top.isMapping() && OF_A_KIT.stream().anyMatch(top.fields()::containsKey)) {
      Kit.read(name, text);
      return new OpenedFile(null, fields(top), List.of());
    }
    return shape(ShapeReader.read(name, text), text);
  }

  private static OpenedFile packed(String name, Map<String, byte[]> packed) {
    Map<String, Object> files = new LinkedHashMap<>();
    Optional<YamlNode> job = Optional.empty();
    String written = "";
    for (Map.Entry<String, byte[]> file : packed.entrySet()) {
      if (ending(file.getKey()).isEmpty()) {
        continue;
      }
      if (!ending(file.getKey()).equals(YAML)) {
        files.put(plain(file.getKey()), JobState.text(file.getKey(), file.getValue()));
        continue;
      }
      String text = JobState.text(file.getKey(), file.getValue());
      YamlNode top = YamlFile.read(file.getKey(), text);
      if (!JobFile.isOne(top)) {
        files.put(plain(file.getKey()), text);
      } else if (job.isPresent()) {
        throw new Problem(Place.file(name), "the archive holds two jobs; open one of them alone");
      } else {
        job = Optional.of(top);
        written = text;
      }
    }
    return job(
        job.orElseThrow(
            () -> new Problem(Place.file(name), "the archive holds no job file; open one alone")),
        written,
        files);
  }

  private static OpenedFile job(YamlNode top, String text, Map<String, Object> files) {
    Map<String, Object> job = fields(top);
    job.computeIfPresent("kit", (field, kit) -> kit instanceof String path ? plain(path) : kit);
    for (Map<String, Object> part : parts(job)) {
      part.computeIfPresent(
          SHAPE,
          (field, shape) -> shape instanceof String path && isFile(path) ? plain(path) : shape);
      part.computeIfPresent(
          DRAWING, (field, drawn) -> drawn instanceof String path ? plain(path) : drawn);
    }
    // Drawings in an archive may as well be what a layout wrote.
    Map<String, Object> wanted = new LinkedHashMap<>(files);
    List<String> named = named(job);
    wanted.keySet().removeIf(file -> !ending(file).equals(YAML) && !named.contains(file));
    // Without a comment there is nothing in it that the fields do not say.
    JobState state = new JobState(job, wanted, text.indexOf('#') >= 0 ? text : null);
    return new OpenedFile(state, null, state.missing());
  }

  private static OpenedFile shape(CheckedShape shape, String text) {
    Map<String, Object> part = new LinkedHashMap<>();
    part.put("name", shape.name());
    part.put(SHAPE, shape.name() + ".yaml");
    Map<String, Object> job = new LinkedHashMap<>();
    job.put("job", shape.name());
    job.put("parts", List.of(part));
    return new OpenedFile(new JobState(job, Map.of(shape.name() + ".yaml", text)), null, List.of());
  }

  /** The files that a job names. */
  static List<String> named(Map<String, Object> job) {
    List<String> named = new ArrayList<>();
    if (job.get("kit") instanceof String kit) {
      named.add(kit);
    }
    for (Map<String, Object> part : parts(job)) {
      if (part.get(SHAPE) instanceof String shape && isFile(shape)) {
        named.add(shape);
      }
      if (part.get(DRAWING) instanceof String drawing) {
        named.add(drawing);
      }
    }
    return named;
  }

  private static boolean isFile(String shape) {
    return shape.contains("/") || shape.contains("\\") || shape.contains(".");
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> parts(Map<String, Object> job) {
    List<Map<String, Object>> parts = new ArrayList<>();
    if (job.get("parts") instanceof List<?> list) {
      for (Object part : list) {
        if (part instanceof Map<?, ?> map) {
          parts.add((Map<String, Object>) map);
        }
      }
    }
    return parts;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> fields(YamlNode top) {
    return (Map<String, Object>) top.tree();
  }

  /** A path's last name as a page's files are named: small letters, digits and hyphens. */
  private static String plain(String path) {
    String last = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    String ending = ending(last);
    String stem = last.replaceFirst("\\.[^.]*$", "").toLowerCase(Locale.ROOT);
    String name = stem.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return (name.isEmpty() ? "file" : name.equals("job") ? "job-file" : name)
        + (ending.isEmpty() ? YAML : ending);
  }

  /** The ending of a file that a job may name; empty for others. */
  private static String ending(String file) {
    String small = file.toLowerCase(Locale.ROOT);
    if (small.endsWith(YAML) || small.endsWith(".yml")) {
      return YAML;
    }
    return List.of(".svg", ".dxf").stream().filter(small::endsWith).findFirst().orElse("");
  }
}
