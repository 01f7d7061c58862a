package org.bearingline.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.bearingline.archive.Zip;
import org.bearingline.job.JobInHand;
import org.bearingline.job.JobState;
import org.bearingline.job.KeptDrawing;
import org.bearingline.job.OpenedFile;
import org.bearingline.job.ShopView;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Every question the page may ask, by its path. */
final class Questions {

  private static final int LARGEST_STATE = 2_000_000;
  private static final int LARGEST_FILE = 8_000_000;
  private static final int LARGEST_PICTURE = 50_000_000;

  /** Milliseconds for a drawing: a maker waits for it. */
  private static final long SHORT = 10_000;

  /** Milliseconds for all files of a job. */
  private static final long LONG = 60_000;

  private static final String ZIP = "application/zip";

  private final JobShelf shelf = new JobShelf();
  private final Answer shop = Answer.json(ShopView.shipped());
  private final Map<String, Question> all = new LinkedHashMap<>();

  Questions() {
    all.put("/api/shop", new Question("GET", "", 0, SHORT, sent -> shop));
    ask("/api/draw", SHORT, this::draw);
    ask("/api/drawn", SHORT, this::drawn);
    ask("/api/rack", SHORT, this::rack);
    ask("/api/pages", SHORT, this::pages);
    ask("/api/job", LONG, asked -> Answer.json(job(asked).whole()));
    ask("/api/file", LONG, this::file);
    ask("/api/zip", LONG, this::zip);
    ask("/api/save", SHORT, this::save);
    ask("/api/save.zip", SHORT, this::saveZip);
    all.put("/api/open", upload(LARGEST_FILE, SHORT, Questions::open));
    all.put("/api/outline", upload(LARGEST_PICTURE, LONG, Questions::outline));
  }

  private interface Asked {
    Answer answer(PageRequest request);
  }

  private void ask(String path, long patience, Asked work) {
    all.put(
        path,
        new Question(
            "POST",
            Answer.JSON,
            LARGEST_STATE,
            patience,
            sent -> work.answer(PageRequest.read(sent.body()))));
  }

  private static Question upload(int largest, long patience, Question.Work work) {
    return new Question("POST", "application/octet-stream", largest, patience, work);
  }

  /** The question of a path; null where there is none. */
  Question at(String path) {
    return all.get(path);
  }

  private JobInHand job(PageRequest request) {
    return shelf.job(request.state().texts());
  }

  private Answer draw(PageRequest request) {
    return Answer.json(
        job(request).view(request.text("part"), request.plate(), request.enlargement()));
  }

  private Answer drawn(PageRequest request) {
    return Answer.json(job(request).drawn(request.text("part")));
  }

  private Answer rack(PageRequest request) {
    return Answer.json(job(request).rack(request.text("part")));
  }

  private Answer pages(PageRequest request) {
    return Answer.json(job(request).pages(request.text("part"), request.plate()));
  }

  private Answer file(PageRequest request) {
    String name = request.text("name");
    byte[] content =
        job(request)
            .file(name)
            .orElseThrow(
                () -> new Problem(Place.nowhere(), "the job makes no file named “" + name + "”"));
    return Answer.bytes(ContentTypes.of(name).orElse("application/octet-stream"), content)
        .with("Content-Disposition", "attachment; filename=\"" + name + "\"");
  }

  private Answer zip(PageRequest request) {
    JobInHand job = job(request);
    Map<String, byte[]> files = request.has("part") ? job.files(request.text("part")) : job.files();
    return Answer.bytes(ZIP, Zip.write(files));
  }

  private Answer save(PageRequest request) {
    JobState state = request.state();
    Map<String, Object> saved = new LinkedHashMap<>();
    saved.put("name", state.fileName());
    saved.put("text", state.savedText());
    saved.put("losesComments", state.losesComments());
    return Answer.json(saved);
  }

  private Answer saveZip(PageRequest request) {
    return Answer.bytes(ZIP, Zip.write(request.state().saved()));
  }

  private static Answer outline(Question.Sent sent) {
    Map<String, String> said = new LinkedHashMap<>(sent.said());
    Units units = "mm".equals(said.remove("units")) ? Units.MM : Units.INCH;
    KeptDrawing kept = KeptDrawing.of(sent.fileName(), sent.body(), said, units);
    return kept.problem() == null
        ? Answer.json(kept)
        : new Answer(Refusal.MAKERS_MISTAKE, Answer.JSON, Json.write(kept), Map.of());
  }

  private static Answer open(Question.Sent sent) {
    return Answer.json(OpenedFile.read(sent.fileName(), sent.body()));
  }
}
