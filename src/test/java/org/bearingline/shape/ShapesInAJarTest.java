package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The library lists its shapes from a jar as it does from a folder of classes. */
class ShapesInAJarTest {

  @Test
  void namesAreReadFromTheJar(@TempDir Path folder) throws Exception {
    Path jar = folder.resolve("program.jar");
    packClasses(jar);
    URL[] path = {jar.toUri().toURL()};
    try (URLClassLoader loader = new JarFirst(path)) {
      Class<?> library = loader.loadClass("org.bearingline.shape.ShapeLibrary");
      Object builtIn = library.getMethod("builtIn").invoke(null);
      assertEquals(
          ShapeLibrary.builtIn().names(),
          List.copyOf((List<?>) library.getMethod("names").invoke(builtIn)));
      Object shape = library.getMethod("find", String.class).invoke(builtIn, "oval-top");
      assertEquals("oval-top", shape.getClass().getMethod("name").invoke(shape));
    }
  }

  private static void packClasses(Path jar) throws IOException {
    Path classes = Path.of("target/classes");
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream packed = new JarOutputStream(out);
        Stream<Path> files = Files.walk(classes.resolve("org"))) {
      for (Path file : files.sorted().toList()) {
        String name = classes.relativize(file).toString().replace('\\', '/');
        packed.putNextEntry(new JarEntry(Files.isDirectory(file) ? name + "/" : name));
        if (Files.isRegularFile(file)) {
          Files.copy(file, packed);
        }
      }
    }
  }

  /** Takes the program from the jar, and libraries from where the tests have them. */
  private static final class JarFirst extends URLClassLoader {
    JarFirst(URL[] path) {
      super(path, ShapesInAJarTest.class.getClassLoader());
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      if (!name.startsWith("org.bearingline.")) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      return loaded != null ? loaded : findClass(name);
    }

    @Override
    public URL getResource(String name) {
      URL own = findResource(name);
      return own != null ? own : super.getResource(name);
    }
  }
}
