package org.bearingline.shape;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/**
 * The shapes that come with the program: every file of the folder {@code shapes}. A shape is found
 * by its file name at once; only a list of all reads the folder, or the table of contents of the
 * jar that the class loader has open anyway, so that no index has to be kept.
 */
public final class ShapeLibrary {

  private static final String FOLDER = "/org/bearingline/shapes/";
  private static final String ENDING = ".yaml";
  private static final Pattern NAME = Pattern.compile("[a-z0-9-]+");

  private ShapeLibrary() {}

  public static ShapeLibrary builtIn() {
    return new ShapeLibrary();
  }

  /** All names, in alphabetical order. */
  public List<String> names() {
    URL folder =
        Objects.requireNonNull(
            ShapeLibrary.class.getResource(FOLDER), "the shapes are missing from the program");
    try (Stream<String> files = files(folder)) {
      return files
          .filter(file -> file.endsWith(ENDING))
          .map(file -> file.substring(0, file.length() - ENDING.length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<String> files(URL folder) throws IOException {
    URLConnection connection = folder.openConnection();
    if (connection instanceof JarURLConnection jar) {
      String prefix = FOLDER.substring(1);
      return jar.getJarFile().stream()
          .map(entry -> entry.getName())
          .filter(name -> name.startsWith(prefix))
          .map(name -> name.substring(prefix.length()));
    }
    return Files.list(Path.of(URI.create(folder.toString())))
        .map(path -> path.getFileName().toString());
  }

  /** The shape of that name; an unknown name is a Problem that gives the nearest. */
  public CheckedShape find(String name) {
    if (NAME.matcher(name).matches()) {
      try (InputStream in = ShapeLibrary.class.getResourceAsStream(FOLDER + name + ENDING)) {
        if (in != null) {
          return ShapeReader.read(
              "shapes/" + name + ENDING, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    throw new Problem(Place.nowhere(), "there is no shape named “" + name + "”; " + advice(name));
  }

  /** The name with the fewest wrong letters, or those that hold what was asked for. */
  private String advice(String name) {
    List<String> names = names();
    List<String> near =
        NearestName.among(names, name)
            .map(List::of)
            .orElseGet(() -> names.stream().filter(one -> holds(one, name)).toList());
    return near.isEmpty()
        ? "“bearingline shapes” lists them all"
        : "did you mean " + String.join(" or ", near) + "?";
  }

  private static boolean holds(String known, String given) {
    String letters = given.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    return letters.length() > 2 && known.replace("-", "").contains(letters);
  }
}
