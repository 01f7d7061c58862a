package org.bearingline.export;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Keeps the files of a job in memory. Used by one thread. */
public final class HeldFiles implements FileSink {

  private final FileNames names = new FileNames();
  private final Map<String, byte[]> contents = new LinkedHashMap<>();

  @Override
  public void write(String name, byte[] content) {
    names.add(name);
    contents.put(name, content);
  }

  /** Each file by its name, in the order they were written. */
  public Map<String, byte[]> contents() {
    return Collections.unmodifiableMap(contents);
  }
}
