package org.bearingline.web;

import java.net.URLDecoder;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpHeaderValue;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.Fields;
import org.eclipse.jetty.util.Promise;

/** Takes each request, refuses what is not the page's, and sends the answer. */
final class PageHandler extends Handler.Abstract {

  private static final String API = "/api/";

  private static final int FORBIDDEN = 401;

  /** Bytes that are taken in only to be able to say that they are too many. */
  private static final long LARGEST_UNREAD = 100_000_000;

  private static final String WRONG_TOKEN =
      "this page belongs to another run of the program; open the address that bearingline page"
          + " printed this time";

  private final Door door;
  private final SessionToken token;
  private final Questions questions;
  private final Workers workers;

  PageHandler(Door door, SessionToken token, Questions questions, Workers workers) {
    // Nothing here waits: bodies are read as they come, and answers are worked out elsewhere.
    super(InvocationType.NON_BLOCKING);
    this.door = door;
    this.token = token;
    this.questions = questions;
    this.workers = workers;
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    Optional<Answer> foreign = door.refusal(request);
    if (foreign.isPresent()) {
      sendUnheard(foreign.get(), request, response, callback);
    } else if (request.getHttpURI().getPath().startsWith(API)) {
      ask(request, response, callback);
    } else {
      sendUnheard(file(request), request, response, callback);
    }
    return true;
  }

  private static Answer file(Request request) {
    if (!HttpMethod.GET.is(request.getMethod()) && !HttpMethod.HEAD.is(request.getMethod())) {
      return notAllowed("GET, HEAD");
    }
    return PageFiles.at(request.getHttpURI().getPath())
        .orElseGet(() -> Refusal.of(404, "there is nothing at this address"));
  }

  private void ask(Request request, Response response, Callback callback) {
    Question question = questions.at(request.getHttpURI().getPath());
    Optional<Answer> refusal = refusal(request, question);
    if (refusal.isPresent()) {
      refuse(refusal.get(), request, response, callback);
      return;
    }
    String name = fileName(request);
    Map<String, String> said = said(request);
    Content.Source.asByteArrayAsync(
        request,
        question.largest(),
        Promise.Invocable.from(
            InvocationType.NON_BLOCKING,
            body ->
                workers
                    .answer(
                        question.patience(),
                        () -> question.work().answer(new Question.Sent(body, name, said)))
                    .thenAccept(answer -> send(answer, request, response, callback)),
            callback::failed));
  }

  /** A browser that is still sending hears nothing, so what it sends is taken in first. */
  private static void refuse(Answer answer, Request request, Response response, Callback callback) {
    boolean worthHearing = answer.status() != FORBIDDEN && request.getLength() <= LARGEST_UNREAD;
    if (worthHearing) {
      Unread.takeIn(
          request,
          LARGEST_UNREAD,
          wholly -> send(wholly ? answer : ending(answer), request, response, callback),
          callback::failed);
    } else {
      sendUnheard(answer, request, response, callback);
    }
  }

  /** Answers without a look at what is still sent, if anything is. */
  private static void sendUnheard(
      Answer answer, Request request, Response response, Callback callback) {
    boolean sends =
        request.getLength() > 0 || request.getHeaders().contains(HttpHeader.TRANSFER_ENCODING);
    send(sends ? ending(answer) : answer, request, response, callback);
  }

  /**
   * Where something stays unread the connection ends, and the answer must say so: on one that seems
   * to go on, the next question would be lost.
   */
  private static Answer ending(Answer answer) {
    return answer.with(HttpHeader.CONNECTION.asString(), HttpHeaderValue.CLOSE.asString());
  }

  private Optional<Answer> refusal(Request request, Question question) {
    if (!token.isIn(request.getHeaders().get(HttpHeader.AUTHORIZATION))) {
      return Optional.of(Refusal.of(FORBIDDEN, WRONG_TOKEN));
    }
    if (question == null) {
      return Optional.of(Refusal.of(404, "there is nothing at this address"));
    }
    if (!request.getMethod().equals(question.method())) {
      return Optional.of(notAllowed(question.method()));
    }
    if (question.bodyType().isEmpty()) {
      return Optional.empty();
    }
    String type = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
    if (type == null || !type.split(";", 2)[0].strip().equalsIgnoreCase(question.bodyType())) {
      return Optional.of(Refusal.of(415, "the content must be " + question.bodyType()));
    }
    long length = request.getLength();
    if (length < 0) {
      return Optional.of(Refusal.of(411, "the request must tell its length"));
    }
    if (length > question.largest()) {
      return Optional.of(
          Refusal.of(
              413,
              "this is larger than the "
                  + question.largest() / 1_000_000
                  + " MB that are taken here; make the file smaller, or use the command"));
    }
    return Optional.empty();
  }

  private static Answer notAllowed(String methods) {
    return Refusal.of(405, "this address is asked with " + methods).with("Allow", methods);
  }

  private static Map<String, String> said(Request request) {
    Map<String, String> said = new LinkedHashMap<>();
    for (Fields.Field field : Request.extractQueryParameters(request)) {
      said.put(field.getName(), field.getValue());
    }
    return said;
  }

  /** The name that an uploaded file had, without its folders. */
  private static String fileName(Request request) {
    String header = request.getHeaders().get("X-File-Name");
    if (header == null) {
      return "file";
    }
    try {
      String name = URLDecoder.decode(header.replace("+", "%2B"), StandardCharsets.UTF_8);
      String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
      String plain = last.replaceAll("\\p{Cntrl}", "");
      return plain.isBlank() ? "file" : plain.substring(0, Math.min(100, plain.length()));
    } catch (IllegalArgumentException unreadable) {
      return "file";
    }
  }

  static void send(Answer answer, Request request, Response response, Callback callback) {
    response.setStatus(answer.status());
    Door.HEADERS.forEach(response.getHeaders()::put);
    answer.headers().forEach(response.getHeaders()::put);
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, answer.type());
    response.getHeaders().put(HttpHeader.CONTENT_LENGTH, answer.content().length);
    boolean head = HttpMethod.HEAD.is(request.getMethod());
    ByteBuffer content = head ? ByteBuffer.allocate(0) : ByteBuffer.wrap(answer.content());
    response.write(true, content, callback);
  }
}
