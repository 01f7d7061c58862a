package org.bearingline.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.bearingline.job.JobInHand;

/**
 * The jobs worked on last. A page asks several things of one state, which is then worked out once.
 */
final class JobShelf {

  private static final int ROOM = 8;

  private final Map<Map<String, String>, JobInHand> jobs =
      new LinkedHashMap<>(ROOM, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Map<String, String>, JobInHand> eldest) {
          return size() > ROOM;
        }
      };

  /** The job of these texts. */
  JobInHand job(Map<String, String> texts) {
    synchronized (jobs) {
      JobInHand known = jobs.get(texts);
      if (known != null) {
        return known;
      }
    }
    JobInHand read = JobInHand.of(texts);
    synchronized (jobs) {
      jobs.putIfAbsent(texts, read);
      return jobs.get(texts);
    }
  }
}
