package org.bearingline.web;

import java.util.function.Consumer;
import org.eclipse.jetty.io.Content;

/**
 * What a sender whose request is refused is still sending. It hears nothing before it is done, and
 * a connection that ends while it sends can take the answer with it; so what comes is taken in and
 * thrown away, up to a limit.
 */
final class Unread {

  private final Content.Source source;
  private final long most;
  private long bytes;

  private Unread(Content.Source source, long most) {
    this.source = source;
    this.most = most;
  }

  /**
   * Takes in what comes, without waiting in this thread.
   *
   * @param most bytes
   * @param wholly is told whether everything was taken in; if not, the connection cannot go on
   * @param failed is told where the sender broke off
   */
  static void takeIn(
      Content.Source source, long most, Consumer<Boolean> wholly, Consumer<Throwable> failed) {
    new Unread(source, most).takeIn(wholly, failed);
  }

  private void takeIn(Consumer<Boolean> wholly, Consumer<Throwable> failed) {
    while (bytes <= most) {
      Content.Chunk chunk = source.read();
      if (chunk == null) {
        source.demand(() -> takeIn(wholly, failed));
        return;
      }
      if (Content.Chunk.isFailure(chunk)) {
        failed.accept(chunk.getFailure());
        return;
      }
      bytes += chunk.remaining();
      boolean last = chunk.isLast();
      chunk.release();
      if (last) {
        wholly.accept(true);
        return;
      }
    }
    wholly.accept(false);
  }
}
