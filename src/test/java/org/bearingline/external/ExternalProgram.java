package org.bearingline.external;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/**
 * A program outside this project that reads what we write. A test that asks for one that is missing
 * is skipped and says so on the console; where the environment says {@code CI=true} it fails
 * instead, so that no check is lost unseen.
 */
public final class ExternalProgram {

  private static final long LIMIT_SECONDS = 600;

  private final List<String> command;

  private ExternalProgram(List<String> command) {
    this.command = List.copyOf(command);
  }

  /** The program of that name on the search path. */
  public static ExternalProgram named(String name) {
    return onPath(name)
        .map(path -> new ExternalProgram(List.of(path.toString())))
        .orElseGet(() -> missing(name));
  }

  /** The system's Python 3 with the given modules, such as {@code ezdxf}. */
  public static ExternalProgram pythonWith(String... modules) {
    Path system = Path.of("/usr/bin/python3");
    Path python =
        Files.isExecutable(system) ? system : onPath("python3").orElse(Path.of("python3"));
    ExternalProgram program = new ExternalProgram(List.of(python.toString()));
    String imports = modules.length == 0 ? "pass" : "import " + String.join(", ", modules);
    try {
      if (program.start(List.of("-c", imports)).status() == 0) {
        return program;
      }
    } catch (UncheckedIOException e) {
      // Not there at all: said below like any other missing program.
    }
    return missing("python3 with " + String.join(", ", modules));
  }

  /** Where the program is. */
  public Path path() {
    return Path.of(command.get(0));
  }

  private static Optional<Path> onPath(String name) {
    String path = System.getenv().getOrDefault("PATH", "");
    return Arrays.stream(path.split(File.pathSeparator))
        .filter(folder -> !folder.isEmpty())
        .map(folder -> Path.of(folder, name))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Skips the test that needs it, or fails where nothing may be skipped. */
  static <T> T missing(String what) {
    if ("true".equals(System.getenv("CI"))) {
      return fail(what + " is needed for this check and is not installed");
    }
    return skipped(what);
  }

  /** Skips the test, whatever the environment says. */
  static <T> T skipped(String what) {
    System.err.println("SKIPPED for want of " + what + ": a check from outside was not made");
    Assumptions.abort(what + " is not installed");
    throw new AssertionError("unreachable");
  }

  /**
   * What a run gave.
   *
   * @param status exit status
   * @param out standard output, raw
   * @param err standard error as text
   */
  public record Result(int status, byte[] out, String err) {
    public String text() {
      return new String(out, StandardCharsets.UTF_8);
    }
  }

  /** Runs with the given arguments; whatever the exit status, the result comes back. */
  public Result start(List<String> arguments) {
    List<String> line = new ArrayList<>(command);
    line.addAll(arguments);
    Path out = null;
    Path err = null;
    try {
      out = Files.createTempFile("outside", ".out");
      err = Files.createTempFile("outside", ".err");
      ProcessBuilder builder =
          new ProcessBuilder(line).redirectOutput(out.toFile()).redirectError(err.toFile());
      builder.environment().put("LC_ALL", "C.UTF-8");
      Process process = builder.start();
      process.getOutputStream().close();
      if (!process.waitFor(LIMIT_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return fail(line + " did not end within " + LIMIT_SECONDS + " s");
      }
      return new Result(process.exitValue(), Files.readAllBytes(out), Files.readString(err));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return fail("interrupted while running " + line);
    } finally {
      delete(out);
      delete(err);
    }
  }

  /** Runs, asserts exit status 0 and gives the standard output as text. */
  public String run(Object... arguments) {
    Result result = start(Arrays.stream(arguments).map(Object::toString).toList());
    assertEquals(0, result.status(), () -> command + " failed: " + result.text() + result.err());
    return result.text();
  }

  private static void delete(Path file) {
    if (file != null) {
      file.toFile().delete();
    }
  }
}
