package org.bearingline.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.yaml.YamlNode;

/** The parts of a job by name, panels among them, before any is worked out. */
record JobParts(JobFile job) {

  /** The job's parts in order, and whether each is a panel. */
  Map<String, Boolean> all() {
    Map<String, Boolean> names = new LinkedHashMap<>();
    job.parts().forEach(entry -> names.put(entry.name(), false));
    job.top()
        .optional("panels")
        .filter(YamlNode::isList)
        .ifPresent(
            panels ->
                panels.items().stream()
                    .filter(YamlNode::isMapping)
                    .flatMap(panel -> panel.optional("name").stream())
                    .filter(YamlNode::isScalar)
                    .forEach(name -> names.putIfAbsent(name.text(), true)));
    return names;
  }

  /** The part as written; empty for a panel. */
  Optional<JobFile.Entry> entry(String part) {
    return job.parts().stream().filter(entry -> entry.name().equals(part)).findFirst();
  }

  /** What it is drawn from, as written. */
  String shape(String part) {
    return entry(part).map(JobFile.Entry::source).orElse("panel");
  }

  /** Names of the measures that it sets. */
  Set<String> measuresSet(String part) {
    return entry(part).map(entry -> entry.wishes().measures().keySet()).orElse(Set.of());
  }

  /** That no part has this name. */
  Problem unknown(String part) {
    return new Problem(
        Place.nowhere(),
        "no part of the job is called “" + part + "”" + NearestName.hint(all().keySet(), part));
  }
}
