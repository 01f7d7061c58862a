package org.bearingline.web;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.component.AbstractLifeCycle;

/**
 * Ends connections on which a request comes in so slowly that it never ends. Idle ones the library
 * ends itself; one that sends a letter now and then is never idle.
 */
final class SlowSenders extends AbstractLifeCycle {

  /** Milliseconds between two looks. */
  private static final long INTERVAL = 5000;

  /** Looks at which a connection must have been slow. */
  private static final int ENOUGH = 2;

  private final ServerConnector connector;

  /** Bytes that a connection must have sent between two looks, if any. */
  private final long least;

  /** Used by one thread at a time: the next look is set when one is done. */
  private Map<Connection, Look> looks = new HashMap<>();

  /**
   * @param slowest bytes a second
   */
  SlowSenders(ServerConnector connector, long slowest) {
    this.connector = connector;
    this.least = slowest * INTERVAL / 1000;
  }

  private record Look(long bytes, long requests, int slow) {}

  @Override
  protected void doStart() throws Exception {
    super.doStart();
    again();
  }

  private void again() {
    connector.getScheduler().schedule(this::look, INTERVAL, TimeUnit.MILLISECONDS);
  }

  private void look() {
    Map<Connection, Look> now = new HashMap<>();
    for (EndPoint end : connector.getConnectedEndPoints()) {
      Connection connection = end.getConnection();
      if (connection == null) {
        continue;
      }
      Look look = look(connection, looks.get(connection));
      if (look.slow >= ENOUGH) {
        end.close();
      } else {
        now.put(connection, look);
      }
    }
    looks = now;
    if (isRunning()) {
      again();
    }
  }

  private Look look(Connection connection, Look before) {
    long bytes = connection.getBytesIn();
    long requests = connection.getMessagesIn();
    long more = bytes - (before == null ? 0 : before.bytes);
    boolean sameRequest = before == null ? requests == 0 : requests == before.requests;
    boolean slow = sameRequest && more > 0 && more < least;
    return new Look(bytes, requests, slow ? (before == null ? 1 : before.slow + 1) : 0);
  }
}
