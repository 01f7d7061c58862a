package org.bearingline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Everything that decides what a template looks like and where its files go. */
final class TemplateOptions {

  @Mixin SourceOptions source;

  @Option(
      names = "--bit",
      paramLabel = "DIAMETER",
      description = "cutting diameter (default: the kit's largest bit that leaves nothing)")
  List<String> bits = new ArrayList<>();

  @Mixin FollowerOptions follower;

  @Mixin LayoutOptions layout;

  @Mixin PaperOptions paper;

  @Mixin UnitsOption units;

  @Option(
      names = "--into",
      required = true,
      paramLabel = "DIR",
      description = "folder for the files; made if missing")
  private String into;

  /** The folder to write into. */
  Path into() {
    return IntoFolder.of(into);
  }
}
